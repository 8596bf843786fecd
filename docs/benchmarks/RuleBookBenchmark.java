package dev.gantrywright.benchmarks;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.machine.BoardStore;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.names.NameMapJson;
import dev.gantrywright.rules.CheckInput;
import dev.gantrywright.rules.Checked;
import dev.gantrywright.rules.RuleBook;
import dev.gantrywright.rules.book.StandardBook;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * The rule book on a demo printer with its sheet, folder and name map open: the whole book, what an
 * edit of one field runs again, and reading the profile. Run by {@code docs/benchmarks/rules.sh}.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class RuleBookBenchmark {
  private static final Path DEMO = Path.of("demo-profiles");

  /** What one edit changes. */
  @State(Scope.Benchmark)
  public static class Edit {
    @Param({"axes.x.stepsPerMm", "endstops.zMin.inverted", "serial.baud", "supply.volts"})
    public String field;

    private Checked before;
    private CheckInput after;

    @Setup
    public void make(RuleBookBenchmark on) throws Exception {
      PrinterProfile profile = on.whole.profile();
      Object value = ProfileValues.get(profile, field).orElseThrow();
      before = on.book.run(on.whole);
      after = on.whole.with(ProfileValues.with(profile, field, value));
    }
  }

  private RuleBook book;
  private CheckInput whole;
  private CheckInput bare;
  private byte[] json;

  @Setup
  public void open() throws Exception {
    book = StandardBook.open();
    Path file = DEMO.resolve("sandpiper.printer.json");
    json = Files.readAllBytes(file);
    PrinterProfile profile = ProfileStore.read(file);
    bare =
        new CheckInput(
            profile,
            BoardStore.read(DEMO.resolve(profile.board().sheet())),
            null,
            null,
            Catalog.shipped());
    whole =
        new CheckInput(
            profile,
            bare.sheet(),
            FirmwareFolder.read(DEMO.resolve(profile.build().folder())),
            NameMapJson.read(DEMO.resolve(profile.build().names())),
            bare.catalog());
  }

  @Benchmark
  public Checked wholeBook() {
    return book.run(whole);
  }

  @Benchmark
  public Checked wholeBookWithoutFolder() {
    return book.run(bare);
  }

  @Benchmark
  public Checked editOfOneField(Edit edit) {
    return book.rerun(edit.before, edit.after, Set.of(edit.field));
  }

  @Benchmark
  public PrinterProfile readProfile() throws Exception {
    return ProfileStore.parse("sandpiper", json);
  }
}
