package dev.gantrywright.app;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.header.Progress;
import dev.gantrywright.machine.ChangedFields;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.report.ProfileFindings;
import dev.gantrywright.rules.CheckInput;
import dev.gantrywright.rules.Checked;
import dev.gantrywright.rules.RuleBook;
import dev.gantrywright.rules.Waivers;
import dev.gantrywright.rules.book.StandardBook;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * Checks printers by the rule book. Safe for use by several threads.
 *
 * @param book the rules
 * @param catalog facts about parts
 */
public record Checking(RuleBook book, Catalog catalog) {
  /** Where so many fields differ, nearly every rule reads one of them. */
  private static final int MANY_FIELDS = 40;

  /** With the rules and the facts that ship with the program. */
  public static Checking shipped() {
    Early<Catalog> facts = Early.of("facts", Catalog::shipped);
    return new Checking(StandardBook.open(), facts.get());
  }

  /**
   * What one file gave.
   *
   * @param file as it was given
   * @param printer the printer with its parts; null where the profile could not be read
   * @param findings what was found; null where the profile could not be read
   * @param problem why the profile could not be read; null where it could
   */
  public record Result(Path file, OpenPrinter printer, ProfileFindings findings, String problem) {}

  /** What the rules may look at. */
  public CheckInput input(OpenPrinter printer) {
    return new CheckInput(
        printer.profile(),
        printer.sheet(),
        printer.folder(),
        printer.names(),
        catalog,
        printer.unreadFolder());
  }

  /** Checks one open printer. */
  public ProfileFindings check(OpenPrinter printer) {
    return findings(printer, book.run(input(printer)));
  }

  private static ProfileFindings findings(OpenPrinter printer, Checked checked) {
    return new ProfileFindings(
        printer.file().toString(),
        printer.title(),
        printer.unreadParts(),
        Waivers.sort(printer.profile(), checked.findings()));
  }

  /** Runs the rules; those that read nothing that differs from the check before keep its answer. */
  private Checked after(Checked before, OpenPrinter printer) {
    CheckInput now = input(printer);
    if (before == null) {
      return book.run(now);
    }
    List<String> changed =
        ChangedFields.between(before.input().profile(), printer.profile(), MANY_FIELDS);
    return changed.size() < MANY_FIELDS ? book.rerun(before, now, changed) : book.run(now);
  }

  /**
   * Opens and checks many printers on all processors, and hands the answers over in the order of
   * the files. What is held does not grow with their number.
   *
   * @param folder the firmware folder to use for all of them; null for the one that each names
   * @param each makes the answer from a result; called on any thread
   * @param take is given the answers, on the caller's thread; false stops the run
   * @return whether every answer was taken; false also where the caller's thread was interrupted
   */
  public <T> boolean stream(
      List<Path> files, Path folder, Function<Result, T> each, Predicate<T> take) {
    return stream(() -> this, files, folder, Progress.none(), each, take);
  }

  /**
   * The same with rules and facts that may still be on their way: the first printers are opened
   * meanwhile.
   *
   * @param progress told of each step of the firmware folders' reading, from several threads; a
   *     {@link CancellationException} from it stops the run
   */
  public static <T> boolean stream(
      Supplier<Checking> checking,
      List<Path> files,
      Path folder,
      Progress progress,
      Function<Result, T> each,
      Predicate<T> take) {
    Opening opening = new Opening();
    ThreadLocal<Checked> before = new ThreadLocal<>();
    Function<Path, Result> open = file -> open(checking, opening, file, folder, progress, before);
    try {
      return new InOrder(Runtime.getRuntime().availableProcessors())
          .run(files, open.andThen(each), take);
    } catch (CancellationException ended) {
      return false;
    }
  }

  private static Result open(
      Supplier<Checking> checking,
      Opening opening,
      Path file,
      Path folder,
      Progress progress,
      ThreadLocal<Checked> before) {
    try {
      OpenPrinter printer = opening.open(file, folder, progress);
      Checked checked = checking.get().after(before.get(), printer);
      before.set(checked);
      return new Result(file, printer, findings(printer, checked), null);
    } catch (ProfileProblem e) {
      return new Result(file, null, null, e.getMessage());
    }
  }
}
