/* #define IN_COMMENT 1 */ #define BEHIND_COMMENT 1
/* opened
 * #define STILL_INSIDE 1
 */ #define BEHIND_LONG 2
// #define OFF 1
//#define OFF_TOO /* not a comment start
#define ON 1 // /* nor this
#define QUOTED "/* no comment */" /* one */
#define CHARS '/' '*' '"' '\'' "\"//"
const char *s = "/* #define IN_STRING 1 */ \
#define IN_STRING_TOO 1";
int x = '"'; /* " */ int y; /* ' */
#define DIVIDED 6 / 2 /**/ / 3
#define EMPTY_COMMENT/**/4
#define STARS /***/5/* **/ /*/ tricky */
/**/ # /**/ define /**/ ALL /**/ 6 /**/
int z; /* #define BEHIND_CODE 1
*/ #define AFTER_CODE_COMMENT 7
#define LAST /* runs
over */ 8
