package dev.gantrywright.cli;

import dev.gantrywright.app.record.PrinterHistory;
import dev.gantrywright.app.record.States;
import dev.gantrywright.app.record.WayBack;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.record.ProfileState;
import dev.gantrywright.record.StateDifference;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb history: what was done with a printer, and the states that its profile went through. */
@Command(
    name = "history",
    mixinStandardHelpOptions = true,
    description = {
      "Tells what was done with a printer, oldest first: exports, builds, loads, proofs, touch"
          + " tests, calibrations, heat-ups. It stands in NAME.history.jsonl beside the profile.",
      "A star stands where the profile was changed since the event before. A STATE is the number of"
          + " an event, the first digits of its id, or 'now' for the profile as it stands."
    },
    footer = {
      "",
      "  history PROFILE                      tells it",
      "  history PROFILE --compare A,B        the values that differ between two states",
      "  history PROFILE --against OTHER      the values that differ between two printers",
      "  history PROFILE --show STATE         prints the profile as it was",
      "  history PROFILE --back-to STATE      saves that state as the profile",
      "  history PROFILE --note TEXT          adds a remark",
      "",
      "Exit status 0: done, or no value differs; 1: values differ; 2: no such state or "
          + "file; 3: the history or the profile could not be written."
    })
final class HistoryVerb implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private TextOrJson format;

  @Parameters(index = "0", paramLabel = "PROFILE", description = "The printer profile.")
  private Path profile;

  @ArgGroup private Act act = new Act();

  @Option(
      names = "--signed",
      paramLabel = "NAME",
      description = "Who does it; without it the user of this computer.")
  private String signed;

  /** One at a time. */
  static final class Act {
    @Option(
        names = "--compare",
        paramLabel = "STATE[,STATE]",
        split = ",",
        hideParamSyntax = true,
        description = "Compare two states; with one, that state and 'now'.")
    private List<String> compare;

    @Option(
        names = "--against",
        paramLabel = "OTHER",
        description = "Compare with another printer's profile.")
    private Path against;

    @Option(names = "--show", paramLabel = "STATE", description = "Print the profile as it was.")
    private String show;

    @Option(
        names = "--back-to",
        paramLabel = "STATE",
        description = "Save that state as the profile; the present state is kept first.")
    private String backTo;

    @Option(names = "--note", paramLabel = "TEXT", description = "Add a remark.")
    private String note;
  }

  @Override
  public Integer call() {
    if (act.note != null && act.note.isBlank()) {
      throw new UsageProblem("--note is empty; say what there is to remember");
    }
    PrinterHistory history = history();
    try {
      if (act.against != null) {
        return new DifferencePrinter(spec, format.json())
            .print(
                profile.toString(),
                act.against.toString(),
                StateDifference.of(Profiles.read(profile), Profiles.read(act.against)));
      }
      if (act.note != null) {
        history.noted(Profiles.read(profile), act.note);
        return tell(history);
      }
      States states = States.of(profile, history);
      if (act.compare != null) {
        return compare(states);
      }
      if (act.show != null) {
        Printed.out(spec).print(ProfileState.of(states.profile(act.show)).text());
        return ExitStatus.FINE;
      }
      return act.backTo != null ? back(states, history) : tell(history);
    } catch (States.NoState | ProfileProblem e) {
      throw new UsageProblem(e.getMessage(), e);
    } catch (IOException e) {
      throw new DeviceProblem(e.getMessage(), e);
    }
  }

  private PrinterHistory history() {
    HistoryOption who = new HistoryOption();
    who.signed = signed;
    return who.history(profile);
  }

  private Integer tell(PrinterHistory history) throws IOException {
    Profiles.read(profile);
    new TimelinePrinter(spec, format.json()).print(history.file(), history.timeline());
    return ExitStatus.FINE;
  }

  private Integer compare(States states) throws States.NoState, ProfileProblem {
    if (act.compare.size() > 2) {
      throw new UsageProblem("--compare takes two states, such as --compare 3,now");
    }
    List<String> two = Stream.concat(act.compare.stream(), Stream.of(States.NOW)).limit(2).toList();
    PrinterProfile left = states.profile(two.get(0));
    PrinterProfile right = states.profile(two.get(1));
    return new DifferencePrinter(spec, format.json())
        .print(two.get(0), two.get(1), StateDifference.of(left, right));
  }

  private Integer back(States states, PrinterHistory history)
      throws States.NoState, ProfileProblem, IOException {
    WayBack.Done done = WayBack.take(profile, history, states.event(act.backTo));
    new DifferencePrinter(spec, format.json()).print("before", act.backTo, done.changed());
    return ExitStatus.FINE;
  }
}
