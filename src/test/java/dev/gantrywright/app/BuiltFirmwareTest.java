package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.NameMapJson;
import dev.gantrywright.patch.PatchPlan;
import dev.gantrywright.prove.PracticeMachine;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class BuiltFirmwareTest {
  private static final Path DEMO = Path.of("demo-profiles");

  private final FirmwareFolder folder;
  private final NameMap names;
  private final PrinterProfile heron;

  BuiltFirmwareTest() throws Exception {
    folder = FirmwareFolder.read(DEMO.resolve("rookery-2.3"));
    names = NameMapJson.read(DEMO.resolve("rookery-2.3.names.json"));
    heron = ProfileStore.read(DEMO.resolve("heron.printer.json"));
  }

  @Test
  void readsTheFolderAsItIs() {
    assertThat(BuiltFirmware.values(folder, names))
        .containsEntry("endstops.zMin.inverted", "false")
        .containsEntry("axes.x.stepsPerMm", "80");
  }

  @Test
  void aPatchedFolderIsBuiltWithTheProfilesValues() {
    Map<String, String> built =
        BuiltFirmware.values(PatchPlan.of(heron, names, folder).patched(), names);
    for (String path :
        List.of(
            "endstops.xMin.inverted",
            "endstops.zMin.inverted",
            "axes.x.stepsPerMm",
            "axes.x.maxSpeed",
            "axes.e.stepsPerMm",
            "axes.e.driver.current")) {
      assertThat(built.get(path))
          .as(path)
          .isEqualTo(ProfileValues.get(heron, path).orElseThrow().toString());
    }
  }

  /** The main job: the planted polarity shows on the practice board, and its remedy settles it. */
  @Test
  void thePlantedPolarityShowsBeforeTheRemedyAndNotAfter() throws Exception {
    assertThat(answers(heron)).contains("z_min = touched");
    PrinterProfile remedied = ProfileValues.with(heron, "endstops.zMin.inverted", false);
    assertThat(answers(remedied)).contains("x_min = clear", "y_min = clear", "z_min = clear");
  }

  private List<String> answers(PrinterProfile profile) {
    FirmwareFolder patched = PatchPlan.of(profile, names, folder).patched();
    Map<String, String> built = BuiltFirmware.values(patched, names);
    return new PracticeBoard(PracticeMachine.of(profile, built), 1, 0).obey("M119", 0);
  }
}
