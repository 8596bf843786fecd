package dev.gantrywright.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The clean step deletes what it said, nothing else, and never leaves its folder. */
class CleaningTest {
  @TempDir Path root;

  private Path file(String name, String text) throws IOException {
    Path file = root.resolve("fw").resolve(name);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  @Test
  void saysWhatItDeletesAndDeletesJustThat() throws IOException {
    file("config/nest.h", "x");
    file("Makefile", "x");
    file("out/a.o", "12345");
    file("out/deep/b.o", "123");
    Cleaning plan =
        Cleaning.plan(root.resolve("fw"), List.of(Path.of("config/nest.h"), Path.of("Makefile")));
    assertThat(plan.shown())
        .startsWith("deletes 2 files, 8 bytes, in ")
        .contains(Path.of("out/a.o").toString(), Path.of("out/deep/b.o").toString());
    assertThat(root.resolve("fw/out/a.o")).exists();
    assertThat(plan.run()).isEqualTo(2);
    assertThat(root.resolve("fw/out")).doesNotExist();
    assertThat(root.resolve("fw/config/nest.h")).exists();
    assertThat(root.resolve("fw/Makefile")).exists();
  }

  @Test
  void linksAreDeletedNotFollowed() throws IOException {
    Path outside = Files.writeString(root.resolve("precious"), "keep me");
    file("Makefile", "x");
    Files.createSymbolicLink(root.resolve("fw/link"), root);
    Files.createSymbolicLink(root.resolve("fw/other"), outside);
    Cleaning.plan(root.resolve("fw"), List.of(Path.of("Makefile"))).run();
    assertThat(outside).hasContent("keep me");
    assertThat(root.resolve("fw/link")).doesNotExist();
  }

  @Test
  void aPlanThatLeadsOutIsRefused() throws IOException {
    file("Makefile", "x");
    Files.writeString(root.resolve("precious"), "keep me");
    Cleaning bad = new Cleaning(root.resolve("fw"), List.of(Path.of("../precious")), 7);
    assertThatThrownBy(bad::run).isInstanceOf(IOException.class).hasMessageContaining("leads out");
    assertThat(root.resolve("precious")).exists();
  }

  @Test
  void nothingToDoIsSaid() throws IOException {
    file("Makefile", "x");
    Cleaning plan = Cleaning.plan(root.resolve("fw"), List.of(Path.of("Makefile")));
    assertThat(plan.shown()).startsWith("nothing to clean");
    assertThat(plan.run()).isZero();
  }
}
