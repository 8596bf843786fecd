package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.prove.Check;
import dev.gantrywright.rules.Finding;
import dev.gantrywright.rules.Level;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MainJobTest {
  @TempDir Path folder;

  private Path heron;

  @BeforeEach
  void unpack() throws Exception {
    heron = DemoWorkshop.unpack(folder.resolve("workshop"));
  }

  @Test
  void theFivePlantedMistakesAreFoundAndSettled() throws Exception {
    MainJob.Story story = new MainJob(Catalog.shipped()).run(heron, folder.resolve("patched"));

    assertThat(story.findings())
        .filteredOn(finding -> finding.level() == Level.ERROR)
        .extracting(Finding::path)
        .containsOnly(
            "board.target",
            "serial.port",
            "axes.x.stepsPerMm",
            "axes.y.homing.end",
            "endstops.zMin.inverted");
    assertThat(story.left()).filteredOn(finding -> finding.level() != Level.NOTE).isEmpty();
    assertThat(story.plan().refusals()).isEmpty();
    assertThat(story.before().passed()).isFalse();
    assertThat(story.before().checks())
        .filteredOn(check -> check.verdict() == Check.Verdict.FAIL)
        .extracting(Check::path)
        .containsExactly("endstops.zMin.inverted");
    assertThat(story.after().passed()).isTrue();
  }

  @Test
  void theFirmwareFolderIsNotTouched() throws Exception {
    Path source = heron.resolveSibling("rookery-2.3");
    new MainJob(Catalog.shipped()).run(heron, folder.resolve("patched"));
    assertThat(source.resolve("config/stops.h"))
        .hasSameBinaryContentAs(Path.of("demo-profiles/rookery-2.3/config/stops.h"));
    assertThat(folder.resolve("patched/config/nest.h"))
        .content()
        .contains("PERCH_FULMAR_M4 ", "LINE_SOCKET       1");
  }

  @Test
  void aPrinterWithoutItsFolderSaysWhichFileIsMissing() throws Exception {
    Path lonely = folder.resolve("heron.printer.json");
    Files.copy(heron, lonely);
    assertThatThrownBy(() -> new MainJob(Catalog.shipped()).run(lonely, folder.resolve("out")))
        .isInstanceOf(ProfileProblem.class)
        .hasMessageContaining("fulmar-m4.board.json: no such file");
    assertThat(folder.resolve("out")).doesNotExist();
  }
}
