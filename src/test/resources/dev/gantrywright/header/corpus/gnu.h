/* What the GNU preprocessor adds, and pastes at their edges. */
#define LOG(form, ...) print(form, ## __VA_ARGS__)
#define NAMED(form, rest...) print(form, ## rest)
#define GLUE(a, b) a ## b
#define TRIPLE(a, b, c) a ## b ## c
#define TEXT(a) #a
#define TEXTGLUE(a) L ## #a
#define NESTED(a) GLUE(a, a)
#define SELF SELF + 1
#define PING PONG
#define PONG PING
#if GLUE(1, 2) == 12 && GLUE(,2) == 2 && GLUE(1,) == 1 && TRIPLE(1,,3) == 13
#define GLUED
#endif
#if GLUE(GL, UE)(4, 2) == 42 && NESTED(3) == 33
#define GLUED_AGAIN
#endif
#if GLUE(0x, F) == 15 && GLUE(1, u) == 1 && GLUE(<, <) 0 == 0 || 1
#define GLUED_KINDS
#endif
#if SELF || 1
#define SELF_ENDS
#endif
#if PING == 0 && PONG == 0
#define PING_ENDS
#endif
#define DEFER GLUE
#if DEFER (7, 8) == 78
#define DEFERRED
#endif
#pragma push_macro("PING")
#undef PING
#define PING 5
#if PING == 5
#define PUSHED
#endif
#pragma pop_macro("PING")
#if PING == 0
#define POPPED
#endif
#ident "nest"
#warning fine
#line 40 "elsewhere.h"
#if __LINE__ == 41
#define LINED
#endif
# 90 "again.h"
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 1
#if 0
#define NOT_DEEP
#elif 1
#define DEEP
#else
#define NOT_DEEP_EITHER
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
#endif
/* between */ #define BETWEEN 1
/* a
   b */ # /* c */ define /* d */ AROUND /* e */ 2 /* f */
%: define DIGRAPH 3
%:\
define SPLICED_DIGRAPH 4
#define STRING "// no /* comment" /* but this
is one */ 5
#define QUOTED '"' + '\'' // "
int a; #define NOT_FIRST 1
#define LAST_LINE \
  6
