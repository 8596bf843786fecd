/* Questions of conditions: what is defined, what the compiler can do, what can be included. */
#define HERE
#define EMPTY
#define CALL(x) x
#define ASKS defined
#if defined HERE && defined(HERE) && !defined AWAY && !defined ( AWAY ) && defined CALL
#define DEFINED
#endif
#if defined
#define FAULTY_DEFINED
#endif
#if defined(HERE
#define FAULTY_BRACKET
#endif
#if defined 7
#define FAULTY_NUMBER
#endif
#if __has_include("nowhere.h") || __has_include(<nowhere.h>)
#define NOWHERE
#endif
#if __has_attribute(packed) && __has_attribute(__packed__) && !__has_attribute(feathered)
#define ATTRIBUTES
#endif
#if __has_builtin(__builtin_expect) && !__has_builtin(feathered)
#define BUILTINS
#endif
#ifdef __has_include
#define CAN_ASK
#endif
#if CALL(HERE) + 0 == 0 && CALL(CALL)(3) == 3 && CALL (4) == 4
#define CALLED
#endif
#if EMPTY
#define FAULTY_EMPTY
#endif
#if EMPTY + 1 && CALL() + 1
#define NEARLY_EMPTY
#endif
#if AWAY == 0 && AWAY(1) || 1
#define FAULTY_CALL
#endif
#if true || false
#define WORDS
#else
#define NO_WORDS
#endif
#if __LINE__ == 50
#define LINE
#endif
#if __COUNTER__ == 0 && __COUNTER__ == 1
#define COUNTED
#endif
#if __STDC__ == 1 && __STDC_VERSION__ >= 201112L && __STDC_HOSTED__ == 1
#define STANDARD
#endif
#ifdef HERE extra
#define EXTRA_WORDS
#endif
#ifdef
#define FAULTY_IFDEF
#endif
#ifndef 3
#define FAULTY_IFNDEF
#endif
#if 0
#elif
#define EMPTY_ELIF
#else
#define AFTER_EMPTY_ELIF
#endif
#if 1
#elif garbage ( [
#define NEVER
#endif
#if 0
#if garbage ( [
#elif
#else
#endif
#define DEAD
#endif
#undef HERE
#undef AWAY
#undef
#undef 3
#undef CALL extra
#define
#define 7 x
#define defined 1
#define __FILE__ 1
#define NEAR(a,b
#define TWICE(a,a) a
#define BAD(a,) a
#define WORSE(1) a
#define STRAY(a) # b
#define PASTED(a) a ##
#define STARTS ## a
#define ENDS a ##
#define ENDS_SAID a ## // so
#define SAID_FIRST /* so */ ## a
#define DIGRAPH %:%: a
#define DIGRAPH_LAST a %:%:
#define SPLICED #\
# a
#define INNER a ## b
#define LONE #
#define LONE_DIGRAPH a %:
#define QUOTED "##"
#define REST(a...) a
#define LAST(...) __VA_ARGS__
#define NAMELESS(..., a) a
#define NOBLANK-3
#define PLUS+3
#define QUOTE"text"
#define BRACKET(
#define ATEND() 
