#
# /* null */
#   // null
#!/not a directive
# 1 "elsewhere.h"
#line 100 "here.h"
#ident "x"
#unknown directive /* kept */
#define
#define 1X 2
#undef
#undef NEVER
#define F(a a) b
#define GOOD 1
#define GOOD 1
#define GOOD 2
#define KEPT 1
#pragma push_macro("KEPT")
#undef KEPT
#define KEPT 2
#pragma pop_macro("KEPT")
#define POISONED 1
#pragma GCC poison POISONED
#define defined 1
#define __FILE__ x
#define __VA_ARGS__ 1
#define OK 1
  	 # 	 define INDENTED 1
#define TWICE 1
#undef TWICE
#define TWICE 2 /* again */
#undef TWICE extra
