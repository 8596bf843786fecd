package dev.gantrywright.patch;

import dev.gantrywright.header.Change;
import dev.gantrywright.names.FolderPlace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Gathers what is asked of the compiler flags of each key, so that one line carries all of it. */
final class FlagWishes {
  private record Flag(
      String path, String value, String macro, FolderPlace.InFlags place, String text) {}

  private record Key(String file, String section, String key) {}

  private final Map<Key, List<Flag>> byKey = new LinkedHashMap<>();

  /**
   * Asks for another value of one flag.
   *
   * @param path the profile field
   * @param value its value as the profile shows it
   * @param macro the macro that the flag defines
   * @param text what the flag shall say
   */
  void add(String path, String value, String macro, FolderPlace.InFlags place, String text) {
    Key key = new Key(place.document().path(), place.entry().section(), place.entry().key());
    byKey
        .computeIfAbsent(key, k -> new ArrayList<>())
        .add(new Flag(path, value, macro, place, text));
  }

  /** One wish for each key. */
  List<Wish> wishes() {
    List<Wish> out = new ArrayList<>();
    byKey.forEach((key, flags) -> out.add(wish(key, flags)));
    return out;
  }

  private static Wish wish(Key key, List<Flag> flags) {
    StringBuilder text = new StringBuilder(flags.get(0).place().entry().value());
    flags.stream()
        .sorted(Comparator.comparingInt((Flag flag) -> flag.place().start()).reversed())
        .forEach(flag -> text.replace(flag.place().start(), flag.place().end(), flag.text()));
    String causes = joined(flags, flag -> flag.path() + " = " + flag.value());
    return new Wish(
        joined(flags, Flag::path),
        joined(flags, Flag::value),
        flags.get(0).macro(),
        List.of(new Change.SetKey(key.section(), key.key(), text.toString(), causes)));
  }

  private static String joined(List<Flag> flags, Function<Flag, String> text) {
    return flags.stream().map(text).collect(Collectors.joining(", "));
  }
}
