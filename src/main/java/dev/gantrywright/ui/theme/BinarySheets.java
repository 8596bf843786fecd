package dev.gantrywright.ui.theme;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.css.Stylesheet;

/**
 * Compiles tones and stylesheet of each mode into the toolkit's binary form when the program is
 * built: the window then need not parse them while somebody waits for it.
 */
public final class BinarySheets {
  private BinarySheets() {}

  /**
   * @param args the folder that the classes are compiled into
   */
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0], "dev", "gantrywright", "ui", "theme");
    for (Mode mode : Mode.values()) {
      Path text = Files.createTempFile("workbench", ".css");
      try {
        Files.writeString(text, text(mode));
        Stylesheet.convertToBinary(text.toFile(), folder.resolve(name(mode)).toFile());
      } finally {
        Files.delete(text);
      }
    }
  }

  /** File of a mode, beside this class. */
  static String name(Mode mode) {
    return "workbench-" + mode.word() + ".bss";
  }

  /** The tones of a mode with the rules that use them. */
  static String text(Mode mode) throws IOException {
    try (InputStream in = BinarySheets.class.getResourceAsStream(Theme.SHEET)) {
      return Tones.of(mode).css() + new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }
}
