package dev.gantrywright.app.sheet;

import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.Loader;
import dev.gantrywright.record.Sha256;
import dev.gantrywright.report.sheet.Block;
import dev.gantrywright.report.sheet.Section;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The controller board and its loader. */
final class BoardPart {
  private BoardPart() {}

  static Section of(Subject subject) {
    List<Block> blocks = new ArrayList<>();
    List<Block.Fact> facts = new ArrayList<>();
    BoardSheet sheet = subject.printer().sheet();
    if (sheet == null) {
      blocks.add(
          new Block.Missing(
              "The board sheet is not there.", "Name it in the profile under board.sheet."));
    } else {
      facts.add(Texts.fact("Board", sheet.name() == null ? "–" : sheet.name()));
    }
    facts.add(Texts.code("Microcontroller", subject.value("board.mcu")));
    facts.add(Texts.code("Board constant", subject.value("board.constant")));
    facts.add(Texts.code("Build target", subject.value("board.target")));
    if (sheet != null) {
      loader(sheet.loader(), facts);
      facts.add(Texts.code("Board sheet", subject.value("board.sheet")));
      facts.add(Texts.code("SHA-256 of the file", hash(subject)));
    }
    blocks.add(new Block.Facts(facts));
    return new Section("board", "Board", blocks);
  }

  private static void loader(Loader loader, List<Block.Fact> facts) {
    if (loader.offset() != null) {
      facts.add(
          Texts.fact(
              "Firmware starts",
              String.format(
                  Locale.ROOT, "%,d bytes (0x%X) into flash", loader.offset(), loader.offset())));
    }
    if (loader.looksFor() != null) {
      facts.add(Texts.code("Loader looks for", loader.looksFor()));
    }
    if (loader.renamedTo() != null) {
      facts.add(Texts.code("and renames it to", loader.renamedTo()));
    }
  }

  private static String hash(Subject subject) {
    Path file =
        subject.printer().file().toAbsolutePath().resolveSibling(subject.value("board.sheet"));
    try {
      return Sha256.of(Files.readAllBytes(file));
    } catch (IOException gone) {
      return "cannot be read";
    }
  }
}
