package dev.gantrywright.rules;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.DriverIc;
import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.header.Change;
import dev.gantrywright.header.EditPlan;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Setting;
import dev.gantrywright.names.NameEntry;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Keeps what follows from a folder, its name map and a board constant, for the next check of the
 * same ones. Compares by identity: a folder that was read again is another folder.
 */
final class Memo {
  /** Folders that are open at the same time, in one window or one run over many profiles. */
  private static final int MOST = 16;

  private static final int MOST_PARTS = 256;

  /** Field paths; a workshop's are some hundreds, each in many findings. */
  private static final int MOST_PLACES = 4096;

  private record Key(int folder, int names, String constant) {
    static Key of(CheckInput input) {
      return new Key(
          System.identityHashCode(input.folder()),
          System.identityHashCode(input.names()),
          input.profile().board().constant());
    }
  }

  /**
   * What is kept.
   *
   * @param input the input that it was worked out for; holds folder and map alive
   * @param folder the folder as it is for the board
   * @param derived what rules work out from it, by its type
   */
  private record Kept(CheckInput input, FirmwareFolder folder, Map<Class<?>, Object> derived) {
    boolean answers(CheckInput other) {
      return input.folder() == other.folder()
          && input.names() == other.names()
          && Objects.equals(input.profile().board().constant(), other.profile().board().constant());
    }
  }

  /** Part numbers that were looked up in a catalogue. */
  private record Parts(
      Catalog catalog, Map<String, Optional<Mcu>> mcus, Map<String, Optional<DriverIc>> drivers) {
    Parts(Catalog catalog) {
      this(catalog, new ConcurrentHashMap<>(), new ConcurrentHashMap<>());
    }

    boolean full() {
      return mcus.size() >= MOST_PARTS || drivers.size() >= MOST_PARTS;
    }
  }

  private volatile Parts parts = new Parts(null);
  private final Map<Key, Kept> kept = new ConcurrentHashMap<>();
  private final Map<String, String> places = new ConcurrentHashMap<>();

  /** The path in words, as {@link Place} says it. */
  String place(String path) {
    String known = places.get(path);
    if (known == null) {
      known = Place.of(path);
      if (places.size() < MOST_PLACES) {
        places.put(path, known);
      }
    }
    return known;
  }

  /** The part of that number; numbers are few, and finding one compares with every row. */
  Optional<Mcu> mcu(Catalog catalog, String number) {
    return parts(catalog).mcus().computeIfAbsent(number, catalog::mcu);
  }

  /** The driver IC of that name. */
  Optional<DriverIc> driver(Catalog catalog, String ic) {
    return parts(catalog).drivers().computeIfAbsent(ic, catalog::driver);
  }

  private Parts parts(Catalog catalog) {
    Parts now = parts;
    if (now.catalog() != catalog || now.full()) {
      now = new Parts(catalog);
      parts = now;
    }
    return now;
  }

  FirmwareFolder boardFolder(CheckInput input) {
    return at(input).folder();
  }

  <T> T derived(CheckInput input, Class<T> type, java.util.function.Supplier<T> make) {
    return type.cast(at(input).derived().computeIfAbsent(type, key -> make.get()));
  }

  private Kept at(CheckInput input) {
    Key key = Key.of(input);
    Kept known = kept.get(key);
    if (known == null || !known.answers(input)) {
      if (kept.size() >= MOST) {
        kept.clear();
      }
      known = new Kept(input, evaluate(input), new ConcurrentHashMap<>());
      kept.put(key, known);
    }
    return known;
  }

  private static FirmwareFolder evaluate(CheckInput input) {
    String constant = input.profile().board().constant();
    NameEntry entry = input.names() == null ? null : input.names().fields().get("board.constant");
    if (constant == null || entry == null || entry.macro() == null || entry.section() != null) {
      return input.folder();
    }
    boolean known = input.folder().named(constant).stream().anyMatch(Setting::live);
    return known
        ? EditPlan.of(
                input.folder(),
                List.of(new Change.SetValue(entry.macro(), constant, "board.constant")))
            .after()
        : input.folder();
  }
}
