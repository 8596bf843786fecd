#define	TABBED		1	+	2	
#define PAREN (1)
#define NOT_FUNCTION (a) a
#define FUNCTION(a)a
#define NONE()
#define   WIDE( a ,b,   c )   a   b	c
#define VARIADIC(a,...)a __VA_ARGS__
#define ONLY(...)__VA_ARGS__
#define NAMED(args...)f( args )
#define HASH1(a)#a
#define HASH2(a) # a
#define HASH3(a)x#a#a # a y
#define PASTE1(a,b)a##b
#define PASTE2(a,b)a ## b
#define PASTE3(a,b)a## b ##c
#define PASTE4 a##b ## c# d
#define OBJECT # ## #
#define OPERATORS a+b - c*d / e%f << g>>h
#define DIGRAPHS <: %: :> <% %> %:
#define FORMFEED ab
#define STRINGS "a  b"   "c"'d'   L"e" u8"f" U'g'
#define NUMBERS 0x1.8p-3 1.e+5 .5f 1'000
#define TRIGRAPHS ??= ??( ??/
#define SIGN$ 1
#define ASSIGN a=b==c
#define DOTS a...b . . c
#define SEMI a;b ; c
#define ATSIGN @a ` b
#define MORE(x, y...) g(x, ## y)
