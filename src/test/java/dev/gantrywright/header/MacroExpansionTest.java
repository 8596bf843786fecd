package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The examples of macro replacement in ISO/IEC 9899:2018, by their section numbers. */
class MacroExpansionTest {
  /** The tokens of the text after replacement, one blank between any two. */
  private static String expanded(String definitions, String text) {
    MacroTable macros = table(definitions);
    return spaced(new MacroExpander(name -> body(macros, name)).expand(TokenLexer.lex(text)));
  }

  private static MacroTable table(String definitions) {
    Evaluation evaluation =
        new Evaluation(Language.C, IncludeResolver.none(), Unknowns.undefined(), null, false);
    byte[] bytes = definitions.getBytes(StandardCharsets.ISO_8859_1);
    evaluation.include(SourceFile.of("example.h", bytes), null, -1);
    return evaluation.macros();
  }

  private static MacroBody body(MacroTable macros, String name) {
    MacroTable.Symbol symbol = macros.find(name);
    return symbol != null && symbol.meaning() instanceof Meaning.Defined d ? d.body() : null;
  }

  private static String spaced(List<Token> tokens) {
    return String.join(" ", tokens.stream().map(Token::text).toList());
  }

  private static void check(String definitions, String text, String expected) {
    assertThat(expanded(definitions, text)).isEqualTo(spaced(TokenLexer.lex(expected)));
  }

  /** C17 6.10.3.3p4. */
  @Test
  void hashHashFromAnExpansionIsNoOperator() {
    check(
        """
        #define hash_hash # ## #
        #define mkstr(a) # a
        #define in_between(a) mkstr(a)
        #define join(c, d) in_between(c hash_hash d)
        """,
        "char p[] = join(x, y);",
        "char p[] = \"x ## y\";");
  }

  /** C17 6.10.3.5p3, examples 1 and 2. */
  @Test
  void manifestConstantAndMaximum() {
    check(
        "#define TABSIZE 100\n#define max(a, b) ((a) > (b) ? (a) : (b))\n",
        "int table[TABSIZE]; max(TABSIZE, 2 + 3)",
        "int table[100]; ((100) > (2 + 3) ? (100) : (2 + 3))");
  }

  private static final String EXAMPLE_3 =
      """
      #define x 3
      #define f(a) f(x * (a))
      #undef x
      #define x 2
      #define g f
      #define z z[0]
      #define h g(~
      #define m(a) a(w)
      #define w 0,1
      #define t(a) a
      #define p() int
      #define q(x) x
      #define r(x,y) x ## y
      #define str(x) # x
      """;

  /** C17 6.10.3.5p5, example 3. */
  @Test
  void redefinitionAndReexamination() {
    check(
        EXAMPLE_3,
        "f(y+1) + f(f(z)) % t(t(g)(0) + t)(1);",
        "f(2 * (y+1)) + f(2 * (f(2 * (z[0])))) % f(2 * (0)) + t(1);");
    check(
        EXAMPLE_3,
        "g(x+(3,4)-w) | h 5) & m\n(f)^m(m);",
        "f(2 * (2+(3,4)-0,1)) | f(2 * (~ 5)) & f(2 * (0,1))^m(0,1);");
    check(
        EXAMPLE_3,
        "p() i[q()] = { q(1), r(2,3), r(4,), r(,5), r(,) };",
        "int i[] = { 1, 23, 4, 5, };");
    check(
        EXAMPLE_3, "char c[2][6] = { str(hello), str() };", "char c[2][6] = { \"hello\", \"\" };");
  }

  private static final String EXAMPLE_4 =
      """
      #define str(s) # s
      #define xstr(s) str(s)
      #define debug(s, t) printf("x" # s "= %d, x" # t "= %s", \\
                              x ## s, x ## t)
      #define INCFILE(n) vers ## n
      #define glue(a, b) a ## b
      #define xglue(a, b) glue(a, b)
      #define HIGHLOW "hello"
      #define LOW LOW ", world"
      """;

  /** C17 6.10.3.5p6, example 4. */
  @Test
  void stringizingAndPasting() {
    check(EXAMPLE_4, "debug(1, 2);", "printf(\"x\" \"1\" \"= %d, x\" \"2\" \"= %s\", x1, x2);");
    check(
        EXAMPLE_4,
        """
        fputs(str(strncmp("abc\\0d", "abc", '\\4') // this goes away
        == 0) str(: @\\n), s);
        """,
        """
        fputs("strncmp(\\"abc\\\\0d\\", \\"abc\\", '\\\\4') == 0" ": @\\n", s);
        """);
    check(EXAMPLE_4, "xstr(INCFILE(2).h)", "\"vers2.h\"");
    check(EXAMPLE_4, "glue(HIGH, LOW);", "\"hello\";");
    check(EXAMPLE_4, "xglue(HIGH, LOW)", "\"hello\" \", world\"");
  }

  /** C17 6.10.3.5p7, example 5. */
  @Test
  void placemarkers() {
    check(
        "#define t(x,y,z) x ## y ## z\n",
        "int j[] = { t(1,2,3), t(,4,5), t(6,,7), t(8,9,), t(10,,), t(,11,), t(,,12), t(,,) };",
        "int j[] = { 123, 45, 67, 89, 10, 11, 12, };");
  }

  /** C17 6.10.3.5p8, example 6: the valid redefinitions all leave the same macro. */
  @Test
  void validRedefinitions() {
    check(
        """
        #define OBJ_LIKE (1-1)
        #define OBJ_LIKE /* white space */ (1-1) /* other */
        #define FUNC_LIKE(a) ( a )
        #define FUNC_LIKE( a )( /* note the white space */ \\
            a /* other stuff on this line
            */ )
        """,
        "OBJ_LIKE FUNC_LIKE(2)",
        "(1-1) ( 2 )");
  }

  /** C17 6.10.3.5p9, example 7. */
  @Test
  void variableArguments() {
    String definitions =
        """
        #define debug(...) fprintf(stderr, __VA_ARGS__)
        #define showlist(...) puts(#__VA_ARGS__)
        #define report(test, ...) ((test)?puts(#test): \\
                printf(test, __VA_ARGS__))
        """;
    check(definitions, "debug(\"Flag\");", "fprintf(stderr, \"Flag\");");
    check(definitions, "debug(\"X = %d\\n\", x);", "fprintf(stderr, \"X = %d\\n\", x);");
    check(
        definitions,
        "showlist(The first, second, and third items.);",
        "puts(\"The first, second, and third items.\");");
    // the standard's text prints "x>y" for test in the call, which the replacement shows twice
    check(
        definitions,
        "report(x>y, \"x is %d but y is %d\", x, y);",
        "((x>y)?puts(\"x>y\"): printf(x>y, \"x is %d but y is %d\", x, y));");
  }

  /** C17 6.10.3.4p4: what is left of a macro's own name is not replaced again. */
  @Test
  void recursionStops() {
    check("#define foo foo bar\n", "foo", "foo bar");
    check("#define a b\n#define b c a\n", "a", "c a");
    check("#define f(x) f(x x)\n", "f(f(1))", "f(f(1 1) f(1 1))");
  }

  /** A few lines that ask for an astronomic expansion are refused, not run. */
  @Test
  void runawayExpansionIsBounded() {
    StringBuilder text = new StringBuilder("#define E0 x x\n");
    for (int i = 1; i < 60; i++) {
      text.append("#define E").append(i).append(" E").append(i - 1).append(" E").append(i - 1);
      text.append('\n');
    }
    text.append("#if E59\n#endif\n#define AFTER 1\n");
    HeaderDocument document =
        HeaderDocument.of("e.h", text.toString().getBytes(StandardCharsets.UTF_8));
    assertThat(document.settings()).last().extracting(Setting::name).isEqualTo("AFTER");
  }
}
