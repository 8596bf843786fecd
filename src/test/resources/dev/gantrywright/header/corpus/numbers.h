/* Integer and character constants of conditions: C17 6.4.4.1, 6.4.4.4. */
#if 0x1F == 31 && 0X1f == 31 && 0b101 == 5 && 0B11 == 3 && 017 == 15 && 0 == 00
#define RADICES
#endif
#if 10u == 10 && 10U == 10 && 10l == 10 && 10LL == 10 && 10ull == 10 && 10LLU == 10 && 10lu == 10
#define SUFFIXES
#endif
#if -1 > 0u && -1 < 0 && -1 < 0l && -1 > 0ul
#define UNSIGNED_WINS
#endif
#if 9223372036854775807 + 0 > 0 && 9223372036854775808 > 0 && 0xFFFFFFFFFFFFFFFF == -1
#define LARGE
#endif
#if 'A' == 65 && '\n' == 10 && '\0' == 0 && '\x41' == 65 && '\101' == 65 && '\\' == 92 && '\'' == 39
#define PLAIN_CHARACTERS
#endif
#if '\a' == 7 && '\b' == 8 && '\t' == 9 && '\v' == 11 && '\f' == 12 && '\r' == 13 && '\e' == 27
#define ESCAPES
#endif
#if 'AB' == 16706 && 'ABCD' == 1094861636 && '\377' == -1 && '\xff' < 0
#define SEVERAL_CHARACTERS
#endif
#if L'A' == 65 && u'A' == 65 && U'A' == 65 && u'\xffff' == 65535 && L'\xffff' == 65535
#define WIDE_CHARACTERS
#endif
#if U'\xffffffff' > 0 && U'\U0001F426' == 128038
#define WIDER_CHARACTERS
#endif
#if 7 / 2 == 3 && -7 / 2 == -3 && -7 % 3 == -1 && 7 % -3 == 1
#define DIVISIONS
#endif
#if (1 << 4) == 16 && (-16 >> 2) == -4 && (1 << 63) < 0 && (0x8000000000000000u >> 63) == 1
#define SHIFTS
#endif
#if (6 & 3) == 2 && (6 | 3) == 7 && (6 ^ 3) == 5 && ~0 == -1 && !5 == 0 && !0 == 1 && +5 == 5
#define BITS
#endif
#if 2 + 3 * 4 == 14 && (2 + 3) * 4 == 20 && 10 - 4 - 3 == 3 && 1 + 2 << 1 == 6
#define PRECEDENCE
#endif
#if (1 ? 2 : 3) == 2 && (0 ? 2 : 3) == 3 && (1 ? 0 ? 4 : 5 : 6) == 5 && (1 ? -1 : 0u) > 0
#define CHOICES
#endif
#if 1 || 1 / 0
#define NOT_EVALUATED
#endif
#if 0 && 1 / 0
#else
#define NOT_EVALUATED_EITHER
#endif
#if 1 < 2 && 2 <= 2 && 3 > 2 && 2 >= 2 && 1 != 2 && !(1 > 2) && !(3 <= 2) && !(1 >= 2) && !(2 < 1)
#define COMPARED
#endif
#if "text" || 1
#define FAULTY_TEXT
#endif
#if 1 +
#define FAULTY_END
#endif
#if (1
#define FAULTY_BRACKET
#endif
#if 1 2
#define FAULTY_PAIR
#endif
#if
#define FAULTY_NOTHING
#else
#define AFTER_NOTHING
#endif
