package dev.gantrywright.cli;

import dev.gantrywright.app.Checking;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.Opening;
import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.app.sheet.AsBuilt;
import dev.gantrywright.app.sheet.SheetFile;
import dev.gantrywright.header.IoReason;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.report.sheet.Sheet;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb sheet: writes the as-built sheet of a printer. */
@Command(
    name = "sheet",
    mixinStandardHelpOptions = true,
    description = {
      "Writes the as-built sheet of a printer as one HTML file or as PDF: the machine, its board and"
          + " firmware, every setting written and why, findings, build, load, proof, touch test and"
          + " calibration. What has not been done yet is said plainly.",
      "The same printer, history and date give the same bytes."
    },
    footer = {"", "Exit status 0: written; 2: no such printer, or bad usage; 3: not written."})
final class SheetVerb implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private TextOrJson format;

  @Parameters(index = "0", paramLabel = "PROFILE", description = "The printer profile.")
  private Path profile;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      required = true,
      description = "Where to write it; the name ends in .html or .pdf.")
  private Path out;

  @Option(
      names = "--folder",
      paramLabel = "DIR",
      description = "The firmware folder, instead of the one that the profile names.")
  private Path folder;

  @Option(
      names = "--date",
      paramLabel = "YYYY-MM-DD",
      description = "The date on the sheet; without it today's, in UTC.")
  private String date;

  @Option(
      names = "--signed",
      paramLabel = "NAME",
      description = "Who makes it; without it the user of this computer.")
  private String signed = System.getProperty("user.name", "");

  @Override
  public Integer call() {
    if (!SheetFile.known(out)) {
      throw new UsageProblem(out + ": the name of a sheet ends in .html or .pdf");
    }
    FolderInput.need(folder, "the firmware folder");
    LocalDate day = day();
    Sheet sheet = sheet(day);
    try {
      byte[] bytes = SheetFile.bytes(sheet, day, out);
      SheetFile.write(bytes, out);
      say(sheet, bytes.length);
      return ExitStatus.FINE;
    } catch (IOException failed) {
      throw new DeviceProblem(out + ": cannot be written (" + IoReason.of(failed) + ")", failed);
    }
  }

  private LocalDate day() {
    try {
      return date == null ? LocalDate.now(Clock.systemUTC()) : LocalDate.parse(date);
    } catch (DateTimeException wrong) {
      throw new UsageProblem("--date is '" + date + "'; write it as 2026-03-02", wrong);
    }
  }

  private Sheet sheet(LocalDate day) {
    try {
      OpenPrinter printer = new Opening().open(profile, folder);
      printer.problems().forEach(Printed.err(spec)::println);
      return AsBuilt.of(
          printer,
          Checking.shipped().check(printer),
          PrinterHistory.beside(profile).timeline(),
          day,
          signed);
    } catch (ProfileProblem unreadable) {
      throw new UsageProblem(unreadable.getMessage(), unreadable);
    } catch (IOException unreadable) {
      throw new DeviceProblem(unreadable.getMessage(), unreadable);
    }
  }

  private void say(Sheet sheet, int bytes) {
    if (format.json()) {
      Map<String, Object> document = new LinkedHashMap<>();
      document.put("out", out.toString());
      document.put("bytes", bytes);
      document.put("printer", sheet.printer());
      document.put("date", sheet.date());
      document.put("open", sheet.open());
      Printed.json(spec, document);
      return;
    }
    Printed.out(spec).println("as-built sheet: " + out);
    if (!sheet.open().isEmpty()) {
      Printed.out(spec).println("not done yet: " + String.join(", ", sheet.open()));
    }
  }
}
