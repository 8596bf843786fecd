package dev.gantrywright.ui.names;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.NameMapException;
import dev.gantrywright.names.NameMapJson;
import dev.gantrywright.ui.state.Cell;
import dev.gantrywright.ui.state.Latest;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Executor;

/**
 * Keeps the name map's file: every change reaches it at once, off the view's thread. A file that is
 * there and could not be read is never written over.
 */
final class NamesFile {
  private final PrinterDesk desk;
  private final Cell<String> said;
  private final Latest<Kept, Kept> saving;
  private Path place;

  private record Kept(NameMap map, Path place) {}

  NamesFile(PrinterDesk desk, Executor background, Executor view, Cell<String> said) {
    this.desk = desk;
    this.said = said;
    OpenPrinter opened = desk.opened().get();
    String named = desk.profile().build().names();
    boolean read = opened.names() != null && named != null;
    place = read ? opened.file().toAbsolutePath().resolveSibling(named).normalize() : null;
    saving =
        new Latest<>(
            background,
            view,
            NamesFile::save,
            (kept, done) -> saved(done),
            (kept, failed) -> said.set(String.valueOf(failed.getMessage())));
  }

  void keep(NameMap map) {
    saving.put(new Kept(map, place == null ? free() : place));
  }

  private static Kept save(Kept kept) {
    try {
      NameMapJson.save(kept.map(), kept.place());
      return kept;
    } catch (NameMapException failed) {
      throw new IllegalStateException(failed.getMessage(), failed);
    }
  }

  /** The profile names the file once it is there. */
  private void saved(Kept kept) {
    said.set(Texts.of("names.saved", kept.place().getFileName()));
    if (place == null) {
      place = kept.place();
      Path home = desk.opened().get().file().toAbsolutePath().getParent();
      desk.values().edit("build.names", home.relativize(place).toString());
    }
  }

  /** A file beside the profile that is not there yet. */
  private Path free() {
    OpenPrinter opened = desk.opened().get();
    Path home = opened.file().toAbsolutePath().normalize().getParent();
    String name = opened.folder().root().toAbsolutePath().normalize().getFileName().toString();
    Path free = home.resolve(name + ".names.json");
    for (int i = 2; Files.exists(free); i++) {
      free = home.resolve(name + "-" + i + ".names.json");
    }
    return free;
  }
}
