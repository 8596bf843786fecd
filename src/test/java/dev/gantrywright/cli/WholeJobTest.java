package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.board.Tool;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The whole job on the command line, with the C compiler as the judge of what was written. */
class WholeJobTest {
  @TempDir Path folder;

  private Path heron;

  @BeforeEach
  void unpack() throws Exception {
    Tool.need("gcc", "make");
    heron = DemoWorkshop.unpack(folder.resolve("workshop"));
  }

  @Test
  void fromFiveMistakesToAMachineThatIsProven() throws Exception {
    CommandRun check = CommandRun.of("check", heron.toString(), "--format", "json");
    assertThat(check.status()).isEqualTo(ExitStatus.FINDINGS);
    Map<String, Object> remedies = new LinkedHashMap<>();
    remedies.put("board.target", "fulmar_m4");
    remedies.put("serial.port", 1);
    remedies.put("axes.x.stepsPerMm", 80);
    remedies.put("axes.y.homing.end", "min");
    remedies.put("endstops.zMin.inverted", false);
    remedies.keySet().forEach(path -> assertThat(check.out()).contains("\"" + path + "\""));
    assertThat(prove()).isEqualTo(ExitStatus.FINDINGS);

    PrinterProfile profile = ProfileStore.read(heron);
    for (Map.Entry<String, Object> remedy : remedies.entrySet()) {
      profile = ProfileValues.with(profile, remedy.getKey(), remedy.getValue());
    }
    ProfileStore.save(profile, heron);
    assertThat(CommandRun.of("check", heron.toString()).status()).isEqualTo(ExitStatus.FINE);

    Path patched = folder.resolve("patched");
    CommandRun patch =
        CommandRun.of(
            "patch",
            heron.resolveSibling("rookery-2.3").toString(),
            "--profile",
            heron.toString(),
            "--out",
            patched.toString());
    assertThat(patch.status()).as(patch.err()).isEqualTo(ExitStatus.FINE);
    assertThat(Tool.mustRun(patched, "make", "desk")).contains("ROOKERY_TARGET_FULMAR_M4");
    assertThat(Tool.mustRun(patched, "./out/rookery").lines())
        .contains(
            "board 2002 line 1 rate 250000 gait 0",
            "stride 80 80 400 415.2",
            "seek -1 -1 -1",
            "stop z low fitted 1 flip 0 lift 0",
            "coil 800 800 800 500");
    assertThat(prove()).isEqualTo(ExitStatus.FINE);
  }

  private int prove() {
    return CommandRun.of("prove", heron.toString(), "--port", "practice:").status();
  }
}
