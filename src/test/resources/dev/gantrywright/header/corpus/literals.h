#define RAW R"(a // b)" /* c */
#define RAW_DELIMITED LR"x(a )" b)x" u8R"(")"
#define NOT_RAW xR"(a)"
const char *text = R"(
#define INSIDE_RAW 1
/* )";
#define AFTER_RAW 1
#define APOSTROPHE don't /* stop */
#error don't /* open
#define AFTER_ERROR 1
#warning it's "fine /* here
#define AFTER_WARNING 2
it's text /* too
#define AFTER_TEXT 3
#define ESCAPED "a\"b\\" /* c */ '\\' '\''
#if 0
it's "dead /* text
#define DEAD 1
#endif
#define AFTER_DEAD 4
#pragma message "don't /* open"
#define AFTER_PRAGMA 5
