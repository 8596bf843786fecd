package dev.gantrywright.cli;

import dev.gantrywright.app.BoardFacts;
import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.image.Chip;
import dev.gantrywright.image.Circumstances;
import dev.gantrywright.image.Image;
import dev.gantrywright.image.ImageJudge;
import dev.gantrywright.image.Loader;
import dev.gantrywright.image.Verdict;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.BoardStore;
import dev.gantrywright.machine.ProfileProblem;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Option;

/** What an image is held against, as several verbs take it. */
final class ImageOptions {
  @Option(
      names = "--mcu",
      paramLabel = "PART",
      description = "The controller's part number, such as STM32F405RG.")
  String mcu;

  @Option(
      names = "--offset",
      paramLabel = "N",
      converter = Offset.class,
      description = "Bytes at the start of flash that the bootloader takes: 32768, 0x8000 or 32K.")
  Long offset;

  @Option(
      names = "--board",
      paramLabel = "SHEET",
      description = "A board sheet: gives controller, offset, name and format at once.")
  Path board;

  @Option(
      names = "--not-for",
      paramLabel = "NAME",
      split = ",",
      description = "Names of other boards that must not stand in the image.")
  List<String> otherBoards = new ArrayList<>();

  /** The board sheet, where one is given. */
  Optional<BoardSheet> sheet() {
    if (board == null) {
      return Optional.empty();
    }
    try {
      return Optional.of(BoardStore.read(board));
    } catch (ProfileProblem e) {
      throw new UsageProblem(e.getMessage(), e);
    }
  }

  /** The controller, where one is named; an offset alone says nothing without its flash. */
  Optional<Chip> chip(Optional<BoardSheet> sheet) {
    String part = mcu != null ? mcu : sheet.map(BoardSheet::mcu).orElse(null);
    if (part == null) {
      return Optional.empty();
    }
    return Optional.of(
        BoardFacts.chip(Catalog.shipped(), part)
            .orElseThrow(
                () ->
                    new UsageProblem(
                        "no controller '"
                            + part
                            + "' in the catalogue; give the part number as the"
                            + " maker writes it, without package letters")));
  }

  private List<String> others(List<String> own) {
    if (board == null || own.isEmpty() || !otherBoards.isEmpty()) {
      return otherBoards;
    }
    try {
      return BoardFacts.otherBoards(board, own.get(0));
    } catch (IOException e) {
      return List.of();
    }
  }

  /** Judges the image, where a controller is named. */
  Optional<Verdict> judge(Image image) {
    return judge(image, Circumstances.unknown());
  }

  /** Judges the image in what is known around it; the names of boards are added here. */
  Optional<Verdict> judge(Image image, Circumstances known) {
    Optional<BoardSheet> sheet = sheet();
    Loader told = sheet.map(BoardFacts::loader).orElse(Loader.none());
    Loader loader =
        new Loader(
            offset == null ? told.startBytes() : offset,
            told.endBytes(),
            sheet.isPresent() ? told.takes() : Set.of());
    List<String> own = sheet.map(BoardSheet::name).map(List::of).orElse(List.of());
    Circumstances around = known.boardNames(own, others(own));
    return chip(sheet).map(chip -> ImageJudge.judge(image, chip, loader, around));
  }
}
