package dev.gantrywright.ui.theme;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URL;
import java.util.List;
import javafx.css.CssParser;
import javafx.css.Rule;
import javafx.css.Stylesheet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BinarySheetsTest {
  @ParameterizedTest
  @EnumSource
  void theCompiledSheetSaysWhatTheTextSays(Mode mode) throws IOException {
    URL compiled = BinarySheets.class.getResource(BinarySheets.name(mode));
    assertThat(compiled).as("the build compiles it").isNotNull();
    List<String> rules = rules(Stylesheet.loadBinary(compiled));
    assertThat(rules)
        .hasSizeGreaterThan(150)
        .isEqualTo(rules(new CssParser().parse(BinarySheets.text(mode))));
  }

  @ParameterizedTest
  @EnumSource
  void theWindowTakesTheCompiledSheet(Mode mode) {
    assertThat(Theme.sheets(mode)).singleElement().asString().endsWith(BinarySheets.name(mode));
  }

  /** The toolkit's own words for each rule: selectors, then every property with its value. */
  private static List<String> rules(Stylesheet sheet) {
    return sheet.getRules().stream().map(rule -> selectors(rule) + declarations(rule)).toList();
  }

  /** But border styles, of which the toolkit says where an array lies in memory. */
  private static List<String> declarations(Rule rule) {
    return rule.getDeclarations().stream()
        .filter(declaration -> !declaration.getProperty().equals("-fx-border-style"))
        .map(Object::toString)
        .toList();
  }

  private static String selectors(Rule rule) {
    return rule.getSelectors().toString();
  }
}
