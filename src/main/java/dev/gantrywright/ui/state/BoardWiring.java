package dev.gantrywright.ui.state;

import dev.gantrywright.machine.BoardSheet;
import dev.gantrywright.machine.PrinterProfile;
import java.util.List;
import java.util.Optional;

/**
 * What the board connects to what on this machine: from the board sheet where there is one, and
 * from what the profile says of its sockets, inputs and ports.
 *
 * @param name of the board; empty where no sheet is open
 * @param part the microcontroller; empty where nobody states it
 * @param clock of the microcontroller; empty where the sheet does not state it
 * @param sheet whether a board sheet is open
 * @param left driver sockets, serial ports, the card
 * @param right endstop inputs, heater outputs, sensor inputs, the supply
 * @param troubles pins with two jobs, a line each
 */
public record BoardWiring(
    String name,
    String part,
    String clock,
    boolean sheet,
    List<Row> left,
    List<Row> right,
    List<String> troubles) {

  /** What a row of connectors is. */
  public enum Kind {
    DRIVER,
    PORT,
    CARD,
    INPUT,
    OUTPUT,
    SENSOR,
    SUPPLY
  }

  /**
   * One connector.
   *
   * @param label as printed on the board; empty where nobody states it
   * @param detail what stands beside it: driver IC, index of the port
   * @param pins of the microcontroller in the order of the group's heads; empty where not stated
   * @param plugged what this machine has plugged in, in words; empty where nothing
   * @param opens id of the part that a click opens; empty where none
   * @param onBoard whether the sheet has it, so that the rest is not what the profile alone says
   * @param reached whether it reaches a connector
   * @param twice pins of it that have another job too
   */
  public record Row(
      Kind kind,
      String label,
      String detail,
      List<String> pins,
      String plugged,
      String opens,
      boolean onBoard,
      boolean reached,
      List<String> twice) {

    /** Everything about it in one line. */
    public String words() {
      String what = Texts.of("board.kind." + kind.name().toLowerCase(java.util.Locale.ROOT));
      String name = label.isEmpty() ? Texts.of("board.unknown") : label;
      String to = plugged.isEmpty() ? Texts.of(reached ? "board.free" : "board.unrouted") : plugged;
      String given = String.join(" ", pins.stream().filter(pin -> !pin.isEmpty()).toList());
      return what
          + " "
          + name
          + (detail.isEmpty() ? "" : " " + detail)
          + (given.isEmpty() ? "" : ", " + given)
          + ": "
          + to
          + (onBoard ? "" : ", " + Texts.of("board.notOnSheet"));
    }
  }

  public BoardWiring {
    left = List.copyOf(left);
    right = List.copyOf(right);
    troubles = List.copyOf(troubles);
  }

  /**
   * @param sheet the board that the printer names
   */
  public static BoardWiring of(PrinterProfile profile, Optional<BoardSheet> sheet) {
    return new BoardRows(profile, sheet).wiring();
  }

  /** All rows, the left ones first. */
  public List<Row> rows() {
    return java.util.stream.Stream.concat(left.stream(), right.stream()).toList();
  }

  /** The whole picture in words. */
  public String words() {
    String head =
        Texts.of(
            sheet ? "board.words" : "board.words.noSheet",
            name,
            part.isEmpty() ? Texts.of("board.unknown") : part,
            clock);
    return head
        + " "
        + String.join("; ", rows().stream().map(Row::words).toList())
        + (troubles.isEmpty() ? "" : ". " + String.join("; ", troubles));
  }
}
