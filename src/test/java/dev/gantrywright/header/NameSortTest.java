package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Names in the order of their bytes, whatever they share. */
class NameSortTest {
  private static List<String> sorted(List<String> names) {
    MacroTable table = new MacroTable();
    MacroTable.Symbol[] symbols =
        names.stream().map(table::symbol).toArray(MacroTable.Symbol[]::new);
    return Arrays.stream(NameSort.sorted(symbols)).map(MacroTable.Symbol::name).toList();
  }

  /** Latin-1 letters stand for bytes, so that the order of characters is that of bytes. */
  private static void check(List<String> names) {
    List<String> mixed = new ArrayList<>(names);
    Collections.shuffle(mixed, new Random(7));
    assertThat(sorted(mixed)).isEqualTo(names.stream().sorted().toList());
  }

  @Test
  void aNameComesBeforeThoseItBegins() {
    check(List.of("A", "AB", "ABCDEFG", "ABCDEFGH", "ABCDEFGHI", "ABCDEFGHABCDEFGH", "B"));
  }

  @Test
  void theDifferenceMayStandAnywhere() {
    String[] names = new String[24];
    for (int i = 0; i < names.length; i++) {
      char[] name = "MMMMMMMMMMMMMMMMMMMMMMMM".toCharArray();
      name[i] = i % 2 == 0 ? 'A' : 'Z';
      names[i] = new String(name);
    }
    check(List.of(names));
  }

  @Test
  void bytesAbove127ComeLast() {
    String micro = new String("µ".getBytes(StandardCharsets.UTF_8), StandardCharsets.ISO_8859_1);
    for (int at = 0; at < 8; at++) {
      String before = "ABCDEFGH".substring(0, at);
      check(List.of(before + "zzzzzzzz", before + micro + "zzzzzz", before + "Azzzzzzz"));
    }
  }

  @Test
  void manyGroupsOfManyNames() {
    List<String> names = new ArrayList<>();
    for (int port = 0; port < 26; port++) {
      for (int pin = 0; pin < 60; pin++) {
        names.add("PORT_" + (char) ('A' + port) + "_OUTPUT_LEVEL_" + pin + "_gm");
      }
    }
    check(names);
  }

  @Test
  void nothingAndOneAreSorted() {
    check(List.of());
    check(List.of("ONLY"));
  }
}
