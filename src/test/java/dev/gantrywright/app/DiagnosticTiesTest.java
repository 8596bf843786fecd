package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.gantrywright.build.Diagnostic;
import dev.gantrywright.build.DiagnosticReader;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.NameMapJson;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Diagnostics beside the demo firmware's settings and the profile fields that they carry. */
class DiagnosticTiesTest {
  private static final Path DEMO = Path.of("demo-profiles");

  private DiagnosticTies ties;

  @BeforeEach
  void demoFirmware() throws Exception {
    NameMap names = NameMapJson.read(DEMO.resolve("rookery-2.3.names.json"));
    ties = new DiagnosticTies(FirmwareFolder.read(DEMO.resolve("rookery-2.3")), names);
  }

  private List<TiedDiagnostic.Tie> of(String... lines) {
    Diagnostic d = DiagnosticReader.readAll(List.of(lines)).get(0);
    return ties.of(d).ties();
  }

  @Test
  void aSettingOnTheLine() {
    assertThat(of("src/../config/nest.h:22:27: error: invalid suffix \"o\" on integer constant"))
        .singleElement()
        .satisfies(
            t -> {
              assertThat(t.macro()).isEqualTo("LINE_RATE");
              assertThat(t.paths()).containsExactly("serial.baud");
              assertThat(t.file()).isEqualTo("config/nest.h");
            });
  }

  @Test
  void aSettingWhoseMacroTheMessageNames() {
    assertThat(of("src/rookery.c:40:3: error: 'STRIDE_TOP' undeclared"))
        .extracting(TiedDiagnostic.Tie::macro)
        .containsExactly("STRIDE_TOP");
    assertThat(of("src/rookery.c:40:3: error: 'STRIDE_TOP' undeclared").get(0).paths())
        .contains("axes.x.maxSpeed", "axes.e.maxSpeed");
  }

  @Test
  void aSettingThatANoteExpands() {
    assertThat(
            of(
                "src/rookery.c:33:9: warning: overflow",
                "../config/roost.h:11:27: note: in expansion of macro 'STRIDE_PER_MM'"))
        .extracting(TiedDiagnostic.Tie::macro)
        .containsExactly("STRIDE_PER_MM");
  }

  @Test
  void boardsAndTargetsThatTheMessageNames() {
    String error = "#error \"target petrel81 is for board PERCH_PETREL_81\"";
    assertThat(of("src/rookery.c:17:2: error: " + error))
        .extracting(TiedDiagnostic.Tie::macro, TiedDiagnostic.Tie::paths)
        .containsExactly(
            tuple("PERCH_PETREL_81", List.of("board.constant")),
            tuple("petrel81", List.of("board.target")));
  }

  @Test
  void wordsThatAreNoSettingTieNothing() {
    assertThat(of("src/rookery.c:2:3: warning: unused variable 'count'")).isEmpty();
    assertThat(of("make: *** [Makefile:8: out/rookery] Error 1")).isEmpty();
  }

  @Test
  void withoutANameMapTheSettingIsStillFound() throws Exception {
    DiagnosticTies bare =
        new DiagnosticTies(FirmwareFolder.read(DEMO.resolve("rookery-2.3")), null);
    Diagnostic d = DiagnosticReader.readAll(List.of("config/nest.h:22:27: error: no good")).get(0);
    assertThat(bare.of(d).ties())
        .singleElement()
        .extracting(TiedDiagnostic.Tie::paths)
        .isEqualTo(List.of());
  }
}
