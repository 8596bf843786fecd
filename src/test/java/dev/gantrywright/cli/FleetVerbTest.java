package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.app.TroubledServers;
import dev.gantrywright.link.practice.AxisMotion;
import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticeServer;
import dev.gantrywright.link.practice.Wire;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.prove.PracticeMachine;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class FleetVerbTest {
  @TempDir Path folder;
  private Path fleet;
  private final List<PracticeServer> servers = new ArrayList<>();

  @BeforeEach
  void unpack() throws Exception {
    fleet = DemoWorkshop.unpack(folder.resolve("workshop")).getParent();
  }

  @AfterEach
  void close() throws Exception {
    for (PracticeServer server : servers) {
      server.close();
    }
  }

  private CommandRun run(Object... words) {
    List<String> args = new ArrayList<>(List.of("fleet", fleet.toString()));
    for (Object word : words) {
      args.add(word.toString());
    }
    return CommandRun.of(args.toArray(String[]::new));
  }

  private void change(Path file, String from, String to) throws IOException {
    // Not every firmware header is UTF-8.
    String text = Files.readString(file, StandardCharsets.ISO_8859_1);
    assertThat(text).contains(from);
    Files.writeString(file, text.replace(from, to), StandardCharsets.ISO_8859_1);
  }

  @Test
  void theMatrixHoldsWhatCheckFinds() {
    CommandRun run = run("--format", "json");

    assertThat(run.status()).isEqualTo(1);
    JsonNode printers = run.json().path("printers");
    assertThat(printers).hasSize(3);
    JsonNode heron = printers.get(1);
    assertThat(heron.path("printer").asString()).isEqualTo("Heron");
    assertThat(heron.path("found").path("GW-M001").asString()).isEqualTo("error");
    JsonNode check =
        CommandRun.of("check", fleet.toString(), "--format", "json").json().path("profiles").get(1);
    assertThat(check.path("findings"))
        .allSatisfy(f -> assertThat(heron.path("found").has(f.path("id").asString())).isTrue());
    assertThat(run().out()).contains("Heron", "E error, W warning, N note", "GW-M001  E  1 of 3");
  }

  @Test
  void anUnreadableProfileIsNamedAndTheOthersGoOn() throws Exception {
    Files.writeString(fleet.resolve("broken.printer.json"), "{");

    CommandRun run = run();

    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err().strip().lines()).hasSize(1);
    assertThat(run.err()).contains("broken.printer.json");
    assertThat(run.out()).contains("Heron", "broken.printer.json", "not read");
  }

  @Test
  void whoRunsAReleaseIsToldFromTheHistoryElseFromTheProfile() throws Exception {
    assertThat(run("--release", "rookery-2.3").out())
        .startsWith("rookery-2.3: 3 of 3 printers")
        .contains("Heron (heron.printer.json): no load on record; its profile names rookery-2.3");
    Path heron = fleet.resolve("heron.printer.json");
    String state = "a".repeat(64);
    String text =
        line("export", state, "{\"firmware\":{\"release\":\"rookery-2.1\"}}")
            + line("build", state, "{\"good\":true,\"image\":{\"sha256\":\"beef\"}}")
            + line("export", state, "{\"firmware\":{\"release\":\"rookery-2.3\"}}")
            + line("load", state, "{\"sha256\":\"beef\",\"way\":\"card\"}");
    Files.writeString(heron.resolveSibling("heron.history.jsonl"), text);

    assertThat(run("--release", "rookery-2.1").out())
        .contains(
            "1 of 3 printers", "Heron (heron.printer.json): loaded rookery-2.1 on 2026-03-02");
    assertThat(run("--release", "rookery-2.3").out()).contains("2 of 3 printers");
  }

  private static String line(String kind, String state, String facts) {
    return "{\"format\":1,\"time\":\"2026-03-02T12:00:00Z\",\"kind\":\""
        + kind
        + "\",\"by\":\"ida\",\"state\":\""
        + state
        + "\",\"facts\":"
        + facts
        + "}\n";
  }

  @Test
  void aChangedBoardSheetNamesWhomItTouchesAndHow() throws Exception {
    Path sheet = fleet.resolve("fulmar-m4.board.json");
    assertThat(run("--board", sheet).out()).contains("Heron").doesNotContain("comes");
    Path changed = folder.resolve("third-run.board.json");
    Files.copy(sheet, changed);
    change(changed, "\"toleranceVolts\": 5,", "\"toleranceVolts\": 3.0,");

    CommandRun run = run("--board", sheet, "--instead", changed, "--format", "json");

    JsonNode heron = run.json().path("printers").get(0);
    assertThat(heron.path("comes")).isNotEmpty();
    assertThat(heron.path("comes").get(0).path("path").asString()).startsWith("endstops.");
    assertThat(heron.path("settled")).isEmpty();
  }

  @Test
  void aWholeFleetIsCarriedToANewRelease() throws Exception {
    Path next = folder.resolve("rookery-2.4");
    copy(fleet.resolve("rookery-2.3"), next);
    change(next.resolve("config/roost.h"), "STRIDE_PER_MM", "STRIDES_A_MM");

    CommandRun run = run("--carry-to", next, "--out", folder.resolve("out"), "--format", "json");

    assertThat(run.err()).isEmpty();
    JsonNode printers = run.json().path("printers");
    assertThat(printers).hasSize(3);
    for (JsonNode printer : printers) {
      assertThat(printer.path("problem").isNull()).as(printer.toString()).isTrue();
      assertThat(printer.path("settings").path("renamed").asInt()).isEqualTo(1);
      Path patched = Path.of(printer.path("out").asString());
      assertThat(Files.readString(patched.resolve("config/roost.h"), StandardCharsets.ISO_8859_1))
          .contains("STRIDES_A_MM");
      assertThat(patched.resolveSibling("rookery-2.4.names.json")).exists();
    }
    assertThat(run("--carry-to", next).out()).contains(" of 3 printers come along whole to ");
  }

  private static void copy(Path from, Path to) throws IOException {
    try (var files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Files.copy(file, to.resolve(from.relativize(file).toString()));
      }
    }
  }

  private int board(PrinterProfile profile, Fault... faults) throws IOException {
    PracticeBoard board =
        new PracticeBoard(
            PracticeMachine.of(profile).withFaults(List.of(faults)), 1, System.nanoTime());
    PracticeServer server =
        PracticeServer.listen(0, board, Wire.ideal(), System::nanoTime, Thread::new);
    servers.add(server);
    return server.port();
  }

  /** Ten machines that fail, each in its own way, and what is said of each. */
  private Map<String, String> failing(PrinterProfile profile, TroubledServers troubled)
      throws IOException {
    Path homes = fleet.resolve("dangerous.printer.json");
    Files.copy(fleet.resolve("sandpiper.printer.json"), homes);
    change(homes, "\"build\": {", "\"link\": {\"endstopQuery\": \"G28\"},\n  \"build\": {");
    Map<String, String> all = new LinkedHashMap<>();
    String at = "sandpiper.printer.json rfc2217://127.0.0.1:";
    all.put(at + troubled.nobody(), "cannot be reached");
    all.put(at + troubled.serve(TroubledServers::refuses), "another client has it");
    all.put(at + troubled.serve(TroubledServers::mute), "does not answer");
    all.put(at + troubled.serve(TroubledServers.always("\u0080\u00C4\u00FF\u0091\n")), "baud rate");
    all.put(at + troubled.serve(TroubledServers.endless("U".repeat(4000), 1)), "does not answer");
    all.put(at + troubled.serve(TroubledServers.hangsUpAfter(1)), "127.0.0.1");
    all.put(at + troubled.serve(TroubledServers.busyAfter(1)), "given up");
    all.put(
        "dangerous.printer.json rfc2217://127.0.0.1:" + troubled.nobody(),
        "must be a command that only asks");
    all.put(at + board(profile, new Fault.Stuck("zMin", true)), "endstops.zMin");
    all.put(
        at + board(profile, new Fault.Stored("x", AxisMotion.Quantity.STEPS_PER_MM, 82)),
        "axes.x.stepsPerMm");
    return all;
  }

  @Test
  void twoHundredMachinesAreProvenInOneCallAndTheTroubledAreNamed() throws Exception {
    PrinterProfile profile = ProfileStore.read(fleet.resolve("sandpiper.printer.json"));
    try (TroubledServers troubled = new TroubledServers()) {
      Map<String, String> failing = failing(profile, troubled);
      List<String> ports = new ArrayList<>(List.of("# bench by bench", ""));
      ports.addAll(failing.keySet());
      for (int i = failing.size(); i < 200; i++) {
        ports.add("sandpiper.printer.json rfc2217://127.0.0.1:" + board(profile));
      }
      Path list = folder.resolve("ports.txt");
      Files.write(list, ports);

      CommandRun run = run("--prove", list, "--at-once", "64", "--longest", "40");

      assertThat(run.status()).isEqualTo(3);
      List<String> lines = run.out().lines().toList();
      assertThat(lines).hasSize(201);
      assertThat(lines.get(200)).startsWith("200 machines: 190 proven, 2 different, 8 without");
      failing.forEach(
          (machine, why) ->
              assertThat(lines)
                  .anySatisfy(
                      line ->
                          assertThat(line)
                              .doesNotStartWith("proven")
                              .contains(machine.replace(" ", " on ") + " - ", why)));
    }
  }

  @Test
  void whatIsWrongIsOneLine() throws Exception {
    Path list = folder.resolve("ports.txt");
    Files.writeString(list, "heron.printer.json\n");
    CommandRun noPort = run("--prove", list);
    assertThat(noPort.status()).isEqualTo(2);
    assertThat(noPort.err())
        .contains("ports.txt:1: write a profile and a port")
        .satisfies(err -> assertThat(err.strip().lines()).hasSize(1));
    assertThat(run("--prove", folder.resolve("none.txt")).status()).isEqualTo(2);
    assertThat(run("--board", fleet.resolve("none.board.json")).status()).isEqualTo(2);
    assertThat(run("--carry-to", folder.resolve("none")).status()).isEqualTo(2);
    assertThat(run("--instead", "x").status()).isEqualTo(2);
    assertThat(CommandRun.of("fleet", folder.resolve("nowhere").toString()).status()).isEqualTo(2);
  }
}
