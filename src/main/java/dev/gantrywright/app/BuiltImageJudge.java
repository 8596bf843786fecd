package dev.gantrywright.app;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.image.Chip;
import dev.gantrywright.image.Circumstances;
import dev.gantrywright.image.Image;
import dev.gantrywright.image.ImageJudge;
import dev.gantrywright.image.Loader;
import dev.gantrywright.image.Verdict;
import dev.gantrywright.load.LoadHistory;
import dev.gantrywright.machine.BoardSheet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Judges a printer's own build against its board, the folder it came from and what was loaded. */
final class BuiltImageJudge {
  private BuiltImageJudge() {}

  /**
   * @param sources files of the patched folder that the build reads
   * @return empty where the controller is not in the catalogue
   */
  static Optional<Verdict> judge(
      OpenPrinter printer, Image image, Path file, List<Path> sources, Path records)
      throws IOException {
    BoardSheet sheet = printer.sheet();
    String part = printer.profile().board().mcu();
    if (part == null && sheet != null) {
      part = sheet.mcu();
    }
    Optional<Chip> chip = BoardFacts.chip(Catalog.shipped(), part);
    Loader loader = sheet == null ? Loader.none() : BoardFacts.loader(sheet);
    Circumstances around = circumstances(printer, file, sources, records);
    return chip.map(c -> ImageJudge.judge(image, c, loader, around));
  }

  private static Circumstances circumstances(
      OpenPrinter printer, Path file, List<Path> sources, Path records) throws IOException {
    BoardSheet sheet = printer.sheet();
    Circumstances around = Circumstances.unknown();
    if (sheet != null && sheet.name() != null) {
      around =
          around.boardNames(
              List.of(sheet.name()), BoardFacts.otherBoards(printer.file(), sheet.name()));
      Path own = RecordPlace.of(records, sheet.name());
      Optional<LoadHistory.Entry> last = new LoadHistory(own.resolve("loads.jsonl")).last();
      if (last.isPresent()) {
        around = around.lastLoaded(last.get().sha256());
      }
    }
    Optional<Circumstances.Source> newest = Optional.empty();
    for (Path source : sources) {
      if (Files.exists(source)) {
        Instant written = Files.getLastModifiedTime(source).toInstant();
        if (newest.isEmpty() || written.isAfter(newest.get().written())) {
          newest = Optional.of(new Circumstances.Source(source, written));
        }
      }
    }
    return newest.isEmpty()
        ? around
        : around.built(Files.getLastModifiedTime(file).toInstant(), newest.get());
  }
}
