package dev.gantrywright.patch;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.NameMapJson;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class PatchPlanTest {
  private static final String HEADER =
      """
      #define HUM_BOARD   HUM_SMALL
      #define HUM_SMALL   1
      #define HUM_LARGE   2
      #define PULSES      { 80, 80, /* screw */ 400.0, 93 } // X Y Z E
      #define SPAN_BOX    "200x210x180"
      #define TURN_X      false
      #define HIT_LEVEL_X LOW
      #define GATE_X_LOW
      //#define GATE_X_HIGH
      #if HUM_BOARD == HUM_LARGE
      #define AMPS_X      600 // mA
      #endif
      #define SLEW        9000 // mm/min, all axes
      //#define WIRE_TWO  1
      #define GAIT_STRAIGHT
      //#define GAIT_CROSS
      """;

  private static final String NAMES =
      """
      {"fields": {
        "board.constant": {"macro": "HUM_BOARD", "sure": true},
        "board.target": {"macro": "goal", "section": "build", "sure": true},
        "kinematics": {"macro": "GAIT_STRAIGHT", "sure": true,
          "switches": {"cartesian": "GAIT_STRAIGHT", "corexy": "GAIT_CROSS"}},
        "axes.x.stepsPerMm": {"macro": "PULSES", "element": 0, "sure": true},
        "axes.z.stepsPerMm": {"macro": "PULSES", "element": 2, "sure": true},
        "axes.x.travelMax": {"macro": "SPAN_BOX", "element": 0, "sure": true},
        "axes.z.travelMax": {"macro": "SPAN_BOX", "element": 2, "sure": true},
        "axes.x.directionInverted": {"macro": "TURN_X", "sure": true, "meaning": "inverted"},
        "axes.x.maxSpeed": {"macro": "SLEW", "sure": true, "meaning": "mm/min", "unit": "mm/min"},
        "axes.y.maxSpeed": {"macro": "SLEW", "sure": true, "meaning": "mm/min", "unit": "mm/min"},
        "axes.x.driver.current": {"macro": "AMPS_X", "sure": true, "unit": "mA"},
        "endstops.xMin.inverted": {"macro": "HIT_LEVEL_X", "sure": true, "meaning": "active-level"},
        "endstops.xMin.fitted": {"macro": "GATE_X_LOW", "sure": true},
        "endstops.xMax.fitted": {"macro": "GATE_X_HIGH", "sure": true},
        "serial.secondPort": {"macro": "WIRE_TWO", "sure": true},
        "serial.baud": {"macro": "NOT_THERE", "sure": true},
        "axes.y.stepsPerMm": {"macro": "PULSES", "element": 1, "sure": false},
        "heaters.bed.maximum": {"macro": null, "sure": true, "by": "user"}
      }, "boards": [], "targets": []}
      """;

  private static FirmwareFolder folder() {
    TreeMap<String, byte[]> files = new TreeMap<>();
    files.put("hum.h", HEADER.getBytes(StandardCharsets.UTF_8));
    files.put("hum.ini", "[build]\ngoal = small ; one of two\n".getBytes(StandardCharsets.UTF_8));
    return FirmwareFolder.of(Path.of("hum"), files, Map.of());
  }

  private static PatchPlan plan(String profile) throws Exception {
    PrinterProfile printer =
        ProfileStore.parse(
            "test",
            profile.replaceFirst("\\{", "{\"format\": 1, ").getBytes(StandardCharsets.UTF_8));
    NameMap map = NameMapJson.parse(NAMES, "test");
    return PatchPlan.of(printer, map, folder());
  }

  private static String after(PatchPlan plan, String file) {
    byte[] bytes = plan.after().get(file);
    return bytes == null ? "" : new String(bytes, StandardCharsets.UTF_8);
  }

  @Test
  void spellsEveryKindOfValue() throws Exception {
    PatchPlan plan =
        plan(
            """
            {"board": {"constant": "HUM_LARGE", "target": "large"}, "kinematics": "corexy",
             "serial": {"secondPort": 2},
             "axes": {"x": {"stepsPerMm": 160, "travelMax": 310, "directionInverted": true,
                            "maxSpeed": 200, "driver": {"current": 0.85}},
                      "y": {"maxSpeed": 200},
                      "z": {"stepsPerMm": 800, "travelMax": 180}},
             "endstops": {"xMin": {"fitted": false, "inverted": false}, "xMax": {"fitted": true}}}
            """);
    assertThat(after(plan, "hum.h").lines())
        .contains(
            "#define HUM_BOARD   HUM_LARGE",
            "#define PULSES      { 160, 80, /* screw */ 800.0, 93 } // X Y Z E",
            "#define SPAN_BOX    \"310x210x180\"",
            "#define TURN_X      true",
            "#define HIT_LEVEL_X HIGH",
            "#define AMPS_X      850 // mA",
            "#define SLEW        12000 // mm/min, all axes",
            "#define GAIT_CROSS");
    assertThat(after(plan, "hum.h"))
        .containsPattern("(?m)^//\\s?#define GATE_X_LOW$")
        .containsPattern("(?m)^\\s*#define GATE_X_HIGH$")
        .containsPattern("(?m)^\\s*#define WIRE_TWO  2$")
        .containsPattern("(?m)^//\\s?#define GAIT_STRAIGHT$");
    assertThat(after(plan, "hum.ini")).isEqualTo("[build]\ngoal = large ; one of two\n");
    assertThat(plan.refusals()).isEmpty();
  }

  @Test
  void severalFlagsOfOneBuildSettingAreWrittenTogether() throws Exception {
    String ini = "[build]\nflags = -Os -DAMPS_X=600 ; hot\n  -DAMPS_Y=600 -DAMPS_Z=500\n";
    FirmwareFolder folder =
        FirmwareFolder.of(
            Path.of("hum"),
            Map.of(
                "hum.h",
                "#define A 1\n".getBytes(StandardCharsets.UTF_8),
                "hum.ini",
                ini.getBytes(StandardCharsets.UTF_8)),
            Map.of());
    String entry =
        "{\"macro\": \"AMPS_%s\", \"section\": \"build\", \"sure\": true, \"unit\": \"mA\"}";
    NameMap map =
        NameMapJson.parse(
            "{\"fields\": {"
                + "\"axes.x.driver.current\": %s, \"axes.y.driver.current\": %s,"
                    .formatted(entry.formatted("X"), entry.formatted("Y"))
                + "\"axes.z.driver.current\": %s}, \"boards\": [], \"targets\": []}"
                    .formatted(entry.formatted("Z")),
            "test");
    PrinterProfile profile =
        ProfileStore.parse(
            "test",
            """
            {"format": 1, "axes": {"x": {"driver": {"current": 0.85}},
              "y": {"driver": {"current": 1.2}}, "z": {"driver": {"current": 0.5}}}}
            """
                .getBytes(StandardCharsets.UTF_8));
    PatchPlan plan = PatchPlan.of(profile, map, folder);
    assertThat(plan.refusals()).isEmpty();
    assertThat(after(plan, "hum.ini"))
        .isEqualTo("[build]\nflags = -Os -DAMPS_X=850 ; hot\n  -DAMPS_Y=1200 -DAMPS_Z=500\n");
    assertThat(plan.lines().get(0).path())
        .isEqualTo("axes.x.driver.current, axes.y.driver.current");
    assertThat(plan.unchanged()).containsExactly("axes.z.driver.current");
  }

  @Test
  void twoChangesOfALineInAFileThatIsNotUtf8AreShownInItsOwnLetters() {
    byte[] latin1 = "#define L { 1, 2 } // \u00b5m\r\n".getBytes(StandardCharsets.ISO_8859_1);
    FirmwareFolder folder = FirmwareFolder.of(Path.of("hum"), Map.of("l.h", latin1), Map.of());
    PatchPlan plan =
        PatchPlan.of(List.of(HandChange.set("L[0]=3"), HandChange.set("L[1]=4")), folder);
    assertThat(plan.lines()).hasSize(1);
    assertThat(plan.lines().get(0).before()).isEqualTo("#define L { 1, 2 } // \u00b5m");
    assertThat(plan.lines().get(0).after()).isEqualTo("#define L { 3, 4 } // \u00b5m");
    assertThat(plan.after().get("l.h"))
        .isEqualTo("#define L { 3, 4 } // \u00b5m\r\n".getBytes(StandardCharsets.ISO_8859_1));
  }

  @Test
  void everyChangedLineNamesItsCause() throws Exception {
    PatchPlan plan =
        plan(
            """
            {"axes": {"x": {"stepsPerMm": 160}, "z": {"stepsPerMm": 800}}}
            """);
    assertThat(plan.lines()).hasSize(1);
    PlannedLine line = plan.lines().get(0);
    assertThat(line.line()).isEqualTo(4);
    assertThat(line.path()).isEqualTo("axes.x.stepsPerMm, axes.z.stepsPerMm");
    assertThat(line.value()).isEqualTo("160, 800");
    assertThat(line.before()).contains("{ 80,");
    assertThat(line.after()).contains("{ 160,").contains("800.0");
  }

  @Test
  void unchangedValuesMakeNoEdit() throws Exception {
    PatchPlan plan =
        plan(
            """
            {"kinematics": "cartesian", "board": {"constant": "HUM_SMALL"},
             "axes": {"x": {"stepsPerMm": 80, "travelMax": 200, "maxSpeed": 150},
                      "y": {"maxSpeed": 150}, "z": {"stepsPerMm": 400}},
             "endstops": {"xMin": {"fitted": true, "inverted": true}, "xMax": {"fitted": false}}}
            """);
    assertThat(plan.diff()).isEmpty();
    assertThat(plan.refusals()).isEmpty();
    assertThat(plan.unchanged())
        .contains("axes.x.stepsPerMm", "axes.z.stepsPerMm", "axes.x.maxSpeed", "axes.y.maxSpeed")
        .contains("endstops.xMin.inverted", "endstops.xMax.fitted", "board.constant");
  }

  @Test
  void saysWhatItDoesNotWriteAndWhy() throws Exception {
    PatchPlan plan =
        plan(
            """
            {"serial": {"baud": 250000}, "kinematics": "delta",
             "axes": {"x": {"maxSpeed": 100, "driver": {"current": 0.5}},
                      "y": {"maxSpeed": 120, "stepsPerMm": 90}},
             "heaters": {"bed": {"maximum": 110}}}
            """);
    assertThat(plan.refusals())
        .extracting(Refusal::path)
        .containsExactlyInAnyOrder(
            "serial.baud",
            "kinematics",
            "axes.x.maxSpeed",
            "axes.y.maxSpeed",
            "axes.y.stepsPerMm",
            "axes.x.driver.current");
    assertThat(reason(plan, "serial.baud")).contains("NOT_THERE");
    assertThat(reason(plan, "axes.x.maxSpeed")).contains("axes.y.maxSpeed = 120");
    assertThat(reason(plan, "axes.y.stepsPerMm")).contains("not sure");
    assertThat(reason(plan, "axes.x.driver.current")).contains("not seen by the compiler");
    assertThat(plan.diff()).isEmpty();
  }

  private static String reason(PatchPlan plan, String path) {
    return plan.refusals().stream()
        .filter(refusal -> refusal.path().equals(path))
        .map(Refusal::reason)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void changesGivenByHand() {
    PatchPlan plan =
        PatchPlan.of(
            List.of(
                HandChange.set("PULSES[1]=81.5"),
                HandChange.set("[build] goal=tiny"),
                HandChange.set("SLEW = 6000"),
                new HandChange.On("GATE_X_HIGH"),
                new HandChange.Off("GATE_X_LOW")),
            folder());
    assertThat(plan.refusals()).isEmpty();
    assertThat(plan.lines()).hasSize(5);
    assertThat(after(plan, "hum.h")).contains("{ 80, 81.5,").contains("SLEW        6000");
    assertThat(plan.lines()).extracting(PlannedLine::value).contains("--on GATE_X_HIGH");
  }

  @Test
  void aBuildSettingIsFoundByItsBareName() {
    PatchPlan plan = PatchPlan.of(List.of(HandChange.set("goal=tiny")), folder());
    assertThat(after(plan, "hum.ini")).contains("goal = tiny");
  }

  @Test
  void anUnknownNameIsRefused() {
    PatchPlan plan = PatchPlan.of(List.of(HandChange.set("NO_SUCH=1")), folder());
    assertThat(plan.refusals()).hasSize(1);
    assertThat(plan.refusals().get(0).toString()).contains("NO_SUCH").doesNotContain("\n");
  }

  @Test
  void theInverseRestoresTheBytes() throws Exception {
    PatchPlan plan = plan("{\"axes\": {\"x\": {\"stepsPerMm\": 160, \"travelMax\": 300}}}");
    assertThat(plan.edits().inverse().result("hum.h"))
        .isEqualTo(HEADER.getBytes(StandardCharsets.UTF_8));
  }
}
