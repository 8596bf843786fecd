package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A folder after an edit is the folder that reading all of it anew gives. */
class CarriedEvaluationTest {
  private static final Map<String, String> FILES =
      Map.of(
          "main.cpp",
          "#include \"board.h\"\n#include \"all.h\"\n",
          "board.h",
          """
          #pragma once
          #define BOARD 2
          #define WORD BOARD
          #define HEADER "speeds.h"
          #define PLAIN 7
          #define TWICE(x) (x * 2)
          """,
          "all.h",
          """
          #ifndef ALL_H
          #define ALL_H
          #if WORD == 2
          #include HEADER
          #elif WORD == 3
          //#define EXTRA 1
          #else
          #error "no such board"
          #endif
          #ifdef FEATURE
          #define LIMIT 5 // mm
          #endif
          #if OUTSIDE > 1
          #define PLAIN 8
          #endif
          #if defined(EXTRA) && LIMIT > 4
          #define BOTH 1
          #endif
          #endif
          """,
          "speeds.h",
          """
          // === Speeds ===
          #define FEATURE
          #define FAST 100   // mm/s
          #define SLOW { 1, 2, 3 }
          #if FAST > 50 || __LINE__ > 90
          #define GAIN 9
          #endif
          """,
          "lone.h",
          """
          #if PLAIN == 7
          #define SEVEN 1
          #endif
          #define ALONE 3
          """);

  private static final List<String> VALUES =
      List.of("1", "2", "3", "7", "60", "400", "BOARD", "PLAIN", "\"speeds.h\"", "{ 4, 5 }", "");

  private static FirmwareFolder read(Map<String, byte[]> files) {
    return FirmwareFolder.of(Path.of("f"), files, Map.of("OUTER", "1"));
  }

  private static Map<String, byte[]> files() {
    Map<String, byte[]> out = new TreeMap<>();
    FILES.forEach((path, text) -> out.put(path, text.getBytes(StandardCharsets.UTF_8)));
    return out;
  }

  private static void same(FirmwareFolder now, Map<String, byte[]> files, String edit) {
    FirmwareFolder fresh = read(files);
    assertThat(now.settings()).as(edit).isEqualTo(fresh.settings());
    assertThat(now.problems()).as(edit).isEqualTo(fresh.problems());
    for (Setting setting : fresh.settings()) {
      assertThat(now.live(setting.name())).as(edit).isEqualTo(fresh.live(setting.name()));
      assertThat(now.named(setting.name())).as(edit).isEqualTo(fresh.named(setting.name()));
      assertThat(Why.of(now, setting).words()).as(edit).isEqualTo(Why.of(fresh, setting).words());
    }
  }

  /** Whether an evaluation of these files serves the others. */
  private static boolean serves(Map<String, byte[]> files, Map<String, byte[]> others) {
    Map<String, SourceFile> before = new TreeMap<>();
    files.forEach((path, bytes) -> before.put(path, SourceFile.of(path, bytes)));
    Map<String, SourceFile> now = new TreeMap<>();
    others.forEach(
        (path, bytes) -> {
          SourceFile near = before.get(path);
          now.put(path, near == null ? SourceFile.of(path, bytes) : near.with(bytes));
        });
    return FolderEvaluation.of(before.values(), Map.of()).carried(before, now) != null;
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void anyWalkOfEdits(long seed) {
    Random chance = new Random(seed);
    Map<String, byte[]> files = files();
    FirmwareFolder folder = read(files);
    for (int step = 0; step < 150; step++) {
      List<Setting> all = new ArrayList<>(folder.settings());
      Setting setting = all.get(chance.nextInt(all.size()));
      String value = VALUES.get(chance.nextInt(VALUES.size()));
      byte[] bytes = files.get(setting.file());
      Span at = setting.valueSpan();
      byte[] put = (at.length() == 0 ? " " + value : value).getBytes(StandardCharsets.UTF_8);
      byte[] now = FileEdits.spliced(bytes, List.of(new Edit(at, put)));
      files.put(setting.file(), now);
      // Now and then several edits go by before anybody asks.
      boolean asked = chance.nextInt(4) > 0;
      folder = folder.with(setting.file(), now);
      if (asked) {
        same(folder, files, step + ": " + setting.name() + " = " + value);
      }
    }
  }

  private static Map<String, byte[]> with(String path, String old, String text) {
    Map<String, byte[]> files = files();
    files.put(path, FILES.get(path).replace(old, text).getBytes(StandardCharsets.UTF_8));
    return files;
  }

  @Test
  void aValueThatNoConditionAsksForLeavesWhatWasSeen() {
    assertThat(serves(files(), with("speeds.h", "{ 1, 2, 3 }", "{ 1, 2, 33 }"))).isTrue();
    assertThat(serves(files(), with("lone.h", "ALONE 3", "ALONE 4"))).isTrue();
  }

  @Test
  void aValueThatOneAsksForDoesNot() {
    assertThat(serves(files(), with("speeds.h", "FAST 100", "FAST 10"))).isFalse();
    assertThat(serves(files(), with("board.h", "BOARD 2", "BOARD 3"))).as("through WORD").isFalse();
    assertThat(serves(files(), with("board.h", "\"speeds.h\"", "\"lone.h\""))).isFalse();
    assertThat(serves(files(), with("board.h", "(x * 2)", "(x # 2)"))).isFalse();
  }

  @Test
  void aFileMoreIsAnotherFolder() {
    Map<String, byte[]> more = files();
    more.put("more.h", new byte[0]);
    assertThat(serves(files(), more)).isFalse();
  }
}
