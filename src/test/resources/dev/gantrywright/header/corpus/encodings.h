#define FIRST_BEHIND_MARK 1
#define LATIN "�" /* �C */
#define UTF "é"
#define MICRO_µ 1
#define Wärme 2
#define \u00e4X 3
#if \u00e4X == 3
#define UNIVERSAL 1
#endif
#if Wärme == 2
#define NATIVE 1
#endif
