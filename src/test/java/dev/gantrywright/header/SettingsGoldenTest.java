package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is read of each setting of two headers of our own making: its heading, the comments above
 * and behind, and the choices, unit and range that they give. The golden files stand beside the
 * headers.
 */
class SettingsGoldenTest {
  private static final Path FOLDER = Path.of("src/test/resources/dev/gantrywright/header/settings");

  private static String account(byte[] header) {
    StringBuilder out = new StringBuilder();
    for (Setting s : HeaderDocument.of("x.h", header).settings()) {
      String head = s.line() + " " + s.name() + " " + s.kind() + (s.on() ? "" : " off");
      out.append(head).append(' ').append(s.state()).append('\n');
      line(out, "value", s.value());
      line(out, "section", s.section());
      line(out, "comment", s.comment().replace("\n", " | "));
      line(out, "choices", String.join(" ", s.choices()));
      line(out, "unit", s.unit());
      line(out, "range", s.range() == null ? "" : s.range().min() + " to " + s.range().max());
      line(out, "elements", s.elements().isEmpty() ? "" : "" + s.elements().size());
    }
    return out.toString();
  }

  private static void line(StringBuilder out, String what, String text) {
    if (!text.isEmpty()) {
      out.append("  ").append(what).append(": ").append(text).append('\n');
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"perch", "nasty"})
  void everySettingIsReadAsTheGoldenFileSays(String name) throws IOException {
    String account = account(Files.readAllBytes(FOLDER.resolve(name + ".h")));
    Path golden = FOLDER.resolve(name + ".txt");
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(golden, account);
    }
    assertThat(account).isEqualTo(Files.readString(golden));
  }

  @ParameterizedTest
  @EnumSource(LineEnds.class)
  void theLineEndsMakeNoDifference(LineEnds ends) throws IOException {
    for (String name : new String[] {"perch", "nasty"}) {
      byte[] header = Files.readAllBytes(FOLDER.resolve(name + ".h"));
      assertThat(account(ends.apply(utf8(header)))).as(name).isEqualTo(account(header));
    }
  }

  private static byte[] utf8(byte[] bytes) {
    return new String(bytes, StandardCharsets.UTF_8).getBytes(StandardCharsets.UTF_8);
  }
}
