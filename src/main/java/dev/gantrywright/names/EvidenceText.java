package dev.gantrywright.names;

import dev.gantrywright.names.LearnableField.Term;
import java.util.ArrayList;
import java.util.List;

/** Says in words why a match was made. */
final class EvidenceText {
  private final TradeWords trade;
  private final Axes axes;

  EvidenceText(WordReader words) {
    this.trade = words.trade();
    this.axes = words.axes();
  }

  List<String> of(Match match) {
    Candidate candidate = match.candidate();
    List<String> why = new ArrayList<>();
    List<String> named = new ArrayList<>();
    List<String> beside = new ArrayList<>();
    for (Term term : match.row().field().terms()) {
      for (String concept : term.any()) {
        int number = trade.concept(concept);
        if (candidate.own()[number] >= 0.45) {
          named.add(shown(concept));
        } else if (candidate.all()[number] >= 0.2) {
          beside.add(shown(concept));
        }
      }
    }
    place(match, named);
    if (!named.isEmpty()) {
      why.add("name says " + String.join(", ", distinct(named)));
    }
    if (!beside.isEmpty()) {
      why.add("comment, heading or file says " + String.join(", ", distinct(beside)));
    }
    why.add(value(candidate));
    if (!candidate.unit().isEmpty()) {
      why.add("unit " + candidate.unit());
    }
    if (candidate.dead()) {
      why.add("not seen by the compiler as the folder stands");
    }
    return why;
  }

  private static List<String> distinct(List<String> words) {
    return words.stream().distinct().toList();
  }

  /** A concept as a reader of English calls it. */
  private static String shown(String concept) {
    return switch (concept) {
      case "permm" -> "per mm";
      case "perrev" -> "per turn";
      case "tmin" -> "lowest temperature";
      case "tmax" -> "highest temperature";
      case "thermo" -> "temperature sensor";
      case "accel" -> "acceleration";
      case "stop" -> "endstop";
      case "pullup" -> "pull-up";
      case "databits" -> "data bits";
      case "geardia" -> "wheel diameter";
      default -> concept;
    };
  }

  private void place(Match match, List<String> named) {
    FieldRow row = match.row();
    if (row.axis() != 0 && !row.shared()) {
      named.add(axes.name(row.axis()));
    }
    if (row.end() > 0) {
      named.add(row.end() == Dims.LOWER ? "lower end" : "upper end");
    }
    if (row.heater() > 0) {
      named.add(Dims.HEATERS.get(row.heater() - 1));
    }
  }

  private static String value(Candidate candidate) {
    if (candidate.bareSwitch()) {
      return candidate.on() ? "a switch, on" : "a switch, off";
    }
    String part =
        candidate.element() == null
            ? ""
            : "part " + candidate.element() + " of " + candidate.count() + ", ";
    return part + "value " + candidate.text().strip();
  }
}
