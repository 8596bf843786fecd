package dev.gantrywright.board;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.BuildJob;
import dev.gantrywright.app.LoadJob;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.Opening;
import dev.gantrywright.app.TiedDiagnostic;
import dev.gantrywright.build.BuildListener;
import dev.gantrywright.build.BuildResult;
import dev.gantrywright.build.Diagnostic;
import dev.gantrywright.cli.CommandRun;
import dev.gantrywright.image.Remark;
import dev.gantrywright.load.CardOnFat;
import dev.gantrywright.load.LoadOutcome;
import dev.gantrywright.patch.Export;
import dev.gantrywright.patch.ExportProgress;
import dev.gantrywright.patch.PatchPlan;
import dev.gantrywright.patch.PlannedLine;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The whole job on an emulated board: describe, write, build, read the diagnostics, judge the
 * image, load it over a card, boot it, ask its endstops, compare; then the same with one thing put
 * right.
 */
class EmulatedBoardTest {
  private static final int Z_MIN = 4;

  @TempDir Path folder;
  private BenchPrinter printer;
  private Path records;

  /** Lines of the plan that the story has told, so that it tells only what is new. */
  private final Set<String> told = new HashSet<>();

  @BeforeEach
  void aBench() throws Exception {
    Tool.need("make", "arm-none-eabi-gcc", "qemu-system-arm", "mkfs.vfat", "mcopy", "mren");
    printer = BenchPrinter.in(folder.resolve("bench"));
    records = folder.resolve("records");
  }

  private static void story(String text) {
    System.out.println("| " + text);
  }

  @Test
  void fromProfileToProof() throws Exception {
    story("Heron gets a Fulmar M4; its profile still names the old board's build target");
    BuildJob.Done wrong = writeAndBuild();
    assertThat(wrong.build().outcome()).isEqualTo(BuildResult.Outcome.FAILED);
    assertThat(wrong.diagnostics())
        .filteredOn(d -> d.diagnostic().level() == Diagnostic.Level.ERROR)
        .flatExtracting(TiedDiagnostic::ties)
        .filteredOn(t -> t.macro().equals("NEST_BOARD"))
        .flatExtracting(TiedDiagnostic.Tie::paths)
        .contains("board.constant");

    story("the target is put right; Z touches high and its profile says so, Y has it wrong");
    printer.set("board.target", "fulmar_m4");
    printer.set("serial.port", 1);
    printer.set("endstops.zMin.contact", "NO");
    printer.set("endstops.zMin.inverted", true);
    printer.set("endstops.yMin.inverted", true);
    CommandRun before = buildLoadBootAndProve();
    assertThat(before.status()).as(before.out() + before.err()).isEqualTo(1);
    assertThat(before.out())
        .contains("pass    endstops.xMin", "pass    endstops.zMin")
        .contains("fail    endstops.yMin.inverted: expected open, seen triggered");

    story("one polarity is put right in the profile, and the same way is gone again");
    printer.set("endstops.yMin.inverted", false);
    CommandRun after = buildLoadBootAndProve();
    assertThat(after.out()).doesNotContain("fail  ");
    assertThat(after.status()).as(after.out() + after.err()).isZero();
    story("proven: the machine reads what the profile says");
  }

  private BuildJob.Done writeAndBuild() throws Exception {
    OpenPrinter open = new Opening().open(printer.file());
    assertThat(open.problems()).isEmpty();
    PatchPlan plan = PatchPlan.of(open.profile(), open.names(), open.folder());
    Path patched = folder.resolve("patched");
    Export.write(plan, patched, true, ExportProgress.none(), () -> false);
    for (PlannedLine line : plan.lines()) {
      String now = "  " + line.file() + ":" + line.line() + "  " + line.after().strip();
      if (told.add(now)) {
        story(now);
      }
    }
    BuildJob job = new BuildJob(open, patched, records, new BuildListener() {}, Clock.systemUTC());
    BuildJob.Done done = job.run();
    story(
        "  "
            + job.command().shown()
            + ": "
            + done.build().outcome()
            + ", "
            + done.build().errors()
            + " errors, "
            + done.build().warnings()
            + " warnings, "
            + done.build().took().toMillis()
            + " ms");
    done.diagnostics()
        .forEach(
            d ->
                story(
                    "    "
                        + d.diagnostic().level()
                        + " "
                        + d.diagnostic().text()
                        + " -> "
                        + d.ties().stream().map(TiedDiagnostic.Tie::paths).toList()));
    return done;
  }

  private CommandRun buildLoadBootAndProve() throws Exception {
    BuildJob.Done done = writeAndBuild();
    assertThat(done.verdict().orElseThrow().remarks()).extracting(Remark::id).isEmpty();
    assertThat(done.good()).isTrue();
    assertThat(done.build().sizes()).extracting("region").contains("FLASH", "RAM");
    assertThat(done.measured().orElseThrow().address()).isEqualTo(0x08008000L);
    assertThat(done.need().orElseThrow().ramBytes()).isPositive();
    Path image = done.build().artefact().orElseThrow();
    story("  image judged: nothing against it, SHA-256 " + done.image().orElseThrow().sha256());

    byte[] taken = overACard(image, done);
    Path loader = folder.resolve("patched/out/boot/loader.elf");
    try (EmulatedBoard board = EmulatedBoard.boot(folder, loader, taken, TestFirmware.OFFSET)) {
      board.input(Z_MIN, true);
      story("  booted; its serial port is " + board.port());
      CommandRun run = CommandRun.of("prove", printer.file().toString(), "--port", board.port());
      run.out().lines().forEach(l -> story("    " + l));
      return run;
    }
  }

  /** Copies to a FAT card, plays the loader, and reads the card that comes back. */
  private byte[] overACard(Path image, BuildJob.Done done) throws Exception {
    OpenPrinter open = new Opening().open(printer.file());
    CardOnFat card = CardOnFat.formatted(folder, 8192);
    LoadJob job = new LoadJob(Optional.of(open.sheet()), records, Clock.systemUTC(), s -> {});
    String name = job.looksFor().orElseThrow();
    LoadJob.Done copied =
        job.run(
            new LoadJob.Request(
                image,
                Files.readAllBytes(image),
                name,
                card.card(),
                Optional.empty(),
                done.verdict(),
                Optional.empty()));
    byte[] taken;
    try (InputStream in = card.card().read(name)) {
      taken = in.readAllBytes();
    }
    card.card().rename(name, open.sheet().loader().renamedTo());
    LoadOutcome outcome = job.returned(card.card()).orElseThrow();
    assertThat(outcome.state()).isEqualTo(LoadOutcome.State.LOADED);
    assertThat(taken).isEqualTo(Files.readAllBytes(image));
    story("  " + copied.report().name() + " over a FAT card: " + outcome.text());
    return taken;
  }
}
