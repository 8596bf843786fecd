package dev.gantrywright.header;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Why a setting is live, dead or open: the conditions above it from the outermost to the innermost,
 * through the files that include its file, and what becomes of its name afterwards.
 *
 * @param setting the setting
 * @param chain the conditions; empty when none stands above it
 * @param after one clause on a later definition or removal that takes its effect away, or empty
 */
public record Why(Setting setting, List<Condition> chain, String after) {
  /** How a condition came out; {@code SKIPPED} when an earlier branch or an outer one decided. */
  public enum Outcome {
    TRUE,
    FALSE,
    OPEN,
    SKIPPED
  }

  /**
   * One condition of the chain.
   *
   * @param file the file that it stands in
   * @param line counted from 1
   * @param text the directive without its comment, cut where it is very long
   * @param outcome how it came out
   * @param because place and value of the names that it looked at, or what is wrong with it; may be
   *     empty
   */
  public record Condition(String file, int line, String text, Outcome outcome, String because) {
    /** The condition as one clause. */
    public String words() {
      String came =
          switch (outcome) {
            case TRUE -> "is true";
            case FALSE -> "is false";
            case OPEN -> "is open";
            case SKIPPED -> "is not reached";
          };
      String start = text + " (" + file + ":" + line + ") " + came;
      return because.isEmpty() ? start : start + ": " + because;
    }
  }

  public Why {
    chain = List.copyOf(chain);
  }

  /** The account of a setting of the folder. */
  public static Why of(FirmwareFolder folder, Setting setting) {
    HeaderDocument document =
        folder
            .header(setting.file())
            .orElseThrow(() -> new IllegalArgumentException(setting.file() + " is not there"));
    int row = document.rowAt(setting.nameSpan().start());
    List<Condition> chain =
        document.chain(row, Reasons.MOST_NESTED).stream().map(Reasons.Told::condition).toList();
    return new Why(setting, chain, after(folder, setting));
  }

  private static String after(FirmwareFolder folder, Setting setting) {
    if (!setting.live()) {
      return "";
    }
    Optional<Setting> decides = folder.live(setting.name());
    if (decides.isEmpty()) {
      return "afterwards the name is taken away, or an open condition may change it";
    }
    Setting last = decides.get();
    boolean same = last.file().equals(setting.file()) && last.line() == setting.line();
    return same ? "" : last.file() + ":" + last.line() + " defines it anew and decides";
  }

  /**
   * The account in one sentence. It names the conditions that decide: all of them for a live
   * setting, those that are false or open for any other.
   */
  public String words() {
    StringBuilder out = new StringBuilder(verdict());
    List<String> clauses = new ArrayList<>();
    for (Condition condition : chain) {
      if (decides(condition)) {
        clauses.add(condition.words());
      }
    }
    if (!clauses.isEmpty()) {
      out.append(setting.state() == State.LIVE ? ", since " : ": ");
      out.append(String.join("; ", clauses));
    }
    if (!after.isEmpty()) {
      out.append("; but ").append(after);
    }
    return out.append('.').toString();
  }

  private String verdict() {
    return switch (setting.state()) {
      case LIVE ->
          setting.on()
              ? "The compiler takes this line"
              : "This line is commented out; switched on, the compiler would take it";
      case DEAD -> "The compiler leaves this line out";
      case OPEN -> "Whether the compiler takes this line is open";
    };
  }

  private boolean decides(Condition condition) {
    return switch (setting.state()) {
      case LIVE -> true;
      case OPEN -> condition.outcome() == Outcome.OPEN;
      case DEAD -> condition.outcome() == Outcome.FALSE || onlySkipped();
    };
  }

  /** An {@code #else} behind a branch that was taken is never asked; then that must do. */
  private boolean onlySkipped() {
    for (Condition condition : chain) {
      if (condition.outcome() == Outcome.FALSE) {
        return false;
      }
    }
    return true;
  }
}
