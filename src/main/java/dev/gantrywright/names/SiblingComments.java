package dev.gantrywright.names;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Lends the comment of one setting to its siblings that have none of their own. */
final class SiblingComments {
  private static final double LENT = 0.45;

  private final TradeWords trade;

  SiblingComments(TradeWords trade) {
    this.trade = trade;
  }

  /** Hears a text: the strength with which it speaks of each concept. */
  interface Hearing {
    float[] heard(String text);
  }

  List<Candidate> lend(List<Candidate> candidates, Hearing hearing) {
    Map<String, Candidate> lenders = new HashMap<>();
    for (Candidate candidate : candidates) {
      if (!candidate.comment().isBlank()) {
        lenders.putIfAbsent(candidate.template(), candidate);
      }
    }
    List<Candidate> out = new ArrayList<>(candidates.size());
    for (Candidate candidate : candidates) {
      Candidate lender = lenders.get(candidate.template());
      boolean lends = candidate.comment().isBlank() && lender != null;
      out.add(lends ? with(candidate, lender, hearing) : candidate);
    }
    return out;
  }

  private Candidate with(Candidate candidate, Candidate lender, Hearing hearing) {
    float[] all = candidate.all().clone();
    float[] heard = hearing.heard(lender.comment());
    for (int i = 0; i < all.length; i++) {
      if (heard[i] > 0 && !place(trade.name(i))) {
        all[i] = (float) (1 - (1 - all[i]) * (1 - heard[i] * LENT));
      }
    }
    String unit = candidate.unit().isEmpty() ? lender.unit() : candidate.unit();
    return new Candidate(
        candidate.macro(),
        candidate.element(),
        candidate.count(),
        candidate.file(),
        candidate.line(),
        candidate.section(),
        candidate.setting(),
        candidate.text(),
        candidate.words(),
        candidate.own(),
        all,
        candidate.dims(),
        unit,
        lender.comment(),
        candidate.template());
  }

  /** What tells siblings apart is not lent. */
  private static boolean place(String concept) {
    return switch (concept) {
      case "min", "max", "hotend", "bed", "chamber" -> true;
      default -> false;
    };
  }
}
