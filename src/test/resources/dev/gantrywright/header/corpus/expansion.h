#define VALUE 42
#define INDIRECT VALUE
#define LOOP LOOP + 1
#define PING PONG
#define PONG PING
#define ADD(a, b) ((a) + (b))
#define CALL(f, ...) f(__VA_ARGS__)
#define GLUE(a, b) a##b
#define XGLUE(a, b) GLUE(a, b)
#define HAS(x) defined(x)
#define NOTHING()
#define REST(first, rest...) first
#define THIRD(a, b, c, ...) c
#define STR(x) # x
#define MIX(a, b)a ## b# a
#if INDIRECT == 42
#define A 1
#endif
#if LOOP == 1
#define B 1
#endif
#if PING == 0
#define C 1
#endif
#if ADD(2, ADD(3, 4)) == 9
#define D 1
#endif
#if CALL(ADD, 1, 2) == 3
#define E 1
#endif
#if XGLUE(VAL, UE) == 42 && GLUE(4, 2) == 42 && XGLUE(0x, ff) == 255
#define F 1
#endif
#if HAS(VALUE) && !HAS(NOWHERE)
#define G 1
#endif
#if NOTHING() 1
#define H 1
#endif
#if REST(1) && REST(2, 3, 4) == 2 && THIRD(1, 2, 3, 4, 5) == 3
#define I 1
#endif
#if ADD (1, \
  2) == 3
#define J 1
#endif
#if ADD(VALUE, -VALUE) == 0 && (ADD) == 0
#define K 1
#endif
#define EMPTY
#define ARG(x) (x + 0)
#if ARG(EMPTY) == 0 && ARG() == 0
#define L 1
#endif
