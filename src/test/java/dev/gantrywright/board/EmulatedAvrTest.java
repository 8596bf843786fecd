package dev.gantrywright.board;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.BuildJob;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.Opening;
import dev.gantrywright.build.BuildListener;
import dev.gantrywright.cli.CommandRun;
import dev.gantrywright.image.Remark;
import dev.gantrywright.patch.Export;
import dev.gantrywright.patch.ExportProgress;
import dev.gantrywright.patch.PatchPlan;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The job on an emulated AVR board: describe, write, build, judge the image, boot it, ask its
 * endstops, compare; then the same with one polarity put right. Its board is loaded by a serial
 * bootloader, which the emulator does not have: the judged HEX file is what boots.
 */
class EmulatedAvrTest {
  private static final int Z_MIN = 4;

  @TempDir Path folder;
  private BenchPrinter printer;

  @BeforeEach
  void aBench() throws Exception {
    Tool.need("make", "avr-gcc", "avr-objcopy", "avr-nm", "qemu-system-avr");
    printer = BenchPrinter.avrIn(folder.resolve("bench"));
  }

  @Test
  void fromProfileToProof() throws Exception {
    printer.set("endstops.zMin.contact", "NO");
    printer.set("endstops.zMin.inverted", true);
    printer.set("endstops.yMin.inverted", true);
    CommandRun before = buildBootAndProve();
    assertThat(before.status()).as(before.out() + before.err()).isEqualTo(1);
    assertThat(before.out())
        .contains("pass    endstops.xMin", "pass    endstops.zMin")
        .contains("fail    endstops.yMin.inverted: expected open, seen triggered");

    printer.set("endstops.yMin.inverted", false);
    CommandRun after = buildBootAndProve();
    assertThat(after.out()).doesNotContain("fail  ").contains("pass    endstops.yMin");
    assertThat(after.status()).as(after.out() + after.err()).isZero();
  }

  private CommandRun buildBootAndProve() throws Exception {
    OpenPrinter open = new Opening().open(printer.file());
    assertThat(open.problems()).isEmpty();
    Path patched = folder.resolve("patched");
    Export.write(
        PatchPlan.of(open.profile(), open.names(), open.folder()),
        patched,
        true,
        ExportProgress.none(),
        () -> false);
    BuildJob.Done done =
        new BuildJob(
                open, patched, folder.resolve("records"), new BuildListener() {}, Clock.systemUTC())
            .run();
    assertThat(done.build().errors()).isZero();
    assertThat(done.verdict().orElseThrow().remarks()).extracting(Remark::id).isEmpty();
    assertThat(done.good()).isTrue();
    try (EmulatedBoard board =
        EmulatedBoard.bootAvr(
            folder, done.build().artefact().orElseThrow(), inputs(patched.resolve("out")))) {
      board.input(Z_MIN, true);
      return CommandRun.of("prove", printer.file().toString(), "--port", board.port());
    }
  }

  private static long inputs(Path out) {
    return Tool.mustRun(out, "avr-nm", "petrel81.elf")
        .lines()
        .filter(line -> line.endsWith(" input_level"))
        .mapToLong(line -> Long.parseLong(line.substring(0, line.indexOf(' ')), 16))
        .findFirst()
        .orElseThrow();
  }
}
