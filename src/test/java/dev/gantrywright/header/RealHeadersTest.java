package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.Tool;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Reading and editing headers that others wrote, with the compiler as the judge. */
class RealHeadersTest {
  private static final Path TLS = Path.of("/usr/include/mbedtls/config.h");
  private static final Path AVR = Path.of("/usr/lib/avr/include/avr");

  @TempDir private Path dir;

  @BeforeEach
  void needsCompilerAndHeaders() {
    Tool.need("gcc");
    Gnu.require(TLS);
    Gnu.require(AVR);
  }

  @Test
  void readAndWrittenBackByteForByte() throws IOException {
    List<Path> all = new ArrayList<>(Gnu.headers(AVR));
    all.add(TLS);
    int settings = 0;
    for (Path file : all) {
      byte[] bytes = Files.readAllBytes(file);
      HeaderDocument document = HeaderDocument.of(file.toString(), bytes);
      assertThat(document.bytes()).isEqualTo(bytes);
      assertThat(FileEdits.of("x", bytes, List.of()).apply(bytes)).isEqualTo(bytes);
      settings += document.settings().size();
    }
    assertThat(settings).isGreaterThan(200_000);
  }

  @Test
  void twentyEditsOfTheTlsConfiguration() throws IOException {
    byte[] before = Files.readAllBytes(TLS);
    FirmwareFolder folder = FirmwareFolder.of(dir, Map.of("config.h", before), Map.of());
    List<Setting> on = new ArrayList<>();
    List<Setting> offValues = new ArrayList<>();
    List<Setting> off = new ArrayList<>();
    for (Setting s : folder.settings()) {
      boolean once = folder.named(s.name()).size() == 1 && s.state() == State.LIVE;
      if (once && s.on() && s.kind() == Setting.Kind.FLAG) {
        on.add(s);
      } else if (once && !s.on() && s.kind() == Setting.Kind.VALUE) {
        offValues.add(s);
      } else if (once && !s.on() && s.kind() == Setting.Kind.FLAG) {
        off.add(s);
      }
    }
    List<Change> changes = new ArrayList<>();
    Map<String, String> intended = new TreeMap<>();
    for (int i = 0; i < 5; i++) {
      changes.add(new Change.SwitchOff(on.get(i * 7).name(), "test"));
      intended.put(on.get(i * 7).name(), null);
      changes.add(new Change.SwitchOn(off.get(i * 5).name(), "test"));
      intended.put(off.get(i * 5).name(), "");
      changes.add(new Change.SwitchOn(offValues.get(i * 9).name(), "test"));
      changes.add(new Change.SetValue(offValues.get(i * 9).name(), "7" + i, "test"));
      intended.put(offValues.get(i * 9).name(), "7" + i);
    }
    assertThat(changes).hasSize(20);
    EditPlan plan = EditPlan.of(folder, changes);
    assertThat(plan.outcomes()).allMatch(o -> o instanceof Outcome.Applied);
    byte[] after = plan.result("config.h");
    onlyTheEditedLinesDiffer(before, after, plan);
    compilerSees(before, after, intended);
    assertThat(plan.inverse().result("config.h")).isEqualTo(before);
  }

  private void onlyTheEditedLinesDiffer(byte[] before, byte[] after, EditPlan plan) {
    List<String> a = new String(before, StandardCharsets.ISO_8859_1).lines().toList();
    List<String> b = new String(after, StandardCharsets.ISO_8859_1).lines().toList();
    assertThat(b).hasSameSizeAs(a);
    List<Integer> edited = plan.outcomes().stream().map(o -> ((Outcome.Applied) o).line()).toList();
    for (int i = 0; i < a.size(); i++) {
      if (!edited.contains(i + 1)) {
        assertThat(b.get(i)).isEqualTo(a.get(i));
      }
    }
  }

  /** The compiler's macros differ in the intended names and in nothing else. */
  private void compilerSees(byte[] before, byte[] after, Map<String, String> intended)
      throws IOException {
    List<String> old = Gnu.macros(write("before.h", before), options()).lines();
    List<String> now = Gnu.macros(write("after.h", after), options()).lines();
    List<String> expected = new ArrayList<>();
    for (String line : old) {
      String name = line.split("[ (]")[1];
      if (!intended.containsKey(name)) {
        expected.add(line);
      }
    }
    intended.forEach(
        (name, value) -> {
          if (value != null) {
            expected.add("#define " + name + " " + value);
          }
        });
    assertThat(now).containsExactlyInAnyOrderElementsOf(expected);
  }

  private Path write(String name, byte[] bytes) throws IOException {
    return Files.write(dir.resolve(name), bytes);
  }

  /** The configuration checks itself by including a sibling; here it stands alone. */
  private List<String> options() {
    return List.of("-DMBEDTLS_CHECK_CONFIG_H", "-I/usr/include");
  }

  @Test
  void aThousandRandomEdits() throws IOException {
    Random random = new Random(20_181);
    List<Path> headers = new ArrayList<>(Gnu.headers(AVR));
    headers.removeIf(p -> !standsAlone(p));
    headers.add(TLS);
    int made = 0;
    int turn = 0;
    while (made < 1_000) {
      Path header = headers.get(turn++ % headers.size());
      made += editAtRandom(header, random, Math.min(40, 1_000 - made));
    }
    assertThat(made).isEqualTo(1_000);
  }

  private static boolean standsAlone(Path header) {
    try {
      return header.getFileName().toString().startsWith("iom")
          && !Files.readString(header, StandardCharsets.ISO_8859_1).contains("#include");
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** Makes some edits of one header at once; how many. */
  private int editAtRandom(Path header, Random random, int most) throws IOException {
    byte[] before = Files.readAllBytes(header);
    FirmwareFolder folder = FirmwareFolder.of(dir, Map.of("x.h", before), Map.of());
    List<Setting> all = folder.settings();
    Map<String, String> intended = new TreeMap<>();
    List<Change> changes = new ArrayList<>();
    for (int tries = 0; tries < 4_000 && changes.size() < most; tries++) {
      Setting s = all.get(random.nextInt(all.size()));
      boolean once = folder.named(s.name()).size() == 1 && s.state() == State.LIVE;
      boolean decides = !s.on() || folder.live(s.name()).isPresent();
      boolean plain = s.kind() != Setting.Kind.FUNCTION && !intended.containsKey(s.name());
      if (once && decides && plain) {
        changes.add(change(s, random, intended));
      }
    }
    EditPlan plan = EditPlan.of(folder, changes);
    assertThat(plan.outcomes()).as(header.toString()).allMatch(o -> o instanceof Outcome.Applied);
    compilerSees(before, plan.result("x.h"), intended);
    assertThat(plan.inverse().result("x.h")).isEqualTo(before);
    return changes.size();
  }

  private Change change(Setting s, Random random, Map<String, String> intended) {
    if (!s.on()) {
      intended.put(s.name(), s.value());
      return new Change.SwitchOn(s.name(), "test");
    }
    if (random.nextInt(4) == 0) {
      intended.put(s.name(), null);
      return new Change.SwitchOff(s.name(), "test");
    }
    String[] values = {"(" + random.nextInt(100_000) + "UL)", "0x" + random.nextInt(), "A + b"};
    String value = values[random.nextInt(values.length)].replace("0x-", "-0x");
    intended.put(s.name(), value);
    return new Change.SetValue(s.name(), value, "test");
  }
}
