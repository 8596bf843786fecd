package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.gantrywright.Gantrywright;
import dev.gantrywright.board.Tool;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticeServer;
import dev.gantrywright.link.practice.Wire;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.prove.PracticeMachine;
import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Ctrl-C on real processes. Each is brought to a place where it cannot get on without us (a full
 * pipe, an open port, a build that waits) before the signal is sent.
 */
@Timeout(value = 300, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class InterruptedRunTest {
  private static final Path DEMO = Path.of("demo-profiles").toAbsolutePath();

  /** What the shell calls a program that Ctrl-C, or the system, has ended. */
  private enum Signal {
    INT(130),
    TERM(143);

    final int status;

    Signal(int status) {
      this.status = status;
    }
  }

  @TempDir Path folder;

  /** What stands before the program so that it hears Ctrl-C though this run ignores it. */
  private List<String> heeding = List.of();

  @BeforeEach
  void tools() throws Exception {
    Tool.need("sh");
    Path standing = Path.of("/proc/self/status");
    assumeTrue(Files.exists(standing), "whether this run ignores Ctrl-C shows in /proc");
    String ignored =
        Files.readAllLines(standing).stream()
            .filter(line -> line.startsWith("SigIgn:"))
            .map(line -> line.substring(7).strip())
            .findFirst()
            .orElse("0");
    if ((Long.parseUnsignedLong(ignored, 16) & 2) != 0) {
      // A job in the background hands that on to all that it starts.
      heeding = List.of("env", "--default-signal=INT");
      List<String> tried = new ArrayList<>(heeding);
      tried.add("true");
      assumeTrue(
          new ProcessBuilder(tried).start().waitFor() == 0,
          "started so that Ctrl-C is ignored, and env cannot take that back");
    }
  }

  private Process start(ProcessBuilder.Redirect out, String... call) throws IOException {
    List<String> words = new ArrayList<>(heeding);
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    words.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-cp"));
    words.add(System.getProperty("java.class.path"));
    words.add("-Duser.home=" + folder.resolve("home"));
    words.add(Gantrywright.class.getName());
    words.addAll(List.of(call));
    return new ProcessBuilder(words)
        .redirectOutput(out)
        .redirectError(folder.resolve("err.txt").toFile())
        .start();
  }

  private static void send(Process process, Signal signal) throws Exception {
    int sent =
        new ProcessBuilder("sh", "-c", "kill -" + signal + " " + process.pid()).start().waitFor();
    assertThat(sent).isZero();
  }

  private String said() throws IOException {
    return Files.readString(folder.resolve("err.txt"));
  }

  /** Printers with findings, so that every format has something to say about each. */
  private Path fleet(int printers) throws IOException {
    Path all = Files.createDirectory(folder.resolve("fleet"));
    String heron = Files.readString(DEMO.resolve("heron.printer.json"));
    String folderless =
        heron.replace("\"rookery-2.3\"", "null").replace("\"rookery-2.3.names.json\"", "null");
    Files.copy(DEMO.resolve("fulmar-m4.board.json"), all.resolve("fulmar-m4.board.json"));
    for (int i = 0; i < printers; i++) {
      Files.writeString(all.resolve(String.format("%05d.printer.json", i)), folderless);
    }
    return all;
  }

  @ParameterizedTest
  @CsvSource({"json,INT", "sarif,INT", "junit,INT", "text,INT", "json,TERM"})
  void aCutCheckLeavesAWholeDocumentInThePipe(String format, Signal signal) throws Exception {
    Path fleet = fleet(2_000);
    Process check =
        start(ProcessBuilder.Redirect.PIPE, "check", fleet.toString(), "--format", format);
    InputStream pipe = check.getInputStream();
    ByteArrayOutputStream all = new ByteArrayOutputStream();
    all.write(pipe.read());
    // The pipe holds far less than the whole answer: the run stands until somebody reads on.
    send(check, signal);
    pipe.transferTo(all);
    assertThat(check.waitFor()).isEqualTo(signal.status);
    assertThat(said()).matches("stopped after \\d+ of 2000 printers\\R");
    whole(format, all.toByteArray());
  }

  @Test
  void aCutCheckLeavesAWholeDocumentInTheFile() throws Exception {
    Path fleet = fleet(6_000);
    Path file = folder.resolve("answer.json");
    Process check =
        start(
            ProcessBuilder.Redirect.to(file.toFile()),
            "check",
            fleet.toString(),
            "--format",
            "json");
    while (check.isAlive() && Files.size(file) == 0) {
      TimeUnit.MILLISECONDS.sleep(5);
    }
    send(check, Signal.INT);
    check.waitFor();
    JsonNode answer = JsonMapper.shared().readTree(file.toFile());
    // On a machine that was through before the signal came, the answer is simply complete.
    boolean cut = check.exitValue() == 130 && answer.has("stopped");
    assertThat(cut || answer.path("profiles").size() == 6_000).isTrue();
    assertThat(said().isEmpty()).isEqualTo(!cut);
  }

  private static void whole(String format, byte[] document) throws Exception {
    switch (format) {
      case "json" -> {
        JsonNode tree = JsonMapper.shared().readTree(document);
        assertThat(tree.path("stopped").asBoolean()).isTrue();
        assertThat(tree.path("profiles").size()).isBetween(1, 1_999);
      }
      case "sarif" -> {
        JsonNode run = JsonMapper.shared().readTree(document).path("runs").path(0);
        assertThat(run.path("invocations").path(0).path("executionSuccessful").asBoolean(true))
            .isFalse();
      }
      case "junit" ->
          assertThat(
                  DocumentBuilderFactory.newDefaultInstance()
                      .newDocumentBuilder()
                      .parse(new ByteArrayInputStream(document))
                      .getElementsByTagName("testsuite")
                      .getLength())
              .isBetween(1, 2_000);
      default -> assertThat(new String(document, StandardCharsets.UTF_8)).endsWith("\n");
    }
  }

  @Test
  void aCutCarryLeavesEachFolderWholeOrAbsent() throws Exception {
    Path fleet = Files.createDirectory(folder.resolve("fleet"));
    String sandpiper = Files.readString(DEMO.resolve("sandpiper.printer.json"));
    for (String name : List.of("fulmar-m4.board.json", "rookery-2.3.names.json")) {
      Files.copy(DEMO.resolve(name), fleet.resolve(name));
    }
    copy(DEMO.resolve("rookery-2.3"), fleet.resolve("rookery-2.3"));
    for (int i = 0; i < 300; i++) {
      Files.writeString(fleet.resolve(String.format("%03d.printer.json", i)), sandpiper);
    }
    Path out = folder.resolve("out");
    Process carry =
        start(
            ProcessBuilder.Redirect.PIPE,
            "fleet",
            fleet.toString(),
            "--carry-to",
            DEMO.resolve("rookery-2.3").toString(),
            "--out",
            out.toString(),
            "--format",
            "json");
    while (carry.isAlive() && written(out) < 3) {
      TimeUnit.MILLISECONDS.sleep(5);
    }
    send(carry, Signal.INT);
    byte[] document = carry.getInputStream().readAllBytes();
    assertThat(carry.waitFor()).as(said()).isEqualTo(130);
    assertThat(said()).matches("(?s).*stopped after \\d+ of 300 printers\\R");
    JsonNode rows = JsonMapper.shared().readTree(document);
    assertThat(rows.toString()).contains("not carried: cancelled");
    List<String> wanted = tree(DEMO.resolve("rookery-2.3"));
    try (Stream<Path> each = Files.list(out)) {
      for (Path own : each.toList()) {
        try (Stream<Path> inside = Files.list(own)) {
          assertThat(inside.map(p -> p.getFileName().toString()))
              .as(own.toString())
              .containsExactlyInAnyOrder("rookery-2.3", "rookery-2.3.names.json");
        }
        assertThat(tree(own.resolve("rookery-2.3"))).containsAll(wanted);
      }
    }
  }

  private static long written(Path out) throws IOException {
    if (!Files.isDirectory(out)) {
      return 0;
    }
    try (Stream<Path> each = Files.list(out)) {
      return each.count();
    }
  }

  private static List<String> tree(Path root) throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      return files.filter(Files::isRegularFile).map(f -> root.relativize(f).toString()).toList();
    }
  }

  private static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Files.copy(file, to.resolve(from.relativize(file).toString()));
      }
    }
  }

  @Test
  void aWatchThatIsEndedPrintsItsEndAndSaysNothingOfALostLine() throws Exception {
    Process watch =
        start(
            ProcessBuilder.Redirect.PIPE,
            "watch",
            DEMO.resolve("sandpiper.printer.json").toString());
    BufferedReader out = reader(watch);
    assertThat(out.readLine()).contains("xMax open");
    send(watch, Signal.INT);
    List<String> rest = out.lines().toList();
    assertThat(watch.waitFor()).isEqualTo(130);
    assertThat(said()).isEmpty();
    assertThat(rest.get(rest.size() - 1)).matches("\\d+ samples?, .* a second");
    assertThat(rest).noneMatch(row -> row.contains("(disconnected)"));
  }

  @Test
  void aPracticeBoardThatIsEndedClosesItsPort() throws Exception {
    Process practice =
        start(
            ProcessBuilder.Redirect.PIPE,
            "practice",
            DEMO.resolve("sandpiper.printer.json").toString(),
            "--listen",
            "0");
    String line = reader(practice).readLine();
    Matcher port = Pattern.compile(":(\\d+)").matcher(line);
    assertThat(port.find()).as(line).isTrue();
    int number = Integer.parseInt(port.group(1));
    new Socket("127.0.0.1", number).close();
    send(practice, Signal.INT);
    assertThat(practice.waitFor()).isEqualTo(130);
    assertThatThrownBy(() -> new Socket("127.0.0.1", number)).isInstanceOf(IOException.class);
    assertThat(said()).isEmpty();
  }

  @Test
  void aBuildThatIsEndedLeavesNothingRunning() throws Exception {
    Path patched = Files.createDirectory(folder.resolve("patched"));
    Files.writeString(patched.resolve("stay.sh"), "sleep 1000 & echo child $!\nwait\n");
    copy(DEMO.resolve("rookery-2.3"), folder.resolve("rookery-2.3"));
    for (String name : List.of("fulmar-m4.board.json", "rookery-2.3.names.json")) {
      Files.copy(DEMO.resolve(name), folder.resolve(name));
    }
    Path profile = folder.resolve("sandpiper.printer.json");
    Files.writeString(
        profile,
        Files.readString(DEMO.resolve("sandpiper.printer.json"))
            .replaceFirst("\"make\",\\s*\"TARGET=\\{target\\}\"", "\"sh\", \"stay.sh\""));
    Process build =
        start(
            ProcessBuilder.Redirect.PIPE,
            "build",
            profile.toString(),
            "--in",
            patched.toString(),
            "--records",
            folder.resolve("records").toString());
    BufferedReader out = reader(build);
    long child = child(out);
    send(build, Signal.INT);
    out.lines().forEach(rest -> assertThat(rest).doesNotContain("done"));
    assertThat(build.waitFor()).isEqualTo(130);
    assertThat(said()).isEqualTo("build cancelled; nothing that it started is left running\n");
    assertThat(ProcessHandle.of(child).filter(ProcessHandle::isAlive)).isEmpty();
  }

  /**
   * The copy is caught at work: its files stand in the folder that it is put together in. On a
   * machine that was through before the signal came the patched folder is simply whole.
   */
  @ParameterizedTest
  @EnumSource(Signal.class)
  void aCutExportLeavesThePatchedFolderWholeOrAbsent(Signal signal) throws Exception {
    Path source = Files.createDirectory(folder.resolve("firmware"));
    Files.writeString(source.resolve("a.h"), "#define LINE_RATE 115200\n");
    for (int i = 0; i < 4_000; i++) {
      Files.writeString(source.resolve(String.format("%04d.c", i)), "int x" + i + ";\n");
    }
    Path out = folder.resolve("patched");
    Process patch =
        start(
            ProcessBuilder.Redirect.DISCARD,
            "patch",
            source.toString(),
            "--set",
            "LINE_RATE=250000",
            "--out",
            out.toString());
    while (patch.isAlive() && partial() < 20) {
      TimeUnit.MILLISECONDS.sleep(2);
    }
    send(patch, signal);
    int status = patch.waitFor();
    if (Files.exists(out)) {
      assertThat(tree(out)).containsAll(tree(source));
      assertThat(out.resolve("a.h")).hasContent("#define LINE_RATE 250000");
    } else {
      assertThat(status).isEqualTo(signal.status);
      assertThat(said()).isEqualTo("cancelled; the patched folder was not written\n");
    }
    try (Stream<Path> beside = Files.list(folder)) {
      assertThat(beside.map(file -> file.getFileName().toString()))
          .as("nothing half stays behind")
          .noneMatch(name -> name.startsWith(".patched"));
    }
  }

  /** Files in the folder that the patched folder is put together in. */
  private long partial() throws IOException {
    try (Stream<Path> beside = Files.list(folder)) {
      for (Path place : beside.toList()) {
        if (place.getFileName().toString().startsWith(".patched.partial")) {
          return written(place);
        }
      }
    }
    return 0;
  }

  @Test
  void aFlashingCommandThatIsEndedLeavesNothingRunning() throws Exception {
    Path image = folder.resolve("firmware.bin");
    Files.write(image, new byte[64]);
    Path stay = folder.resolve("stay.sh");
    Files.writeString(stay, "sleep 1000 & echo child $!\nwait\n");
    Process load =
        start(
            ProcessBuilder.Redirect.PIPE,
            "load",
            image.toString(),
            "--records",
            folder.resolve("records").toString(),
            "--by",
            "--",
            "sh",
            stay.toString(),
            "{file}");
    BufferedReader out = reader(load);
    long child = child(out);
    send(load, Signal.INT);
    assertThat(out.lines().toList()).noneMatch(line -> line.contains("proven"));
    assertThat(load.waitFor()).isEqualTo(130);
    assertThat(said())
        .isEqualTo("flashing command ended; the board may hold half a firmware: load again\n");
    assertThat(ProcessHandle.of(child).filter(ProcessHandle::isAlive)).isEmpty();
  }

  /** The number of the process that the script says it has started. */
  private long child(BufferedReader out) throws IOException {
    String line = out.readLine();
    while (line != null && !line.contains("child ")) {
      line = out.readLine();
    }
    assertThat(line).as(said()).isNotNull();
    long child = Long.parseLong(line.replaceAll("\\D", ""));
    assertThat(ProcessHandle.of(child)).isPresent();
    return child;
  }

  /** On a real line no hand presses: the test waits at its first question for as long as we do. */
  @Test
  void aTouchTestThatIsEndedJudgesNothingAndKeepsNothing() throws Exception {
    Path profile = folder.resolve("sandpiper.printer.json");
    Files.copy(DEMO.resolve("sandpiper.printer.json"), profile);
    PracticeBoard board =
        new PracticeBoard(PracticeMachine.of(ProfileStore.read(profile)), 1, System.nanoTime());
    try (PracticeServer server =
        PracticeServer.listen(0, board, Wire.ideal(), System::nanoTime, Thread::new)) {
      Process prove =
          start(
              ProcessBuilder.Redirect.PIPE,
              "prove",
              profile.toString(),
              "--port",
              "rfc2217://127.0.0.1:" + server.port(),
              "--touch",
              "--history",
              "on");
      BufferedReader out = reader(prove);
      String line = out.readLine();
      while (line != null && !line.startsWith("Press and hold xMax")) {
        line = out.readLine();
      }
      assertThat(line).as(said()).isNotNull();
      send(prove, Signal.INT);
      assertThat(out.lines().toList()).noneMatch(rest -> rest.contains("xMax"));
      assertThat(prove.waitFor()).isEqualTo(130);
      assertThat(said())
          .isEqualTo("touch test broken off; no endstop is judged, nothing of it is kept\n");
      assertThat(Files.readString(folder.resolve("sandpiper.history.jsonl")))
          .contains("\"proof\"")
          .doesNotContain("touch-test");
    }
  }

  @Test
  void aHeaterRunThatIsEndedLeavesTheHeaterOffAndItsReadings() throws Exception {
    Path profile = folder.resolve("sandpiper.printer.json");
    Files.copy(DEMO.resolve("sandpiper.printer.json"), profile);
    PracticeBoard board =
        new PracticeBoard(PracticeMachine.of(ProfileStore.read(profile)), 1, System.nanoTime());
    try (PracticeServer server =
        PracticeServer.listen(0, board, Wire.ideal(), System::nanoTime, Thread::new)) {
      Process heat =
          start(
              ProcessBuilder.Redirect.PIPE,
              "heat",
              profile.toString(),
              "hotend",
              "--port",
              "rfc2217://127.0.0.1:" + server.port(),
              "--on",
              "POWER hotend S0.5",
              "--off",
              "POWER hotend S0");
      try (OutputStream typed = heat.getOutputStream()) {
        typed.write("HEAT\n".getBytes(StandardCharsets.US_ASCII));
      }
      BufferedReader out = reader(heat);
      String line = out.readLine();
      while (line != null && !line.matches(" *\\d+\\.\\d s .*")) {
        line = out.readLine();
      }
      assertThat(line).as(said()).isNotNull();
      assertThat(board.obey("M105", System.nanoTime()).get(0)).contains("power 0.50");
      send(heat, Signal.INT);
      assertThat(out.lines().toList())
          .anyMatch(end -> end.startsWith("ended by Ctrl-C; the heater is off"));
      assertThat(heat.waitFor()).isEqualTo(130);
      assertThat(said()).isEmpty();
      assertThat(board.obey("M105", System.nanoTime()).get(0)).contains("power 0.00");
      assertThat(folder.resolve("sandpiper.hotend-step.csv")).exists();
    }
  }

  private static BufferedReader reader(Process process) {
    return new BufferedReader(
        new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
  }
}
