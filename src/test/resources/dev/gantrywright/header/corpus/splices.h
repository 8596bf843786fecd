#def\
ine WI\
NG 1\
2
#\
define TAIL \
   a \
   b
#define CREST "one \
two" 'x\
y'
# /* a
comment over lines */ define /* here */ BEAK /* and
here */ 3 /* there */
#define CLAW(a, \
  b) a \
  + b
/\
* a spliced comment #define HIDDEN 1 *\
/
#define AFTER 1 /\
/ a spliced line comment \
#define ALSO_HIDDEN 2
#define PLUS 1 +\
+ 2
#if 1 \
  && 0
#define DEAD 1
#endif
#define BLANKED 1 \  
 2
#define NUMBER 0x1\
2.\
5
%\
:define DIGRAPH 1
