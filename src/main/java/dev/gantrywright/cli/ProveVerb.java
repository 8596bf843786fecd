package dev.gantrywright.cli;

import dev.gantrywright.app.BuiltFirmware;
import dev.gantrywright.app.record.FirmwareIdentity;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.prove.Check;
import dev.gantrywright.prove.Proof;
import dev.gantrywright.prove.ProofReport;
import dev.gantrywright.prove.StoredSending;
import dev.gantrywright.prove.TouchReport;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Proves a machine: endstops at rest, stored settings and identity against the profile. */
@Command(
    name = "prove",
    mixinStandardHelpOptions = true,
    description =
        "Asks the machine for its endstops at rest, its stored settings and what firmware it runs,"
            + " and compares all of it with the profile. Sends only commands that read, unless --send asks for"
            + " more.",
    footer = {"", "Exit status 0: everything agrees; 1: something differs; 3: no answer."})
final class ProveVerb implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private LineOptions line;
  @Mixin private TextOrJson format;
  @Mixin private HistoryOption history;

  @Option(
      names = "--expect",
      paramLabel = "WHAT=TEXT",
      description =
          "A text that the identity reply must hold, such as version=2.3. What the history says of"
              + " the firmware on the board is compared without it.")
  private Map<String, String> expect = new LinkedHashMap<>();

  @Option(
      names = "--built",
      paramLabel = "PATH=VALUE",
      description =
          "What the practice board's firmware was built with, where it differs from the profile,"
              + " such as endstops.xMin.inverted=true.")
  private Map<String, String> built = new LinkedHashMap<>();

  @Option(
      names = "--folder",
      paramLabel = "DIR",
      description =
          "The firmware folder that the practice board's firmware was built from, such as a patched"
              + " folder; read through the name map.")
  private Path folder;

  @Option(
      names = "--touch",
      description =
          "Then the touch test: asks for each fitted endstop in turn. On the practice board a"
              + " practice hand presses them.")
  private boolean touch;

  @Option(
      names = "--send",
      description =
          "Then send the lines that bring the stored settings to the profile, after a question that"
              + " wants the word SEND; arms the line for these alone, and proves again.")
  private boolean send;

  @Option(names = "--names", paramLabel = "FILE", description = "Name map of that folder.")
  private Path names;

  @Override
  public Integer call() {
    if (send && format.json()) {
      throw new UsageProblem("--send asks before it sends; leave --format json out");
    }
    PrinterProfile printer = Profiles.read(line.profile);
    fits(printer);
    try (MachineLine machine = MachineLine.open(line, printer, firmware(printer), List.of())) {
      ProofReport first = proven(machine);
      ProofReport report = send && sent(machine, first) ? proven(machine) : first;
      TouchReport touched = touch ? touched(machine, report.port()) : null;
      if (format.json()) {
        Map<String, Object> document = ProofJson.of(report);
        if (touched != null) {
          document.put("touchTest", TouchTerminal.json(touched));
        }
        Printed.json(spec, document);
      }
      boolean fine = report.passed() && (touched == null || touched.passed());
      return fine ? ExitStatus.FINE : ExitStatus.FINDINGS;
    } catch (LinkException e) {
      throw new DeviceProblem(e.getMessage(), e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new DeviceProblem("interrupted", e);
    }
  }

  private void fits(PrinterProfile printer) {
    if (names != null && folder == null) {
      throw new UsageProblem("--names goes with --folder DIR");
    }
    if (folder != null || !built.isEmpty()) {
      LineOptions.forPractice(
          line.address(printer.link()), folder != null ? "--folder" : "--built");
    }
    new PracticeFit(printer).built(built);
  }

  private ProofReport proven(MachineLine machine) throws LinkException, InterruptedException {
    ProofReport report =
        Proof.of(
            machine.profile(),
            machine.session(),
            Set.copyOf(line.touched),
            expect,
            FirmwareIdentity.expected(machine.profile(), line.profile));
    if (!format.json()) {
      print(report);
    }
    history.keep(
        spec,
        line.profile,
        past -> past.proved(machine.profile(), report, Set.copyOf(line.touched)));
    return report;
  }

  /** Whether the lines went out; asks first. */
  private boolean sent(MachineLine machine, ProofReport report) throws InterruptedException {
    PrintWriter out = Printed.out(spec);
    if (report.linesToSend().isEmpty()) {
      out.println("nothing to send: the stored settings are the profile's");
      return false;
    }
    out.println(StoredSending.CAUTION);
    out.print(
        "To send "
            + Counted.of(report.linesToSend().size(), "line")
            + " to "
            + report.port()
            + ", type SEND; anything else leaves the machine as it is: ");
    out.flush();
    if (!Typed.line().equals("SEND")) {
      out.println("nothing was sent");
      return false;
    }
    String trouble = StoredSending.send(machine.session(), report);
    if (!trouble.isEmpty()) {
      throw new DeviceProblem("stopped at " + trouble + "; the line is disarmed");
    }
    out.println("sent; the line is disarmed");
    return true;
  }

  private TouchReport touched(MachineLine machine, String port) throws InterruptedException {
    TouchTerminal.Tested tested =
        TouchTerminal.run(machine, format.json() ? null : Printed.out(spec), Printed.err(spec));
    history.keep(
        spec,
        line.profile,
        past ->
            past.touchTested(
                machine.profile(), port, tested.report(), Optional.of(tested.trace())));
    return tested.report();
  }

  private Map<String, String> firmware(PrinterProfile printer) {
    Map<String, String> values = new LinkedHashMap<>();
    if (folder == null) {
      // The practice board then runs what the record says is on the machine.
      FirmwareIdentity.expected(printer, line.profile)
          .forEach((what, text) -> values.put("identity." + what, text));
      values.remove("identity." + FirmwareIdentity.NAME);
    } else {
      FirmwareFolder read = FolderInput.read(spec, folder, List.of());
      NameMap map = NameMapInput.read(names, line.profile, printer, read);
      values.putAll(BuiltFirmware.values(read, map));
    }
    values.putAll(built);
    return values;
  }

  private void print(ProofReport report) {
    PrintWriter out = Printed.out(spec);
    out.println(report.printer() + " on " + report.port());
    report.identity().forEach(text -> out.println("  says: " + text));
    Check.Family family = null;
    for (Check check : report.checks()) {
      if (check.family() != family) {
        family = check.family();
        out.println(family.phrase() + ":");
      }
      out.println(
          "  "
              + ProofJson.word(check.verdict())
              + "  "
              + check.path()
              + ": "
              + ProofText.compared(check));
      if (!check.advice().isEmpty()) {
        out.println("        " + check.advice());
      }
    }
    if (!report.linesToSend().isEmpty()) {
      out.println("  " + report.explanation());
      out.println("  to set the profile's values: " + String.join("; ", report.linesToSend()));
    }
    out.println(ProofText.outcome(report));
  }
}
