package dev.gantrywright.header;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The header engine in process, warm, on one thread. Run by {@code docs/benchmarks/header.sh}, which
 * turns the time of a pass over the device headers into megabytes a second. It stands in the
 * engine's own package, since scanning alone is no public call.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class HeaderBenchmark {
  private static final int FILES = 20;
  private static final int SETTINGS = 500;

  private final TreeMap<String, byte[]> devices = new TreeMap<>();
  private FirmwareFolder folder;
  private byte[][] edited;
  private int turn;

  @Setup
  public void read() throws Exception {
    Path dir = Path.of(System.getProperty("headers", "/usr/lib/avr/include/avr"));
    try (Stream<Path> list = Files.list(dir)) {
      for (Path file : list.filter(f -> f.getFileName().toString().startsWith("io")).toList()) {
        devices.put(file.getFileName().toString(), Files.readAllBytes(file));
      }
    }
    TreeMap<String, byte[]> files = new TreeMap<>();
    StringBuilder main = new StringBuilder();
    for (int f = 0; f < FILES; f++) {
      files.put("part" + f + ".h", bytes(part(f)));
      main.append("#include \"part").append(f).append(".h\"\n");
    }
    files.put("main.c", bytes(main.toString()));
    folder = FirmwareFolder.of(Path.of("f"), files, Map.of());
    edited = new byte[1000][];
    for (int i = 0; i < edited.length; i++) {
      edited[i] = bytes(part(7).replace("N7_3   3 ", "N7_3   " + (3 + i) + " "));
    }
  }

  /** 500 settings with comments, a condition over each ten. */
  private static String part(int f) {
    StringBuilder text = new StringBuilder("#pragma once\n");
    for (int i = 0; i < SETTINGS; i++) {
      if (i % 10 == 0) {
        text.append(i == 0 ? "#if 1\n" : "#if N" + f + '_' + (i - 5) + " > 3\n");
      }
      text.append("#define N").append(f).append('_').append(i).append("   ").append(i);
      text.append("  // note on setting ").append(i).append('\n');
      if (i % 10 == 9) {
        text.append("#endif\n");
      }
    }
    return text.toString();
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Scanning alone: the directives of all device headers. */
  @Benchmark
  public int scan() {
    int directives = 0;
    for (byte[] file : devices.values()) {
      directives += DirectiveScanner.scan(file).table().size();
    }
    return directives;
  }

  /** Scanning, evaluating each header for itself, and finding its settings. */
  @Benchmark
  public int read_evaluate() {
    int settings = 0;
    for (Map.Entry<String, byte[]> file : devices.entrySet()) {
      settings += HeaderDocument.of(file.getKey(), file.getValue()).settings().size();
    }
    return settings;
  }

  /** One edit in a folder of 10,000 settings, evaluated to the end. */
  @Benchmark
  public FirmwareFolder edit_evaluate() {
    folder = folder.with("part7.h", edited[turn++ % edited.length]);
    folder.live("N19_499").orElseThrow();
    return folder;
  }

  /** The same, and then the state of each of the 10,000 settings is asked for. */
  @Benchmark
  public int edit_evaluate_all_states() {
    folder = folder.with("part7.h", edited[turn++ % edited.length]);
    int live = 0;
    for (HeaderDocument header : folder.headers()) {
      DirectiveTable table = header.source().table();
      for (int row = 0; row < table.size(); row++) {
        boolean define = table.kind(row) == DirectiveKind.DEFINE;
        live += define && header.state(row) == dev.gantrywright.header.State.LIVE ? 1 : 0;
      }
    }
    return live;
  }
}
