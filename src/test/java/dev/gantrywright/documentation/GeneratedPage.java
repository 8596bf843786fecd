package dev.gantrywright.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A page that is made by a test: {@code -Dgolden.update=true} writes it, else it must be equal. */
final class GeneratedPage {
  private GeneratedPage() {}

  static void hold(Path page, String made) throws IOException {
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(page, made);
    }
    assertThat(Files.readString(page))
        .as("%s is made: mvn -B test -Dtest='*PageTest' -Dgolden.update=true", page)
        .isEqualTo(made);
  }

  /** A text as a cell of a table. */
  static String cell(String text) {
    return text.strip()
        .replaceAll("\\s+", " ")
        .replace("|", "\\|")
        .replace("<", "&lt;")
        .replace("*", "\\*");
  }

  static String code(String text) {
    return "`" + text.strip().replace("|", "\\|") + "`";
  }
}
