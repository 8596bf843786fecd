package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FirmwareFolderTest {
  @TempDir private Path dir;

  private static FirmwareFolder of(String... pathsAndTexts) {
    Map<String, byte[]> files = new TreeMap<>();
    for (int i = 0; i < pathsAndTexts.length; i += 2) {
      files.put(pathsAndTexts[i], pathsAndTexts[i + 1].getBytes(StandardCharsets.UTF_8));
    }
    return FirmwareFolder.of(Path.of("rookery"), files, Map.of());
  }

  private static State state(FirmwareFolder folder, String name) {
    List<Setting> all = folder.named(name);
    assertThat(all).hasSize(1);
    return all.get(0).state();
  }

  @Test
  void followsTheOrderOfTheMainSource() {
    FirmwareFolder folder =
        of(
            "board.h", "#if NEST == 2\n#define EGGS 4\n#else\n#define NO_EGGS 1\n#endif\n",
            "config.h", "#define NEST 2\n",
            "main.c", "#include \"config.h\"\n#include \"board.h\"\n");
    assertThat(state(folder, "EGGS")).isEqualTo(State.LIVE);
    assertThat(state(folder, "NO_EGGS")).isEqualTo(State.DEAD);
    assertThat(folder.named("NO_EGGS").get(0).reason()).contains("#else (board.h:3)");
  }

  @Test
  void withoutASourceTheDefiningHeaderComesFirst() {
    FirmwareFolder folder =
        of(
            "a/board.h", "#if NEST == 2\n#define EGGS 4\n#endif\n",
            "z/config.h", "#define NEST 2\n");
    assertThat(state(folder, "EGGS")).isEqualTo(State.LIVE);
  }

  @Test
  void guardsAndOnceHoldAcrossFiles() {
    FirmwareFolder folder =
        of(
            "a.h", "#pragma once\n#include \"b.h\"\n#include \"sub/c.h\"\n#define A 1\n",
            "b.h", "#ifndef B_H\n#define B_H\n#include \"a.h\"\n#define B 1\n#endif\n",
            "sub/c.h", "#include \"../b.h\"\n#if B\n#define C 1\n#endif\n");
    assertThat(folder.problems()).isEmpty();
    assertThat(state(folder, "C")).isEqualTo(State.LIVE);
    assertThat(folder.named("B_H")).hasSize(1);
    assertThat(folder.settings()).extracting(Setting::name).doesNotContain("B_H");
  }

  @Test
  void anIncludeBehindAnOpenConditionTellsSo() {
    FirmwareFolder folder =
        of(
            "main.c", "#ifdef __FAST__\n#include \"a.h\"\n#endif\n",
            "a.h", "#define A 1\n");
    assertThat(state(folder, "A")).isEqualTo(State.OPEN);
    assertThat(folder.named("A").get(0).reason()).contains("__FAST__").contains("main.c:1");
  }

  @Test
  void theLastDefinitionDecides() {
    FirmwareFolder folder = of("a.h", "#define A 1\n#undef A\n#define A 2\n#define B\n#undef B\n");
    assertThat(folder.live("A").orElseThrow().line()).isEqualTo(3);
    assertThat(folder.live("B")).isEmpty();
    assertThat(folder.live("C")).isEmpty();
  }

  @Test
  void predefinedNamesSettleConditions() {
    Map<String, byte[]> files =
        Map.of("a.h", "#if defined WADER\n#define A 1\n#endif\n".getBytes(StandardCharsets.UTF_8));
    FirmwareFolder folder = FirmwareFolder.of(Path.of("f"), files, Map.of("WADER", "1"));
    assertThat(state(folder, "A")).isEqualTo(State.LIVE);
  }

  @Test
  void anEditIsEvaluatedAnew() {
    FirmwareFolder folder =
        of("a.h", "#define A 0\n", "b.h", "#include \"a.h\"\n#if A\n#define B 1\n#endif\n");
    assertThat(state(folder, "B")).isEqualTo(State.DEAD);
    FirmwareFolder after = folder.with("a.h", "#define A 1\n".getBytes(StandardCharsets.UTF_8));
    assertThat(state(after, "B")).isEqualTo(State.LIVE);
    assertThat(state(folder, "B")).isEqualTo(State.DEAD);
  }

  @Test
  void aHeaderThatIncludesItselfIsBounded() {
    FirmwareFolder folder = of("a.h", "#include \"a.h\"\n#include \"a.h\"\n#define A 1\n");
    assertThat(folder.problems()).isNotEmpty();
  }

  @Test
  void readsAFolderAndTellsProgress() throws Exception {
    Files.createDirectories(dir.resolve("src"));
    Files.writeString(dir.resolve("src/a.h"), "#define A 1\n");
    Files.writeString(dir.resolve("b.ini"), "[x]\ny = 1\n");
    Files.writeString(dir.resolve("notes.txt"), "none of ours");
    List<String> told = new ArrayList<>();
    FirmwareFolder folder =
        FirmwareFolder.read(dir, Map.of(), (done, total, path) -> told.add(done + "/" + total));
    assertThat(told).containsExactly("1/2", "2/2");
    assertThat(folder.headers()).extracting(HeaderDocument::path).containsExactly("src/a.h");
    assertThat(folder.buildSettings()).hasSize(1);
  }

  @Test
  void aFolderWithoutHeadersIsOneClearLine() throws IOException {
    assertThatThrownBy(() -> FirmwareFolder.read(dir))
        .isInstanceOf(FolderException.class)
        .hasMessageContaining("no C header");
    assertThatThrownBy(() -> FirmwareFolder.read(dir.resolve("nowhere")))
        .hasMessageContaining("no such folder");
    Path file = Files.writeString(dir.resolve("x.h"), "");
    assertThatThrownBy(() -> FirmwareFolder.read(file)).hasMessageContaining("this is a file");
  }

  @Test
  void linksOutOfTheFolderAreNotFollowed() throws Exception {
    Path inside = Files.createDirectories(dir.resolve("in"));
    Files.writeString(inside.resolve("a.h"), "#define A 1\n");
    Files.writeString(dir.resolve("secret.h"), "#define SECRET 1\n");
    Files.createSymbolicLink(inside.resolve("out.h"), dir.resolve("secret.h"));
    Files.createSymbolicLink(inside.resolve("loop"), inside);
    FirmwareFolder folder = FirmwareFolder.read(inside);
    assertThat(folder.headers()).hasSize(1);
    assertThat(folder.problems())
        .extracting(Problem::toString)
        .containsExactly("out.h: this link leads out of the folder; it is not followed");
  }

  @Test
  void cutOffAndBinaryHeadersAreNamed() {
    FirmwareFolder folder =
        of(
            "a.h", "#define A 1\n/* open",
            "b.h", "#if 1\n#define B 1\n",
            "c.h", "#define C 1\n\0\n",
            "d.h", "#endif\n#else\n");
    assertThat(folder.problems())
        .extracting(Problem::toString)
        .containsExactly(
            "a.h:2:1: this comment is never closed; close it with */ before the end",
            "b.h:1:1: this conditional has no #endif before the end of file",
            "c.h: this is not a text file (it holds NUL bytes); left alone",
            "d.h:1:1: this has no #if before it; take it out",
            "d.h:2:1: this has no #if before it; take it out");
    assertThat(folder.named("C")).isEmpty();
    Outcome outcome =
        EditPlan.of(folder, List.of(new Change.SetValue("C", "2", ""))).outcomes().get(0);
    assertThat(outcome).isInstanceOf(Outcome.Refused.class);
  }
}
