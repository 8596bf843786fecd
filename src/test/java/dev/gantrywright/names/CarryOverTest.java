package dev.gantrywright.names;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.names.CarryOver.Fate;
import dev.gantrywright.names.CarryOver.Line;
import dev.gantrywright.patch.PatchPlan;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class CarryOverTest {
  private static final Path OLD = Path.of("demo-profiles/rookery-2.3");
  private static final Path NEW = Path.of("src/test/resources/carry-over/rookery-2.4");

  /** What the author of 2.4 changed. */
  private static final Map<String, String> RENAMED =
      Map.of(
          "NEST_TITLE", "NEST_LABEL",
          "LINE_RATE", "LINE_SPEED",
          "LINE_SOCKET_TWO", "LINE_SOCKET_SPARE",
          "STRIDE_SPLIT", "STRIDE_FRACTION",
          "STRIDE_TOP", "STRIDE_FASTEST",
          "REACH_LOW", "REACH_NEAR",
          "REACH_HIGH", "REACH_FAR",
          "COIL_MILLIAMPS", "COIL_CURRENT_MA",
          "WARM_HEAD_CEILING", "WARM_HEAD_LIMIT",
          "WARM_BED_CEILING", "WARM_BED_LIMIT");

  private static final Set<String> GONE =
      Set.of("COIL_HOLD", "COIL_TRIMMED", "PROBE_NTC_4267", "PERCH_PETREL_80", "WARM_BED_GUARD");

  private static final Set<String> NEW_DEFAULT =
      Set.of("LINE_SPEED", "STRIDE_GAIN", "SEEK_SPEED", "WARM_HEAD_FLOOR", "STOP_X_LOW_LIFT");

  private static CarryOver carried() throws Exception {
    NameMap map = NameMapJson.read(Path.of("demo-profiles/rookery-2.3.names.json"));
    return CarryOver.of(FirmwareFolder.read(OLD), map, FirmwareFolder.read(NEW));
  }

  private static List<Line> of(CarryOver carried, Fate fate) {
    return carried.lines().stream().filter(line -> line.fate() == fate).toList();
  }

  @Test
  void findsTenRenamings() throws Exception {
    assertThat(
            of(carried(), Fate.RENAMED).stream()
                .collect(Collectors.toMap(Line::oldName, Line::newName)))
        .isEqualTo(RENAMED);
  }

  @Test
  void findsFiveRemovalsAndWhatIsNew() throws Exception {
    assertThat(of(carried(), Fate.GONE))
        .extracting(Line::oldName)
        .containsExactlyInAnyOrderElementsOf(GONE);
    assertThat(of(carried(), Fate.NEW)).extracting(Line::newName).containsExactly("STRIDE_JOLT");
  }

  @Test
  void findsFiveChangedDefaults() throws Exception {
    assertThat(
            carried().lines().stream()
                .filter(
                    line ->
                        line.changes().stream()
                            .anyMatch(
                                change -> change.startsWith("default") && line.fate() != Fate.NEW))
                .map(Line::newName))
        .containsExactlyInAnyOrderElementsOf(NEW_DEFAULT);
  }

  @Test
  void everySettingOfEitherReleaseHasALine() throws Exception {
    CarryOver carried = carried();
    Set<String> old = new HashSet<>();
    FirmwareFolder.read(OLD).settings().forEach(setting -> old.add(setting.name()));
    Set<String> now = new HashSet<>();
    FirmwareFolder.read(NEW).settings().forEach(setting -> now.add(setting.name()));
    assertThat(carried.lines()).extracting(Line::oldName).containsAll(old);
    assertThat(carried.lines()).extracting(Line::newName).containsAll(now);
  }

  @Test
  void theMapFollowsAndThePlanCarriesTheUsersValues() throws Exception {
    CarryOver carried = carried();
    assertThat(carried.map().entry("axes.x.maxSpeed").orElseThrow().macro())
        .isEqualTo("STRIDE_FASTEST");
    assertThat(carried.map().entry("axes.x.maxSpeed").orElseThrow().element()).isZero();
    assertThat(carried.map().entry("heaters.bed.protection")).isEmpty();
    PrinterProfile profile = ProfileStore.read(Path.of("demo-profiles/sandpiper.printer.json"));
    PatchPlan plan = PatchPlan.of(profile, carried.map(), FirmwareFolder.read(NEW));
    assertThat(plan.refusals()).isEmpty();
    String roost = new String(plan.after().get("config/roost.h"), StandardCharsets.ISO_8859_1);
    assertThat(roost).contains("STRIDE_FASTEST        { 250, 250, 8, 50 }");
  }

  @Test
  void aChangedTypeOrUnitIsSaidAndNotSureAnyMore() throws Exception {
    FirmwareFolder before =
        folder("#define WING_RATE 200 // mm/s\n#define WING_FLIP 1\n#define WING_AMPS 0.8\n");
    FirmwareFolder after =
        folder(
            "#define WING_RATE 12000 // mm/min\n#define WING_FLIP FLIP_YES\n#define WING_AMPS 0.8\n");
    NameMap map =
        NameMap.EMPTY
            .with("axes.x.maxSpeed", NameEntry.chosen("WING_RATE", null, "w.h", 1))
            .with("axes.x.directionInverted", NameEntry.chosen("WING_FLIP", null, "w.h", 2))
            .with("axes.x.driver.current", NameEntry.chosen("WING_AMPS", null, "w.h", 3));
    CarryOver carried = CarryOver.of(before, map, after);
    assertThat(carried.lines().get(0).toString())
        .contains("unit mm/s to mm/min")
        .contains("axes.x.maxSpeed");
    assertThat(carried.lines().get(1).changes()).contains("type number to name");
    assertThat(carried.map().entry("axes.x.maxSpeed").orElseThrow().sure()).isFalse();
    assertThat(carried.map().entry("axes.x.driver.current").orElseThrow().sure()).isTrue();
  }

  private static FirmwareFolder folder(String text) {
    return FirmwareFolder.of(
        Path.of("w"),
        new TreeMap<>(Map.of("w.h", text.getBytes(StandardCharsets.UTF_8))),
        Map.of());
  }

  @Test
  void aRenamingIsBackedByASurerOneThatExchangesTheSameWords() throws Exception {
    Map<String, Double> renamed =
        of(carried(), Fate.RENAMED).stream()
            .collect(Collectors.toMap(Line::newName, Line::confidence));
    assertThat(renamed.get("WARM_BED_LIMIT")).isGreaterThanOrEqualTo(CarryOver.SURE);
    FirmwareFolder alone = firmware("#define WARM_BED_CEILING 110 // degrees C\n");
    FirmwareFolder after = firmware("\n\n#define BED_WARM_LIMIT 95\n");
    assertThat(of(CarryOver.of(alone, NameMap.EMPTY, after), Fate.RENAMED))
        .allMatch(line -> line.confidence() < CarryOver.SURE);
  }

  private static FirmwareFolder firmware(String text) {
    return FirmwareFolder.of(
        Path.of("rook"), Map.of("a.h", text.getBytes(StandardCharsets.UTF_8)), Map.of());
  }
}
