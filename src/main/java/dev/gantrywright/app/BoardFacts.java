package dev.gantrywright.app;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.image.Chip;
import dev.gantrywright.image.ImageFormat;
import dev.gantrywright.load.LoaderSign;
import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.BoardStore;
import dev.gantrywright.machine.Loader;
import dev.gantrywright.machine.LoaderMedium;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.SuccessSign;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** What a board sheet says, in the terms of images and of loading. */
public final class BoardFacts {
  private BoardFacts() {}

  /** The controller of that part number, where the catalogue has it. */
  public static Optional<Chip> chip(Catalog catalog, String part) {
    return part == null ? Optional.empty() : catalog.mcu(part).map(Chip::of);
  }

  /**
   * The board's loader as the image judge needs it.
   *
   * <p>Card loaders read raw binaries (common practice, no published source); a sheet whose loader
   * takes something else is not told so.
   */
  public static dev.gantrywright.image.Loader loader(BoardSheet sheet) {
    Loader loader = sheet.loader();
    long offset = loader.offset() == null ? 0 : loader.offset();
    long end = loader.bootSection() == null ? 0 : loader.bootSection();
    return new dev.gantrywright.image.Loader(offset, end, formats(loader.medium()));
  }

  private static Set<ImageFormat> formats(LoaderMedium medium) {
    if (medium == LoaderMedium.CARD) {
      return Set.of(ImageFormat.RAW);
    }
    return medium == LoaderMedium.UF2 ? Set.of(ImageFormat.UF2) : Set.of();
  }

  /** What the loader does to the file once it has taken it. */
  public static LoaderSign sign(Loader loader) {
    SuccessSign sign = loader.success();
    if (sign == SuccessSign.RENAMED) {
      return LoaderSign.RENAMED;
    }
    return sign == SuccessSign.GONE ? LoaderSign.GONE : LoaderSign.NONE;
  }

  /**
   * The boards whose sheets lie in the folder of a file, but for one: an image must not name them.
   *
   * @param own name of the board that is not listed
   */
  public static List<String> otherBoards(Path beside, String own) throws IOException {
    List<String> names = new ArrayList<>();
    Path folder = beside.toAbsolutePath().getParent();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path f : files.filter(p -> p.toString().endsWith(".board.json")).sorted().toList()) {
        try {
          String name = BoardStore.read(f).name();
          if (name != null && !name.equals(own)) {
            names.add(name);
          }
        } catch (ProfileProblem e) {
          // A sheet that cannot be read is told where it is opened; here it names no board.
          continue;
        }
      }
    }
    return names;
  }
}
