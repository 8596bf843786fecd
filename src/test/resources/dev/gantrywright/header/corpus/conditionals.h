#define ONE 1
#define TWO 2
#define EMPTY
#if ONE
#define A 1
#elif TWO
#define A 2
#else
#define A 3
#endif
#if 0
#if garbage ( here
#else
#define DEAD 1
#endif
#elif ONE == 2 || TWO == 2
#define B 1
#elif 1 / 0
#define B 2
#endif
#ifdef ONE
# ifndef TWO
#  define C 1
# else
#  define C 2
#  undef ONE
#  ifdef ONE
#   define D 1
#  endif
# endif
#endif
#if defined ONE || defined(TWO) && !defined ( THREE )
#define E 1
#endif
#if (2 - 3u) > 0 && -1 < 0 && -1 > 0u
#define UNSIGNED 1
#endif
#if 0x7fffffffffffffff + 1 < 0
#define WRAPS 1
#endif
#if 18446744073709551615u == -1
#define LARGE 1
#endif
#if 'a' == 97 && '\n' == 10 && '\377' < 0 && 'ab' == 24930 && L'a' == 97
#define CHARACTERS 1
#endif
#if 1 ? 2 ? 0 : 1 : 3
#define NESTED 0
#elif (1, 2) == 2
#define NESTED 1
#else
#define NESTED 2
#endif
#if 010 == 8 && 0b101 == 5 && 0XFFu == 255 && 1LL == 1ull
#define BASES 1
#endif
#if -5 / 2 == -2 && -5 % 2 == -1 && (-5 >> 1) == -3 && 1 << 63 < 0
#define SIGNS 1
#endif
#if ~0 == -1 && !0 && !!5 == 1 && - - 1 == 1 && +1
#define UNARY 1
#endif
#if 1 || (1 / 0)
#define SHORT 1
#endif
#if 0 && (1 % 0)
#else
#define SHORT_AND 1
#endif
#if true || false
#define WORDS 1
#endif
#elifdef ONE
#if 0
#elifdef TWO
#define ELIFDEF 1
#endif
#if 0
#elifndef TWO
#else
#define ELIFNDEF 1
#endif
#if UNKNOWN == 0 && EMPTY + 1
#define ZERO 1
#endif
