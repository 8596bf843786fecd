package dev.gantrywright.names;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.header.FirmwareFolder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LearnerTest {
  private static FirmwareFolder folder(String header, String ini) {
    TreeMap<String, byte[]> files = new TreeMap<>();
    files.put("a.h", header.getBytes(StandardCharsets.UTF_8));
    if (!ini.isEmpty()) {
      files.put("a.ini", ini.getBytes(StandardCharsets.UTF_8));
    }
    return FirmwareFolder.of(Path.of("a"), files, Map.of());
  }

  private static NameMap learn(String header) {
    return new Learner(McuNames.byShape()).learn(folder(header, ""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "#define STOP_X_LEFT_INVERTED 1 | inverted",
        "#define STOP_X_LEFT_ACTIVE_LOW true | active-low",
        "#define STOP_X_LEFT_LEVEL HIGH // level when hit | active-level",
        "#define STOP_X_LEFT_NC 1 // normally closed | normally-closed",
        "#define STOP_X_LEFT_CONTACT NO // NC or NO | contact",
        "#define STOP_X_LEFT_POLARITY 1 // 1 = active low, 0 = active high | active-low",
        "#define STOP_X_LEFT_POLARITY 0 // 0: opens when hit | normally-open",
        "#define STOP_X_LEFT_LOGIC true // no more is known | unknown",
      })
  void meaningOfAnEndstop(String line, String meaning) {
    NameMap map = learn(line + "\n");
    assertThat(map.entry("endstops.xMin.inverted").map(NameEntry::meaning)).contains(meaning);
  }

  @Test
  void currentAndSpeedSayTheirUnit() {
    NameMap map =
        learn(
            "#define MOTOR_CURRENT_X 800\n#define MOTOR_CURRENT_Y 800\n"
                + "#define MAX_FEED_X 12000\n#define MAX_FEED_Y 12000\n");
    assertThat(map.entry("axes.x.driver.current").map(NameEntry::meaning)).contains("mA");
    assertThat(map.entry("axes.x.maxSpeed").map(NameEntry::unit)).contains("mm/min");
  }

  /** What stands second is no time: taken for one, 600 mm/min passed for 600 mm/s. */
  @Test
  void aSecondAxisDoesNotHideTheUnitBehindIt() {
    NameMap map =
        learn(
            "#define MAX_FEED_X 900 // first axis, mm/min\n"
                + "#define MAX_FEED_Y 600 // second axis, mm/min\n");
    assertThat(map.entry("axes.x.maxSpeed").map(NameEntry::unit)).contains("mm/min");
    assertThat(map.entry("axes.y.maxSpeed").map(NameEntry::unit)).contains("mm/min");
  }

  @Test
  void armsOfADeltaPrinterAreLearnedFromAListAndOneByOne() {
    NameMap list = learn("#define ARM_LENGTH { 215.0, 215.0, 214.8 } // X, Y, Z, mm\n");
    assertThat(list.entry("axes.z.armLength").map(NameEntry::element)).contains(2);
    NameMap single =
        learn("#define ROD_ARM_X 215.0\n#define ROD_ARM_Y 215.0\n#define ROD_ARM_Z 214.8\n");
    assertThat(single.entry("axes.y.armLength").map(NameEntry::macro)).contains("ROD_ARM_Y");
  }

  @Test
  void boardsAndTargetsAreListedWithTheirParts() {
    NameMap map =
        new Learner(McuNames.byShape())
            .learn(
                folder(
                    "#define BOARD BOARD_TERN\n#define BOARD_TERN 1 // Tern, STM32F446RE\n"
                        + "#define BOARD_TERN2 1 // Tern, STM32F446RE\n",
                    "[main]\ndefault = tern\n[env:tern]\nchip = STM32F446RE\n[env:terns]\nchip = LPC1768\n"));
    assertThat(map.boards())
        .extracting(BoardConstant::constant)
        .containsExactly("BOARD_TERN", "BOARD_TERN2");
    assertThat(map.boards().get(0).targets()).containsExactly("tern");
    assertThat(map.boards().get(0).chosen()).isTrue();
    assertThat(map.boards().get(1).notes())
        .anyMatch(note -> note.contains("same number"))
        .anyMatch(note -> note.contains("almost like BOARD_TERN"));
    assertThat(map.targets()).extracting(BuildTarget::name).containsExactly("tern", "terns");
    assertThat(map.targets().get(0).boards()).contains("BOARD_TERN");
    assertThat(map.entry("board.target").map(NameEntry::macro)).contains("default");
  }

  @Test
  void whatTheUserSetStaysThroughLearning() {
    String header = "#define BAUD 115200\n#define LINE_WORD 250000\n";
    NameMap mine =
        learn(header)
            .with("serial.baud", NameEntry.chosen("LINE_WORD", null, "a.h", 9))
            .with("serial.port", NameEntry.notInThisFirmware());
    NameMap again = new Learner(McuNames.byShape()).learn(folder("\n" + header, ""), mine);
    assertThat(again.entry("serial.baud").orElseThrow().macro()).isEqualTo("LINE_WORD");
    assertThat(again.entry("serial.baud").orElseThrow().line()).isEqualTo(3);
    assertThat(again.entry("serial.port").orElseThrow().macro()).isNull();
  }

  @Test
  void nothingIsProposedWhereNothingIsSaid() {
    assertThat(learn("#define ALPHA 1\n#define BETA 2\n#define GAMMA_RAY \"x\"\n").fields())
        .isEmpty();
  }

  @Test
  void searchFindsByNameAndComment() {
    FolderStudy study =
        study("#define WING_SPAN 3 // how wide\n#define TAIL { 4, 5 } // wing of the tail\n");
    assertThat(study.find("wing", 5))
        .extracting(FoundPlace::shown)
        .containsExactly("WING_SPAN", "TAIL[0]", "TAIL[1]");
    assertThat(study.find("wide span", 5)).hasSize(1);
    assertThat(study.find("beak", 5)).isEmpty();
    assertThat(study.find("", 1)).hasSize(1);
  }

  @Test
  void aPickedPlaceComesWithItsMeaning() {
    FolderStudy study = study("#define QUILL_A 1 // 1 = active low\n#define QUILL_B 900 // mA\n");
    NameEntry stop = study.choice("endstops.xMin.inverted", study.find("quill_a", 1).get(0));
    assertThat(stop.byUser()).isTrue();
    assertThat(stop.meaning()).isEqualTo("active-low");
    NameEntry current = study.choice("axes.x.driver.current", study.find("quill_b", 1).get(0));
    assertThat(current.unit()).isEqualTo("mA");
    assertThat(study.place(current)).isPresent();
  }

  @Test
  void whatTheUserGaveToOneFieldIsTakenByNoOther() {
    FolderStudy study = study("#define MAX_SPEED_X 200\n#define MAX_SPEED_Y 200\n");
    NameMap mine =
        NameMap.EMPTY.with(
            "axes.x.homing.speed",
            study.choice("axes.x.homing.speed", study.find("max_speed_x", 1).get(0)));
    NameMap again = study.map(mine);
    assertThat(again.entry("axes.x.homing.speed").orElseThrow().macro()).isEqualTo("MAX_SPEED_X");
    assertThat(again.entry("axes.y.maxSpeed").orElseThrow().macro()).isEqualTo("MAX_SPEED_Y");
    assertThat(again.fields().values())
        .filteredOn(entry -> "MAX_SPEED_X".equals(entry.macro()))
        .hasSize(1);
  }

  @Test
  void anAcceptedProposalKeepsItsConfidenceAndStaysThroughLearning() throws Exception {
    FolderStudy study = study("#define BAUD 115200\n");
    NameEntry proposed = study.map(NameMap.EMPTY).entry("serial.baud").orElseThrow();
    NameMap mine = NameMap.EMPTY.with("serial.baud", proposed.accepted());
    NameMap read = NameMapJson.parse(NameMapJson.text(mine), "x");
    NameEntry kept = study.map(read).entry("serial.baud").orElseThrow();
    assertThat(kept.confirmed()).isTrue();
    assertThat(kept.sure()).isTrue();
    assertThat(kept.confidence()).isEqualTo(proposed.confidence());
    assertThat(kept.evidence()).isEqualTo(proposed.evidence());
  }

  @Test
  void rotaryAxesAndFurtherExtrudersAreLearnedWhereTheFolderHasThem() {
    NameMap map =
        learn(
            "#define STEPS_PER_MM_X 80\n#define STEPS_PER_MM_Y 80\n#define STEPS_PER_MM_Z 400\n"
                + "#define STEPS_PER_MM_A 88\n#define STEPS_PER_MM_E0 93\n#define STEPS_PER_MM_E1 94\n"
                + "#define MAX_SPEED_X 200\n#define MAX_SPEED_Y 200\n#define MAX_SPEED_Z 8\n"
                + "#define MAX_SPEED_A 20\n#define MAX_SPEED_E0 50\n#define MAX_SPEED_E1 50\n"
                + "#define ACCELERATION { 900, 900, 90, 500, 40, 510 } // x, y, z, e, a, e1; mm/s2\n"
                + "#define ENDSTOP_A_MIN_INVERTED 1\n#define ENDSTOP_X_MIN_INVERTED 0\n");
    assertThat(map.entry("axes.a.stepsPerMm").orElseThrow().macro()).isEqualTo("STEPS_PER_MM_A");
    assertThat(map.entry("axes.e.stepsPerMm").orElseThrow().macro()).isEqualTo("STEPS_PER_MM_E0");
    assertThat(map.entry("axes.e1.stepsPerMm").orElseThrow().macro()).isEqualTo("STEPS_PER_MM_E1");
    assertThat(map.entry("axes.a.acceleration").orElseThrow().element()).isEqualTo(4);
    assertThat(map.entry("axes.e1.acceleration").orElseThrow().element()).isEqualTo(5);
    assertThat(map.entry("endstops.aMin.inverted").orElseThrow().macro())
        .isEqualTo("ENDSTOP_A_MIN_INVERTED");
  }

  @Test
  void aLoneLetterIsNoAxis() {
    NameMap map =
        learn(
            "#define STEPS_PER_MM_X 80\n#define STEPS_PER_MM_Y 80\n#define SENSOR_COEFF_A 0.1\n"
                + "#define SENSOR_COEFF_B 0.2\n#define SENSOR_COEFF_C 0.3\n#define SUPPLY_V 24\n");
    assertThat(map.fields().keySet()).noneMatch(path -> path.matches("axes\\.[abcuvw]\\..*"));
  }

  @Test
  void aRunCanBeStopped() {
    LearningWatch stop =
        new LearningWatch() {
          @Override
          public void reached(double share) {}

          @Override
          public boolean stopped() {
            return true;
          }
        };
    assertThatThrownBy(
            () -> new Learner(McuNames.byShape()).study(folder("#define A 1\n", ""), stop))
        .isInstanceOf(LearningWatch.LearningStopped.class);
  }

  private static FolderStudy study(String header) {
    return new Learner(McuNames.byShape()).study(folder(header, ""), LearningWatch.NONE);
  }

  @Property(tries = 60)
  void neverFails(
      @ForAll @StringLength(max = 60) String name, @ForAll @StringLength(max = 60) String value) {
    String text =
        "#define A"
            + name.replaceAll("\\W", "_")
            + " "
            + value.replaceAll("[\\r\\n\0]", " ")
            + "\n";
    assertThat(learn(text)).isNotNull();
  }
}
