// Spliced comment \
   that goes on in the next line
#define SPLICED_NA\
ME 1

#def\
ine SPLICED_WORD 2 // after

#define VALUE_WITH /* one */ A /* two */ + /* three */ B // four
#define STRING_WITH "/* no comment */ // nor this" // but this
#define QUOTES '"' /* " */
#define HASH_IN "#define INNER 1"
#define EMPTY_COMMENT /**/
#define LONG_LIST { \
  { 1, 2 },  /* first pair */ \
  { 3, 4 }   /* second pair */ \
} // behind

%:define DIGRAPH 1
 # /* between */ define /* again */ SPACED /* and again */ 3 /* last */
#	define TABBED	4	// tab
#define FUNCTION(a, b) ((a) + (b)) // sum
#define VARIADIC(...) __VA_ARGS__
#define NOT_FUNCTION (a)

#if 0
// dead comment
#define DEAD 1 // mm
#endif

#ifdef __FAST__ // only the compiler knows
#define OPEN 1
#else
#define OPEN 2
#endif

/* a block
#define INSIDE_A_BLOCK 1
*/
#define AFTER_THE_BLOCK 2 /* begins here
  and ends here */
//#define OFF_SPLICED 1 \
    + 2
#define LAST_ONE 9
