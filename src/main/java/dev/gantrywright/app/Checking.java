package dev.gantrywright.app;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.report.ProfileFindings;
import dev.gantrywright.rules.CheckInput;
import dev.gantrywright.rules.RuleBook;
import dev.gantrywright.rules.Waivers;
import dev.gantrywright.rules.book.StandardBook;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Checks printers by the rule book. Safe for use by several threads.
 *
 * @param book the rules
 * @param catalog facts about parts
 */
public record Checking(RuleBook book, Catalog catalog) {
  /** Files that one thread opens in a row, so that it reads what they share once. */
  private static final int CHUNK = 64;

  /** With the rules and the facts that ship with the program. */
  public static Checking shipped() {
    return new Checking(StandardBook.open(), Catalog.shipped());
  }

  /** What one file gave: its findings, or why it could not be read. */
  public record Result(ProfileFindings findings, String problem) {}

  /** What the rules may look at. */
  public CheckInput input(OpenPrinter printer) {
    return new CheckInput(
        printer.profile(), printer.sheet(), printer.folder(), printer.names(), catalog);
  }

  /** Checks one open printer. */
  public ProfileFindings check(OpenPrinter printer) {
    return new ProfileFindings(
        printer.file().toString(),
        printer.title(),
        printer.problems(),
        Waivers.sort(printer.profile(), book.check(input(printer))));
  }

  /**
   * Opens and checks many profiles on all processors.
   *
   * @param folder the firmware folder to use for all of them; null for the one that each names
   * @return one result for each file, in their order
   */
  public List<Result> check(List<Path> files, Path folder) {
    int chunks = (files.size() + CHUNK - 1) / CHUNK;
    return IntStream.range(0, chunks)
        .parallel()
        .mapToObj(
            chunk -> files.subList(chunk * CHUNK, Math.min(files.size(), (chunk + 1) * CHUNK)))
        .map(part -> checkInTurn(part, folder))
        .flatMap(List::stream)
        .toList();
  }

  private List<Result> checkInTurn(List<Path> files, Path folder) {
    Opening opening = new Opening();
    return files.stream().map(file -> checkOne(opening, file, folder)).toList();
  }

  private Result checkOne(Opening opening, Path file, Path folder) {
    try {
      return new Result(check(opening.open(file, folder)), null);
    } catch (ProfileProblem e) {
      return new Result(null, e.getMessage());
    }
  }
}
