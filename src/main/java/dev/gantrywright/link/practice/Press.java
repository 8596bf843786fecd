package dev.gantrywright.link.practice;

import java.util.ArrayList;
import java.util.List;

/**
 * A touch that the practice hand makes.
 *
 * @param name axis end
 * @param fromSeconds after the board was built
 * @param untilSeconds after the board was built
 */
public record Press(String name, double fromSeconds, double untilSeconds) {
  /** One touch after the other, over and over. */
  public static List<Press> inTurn(
      List<String> names, double pauseSeconds, double holdSeconds, int rounds) {
    List<Press> presses = new ArrayList<>();
    double at = pauseSeconds;
    for (int round = 0; round < rounds; round++) {
      for (String name : names) {
        presses.add(new Press(name, at, at + holdSeconds));
        at += holdSeconds + pauseSeconds;
      }
    }
    return List.copyOf(presses);
  }
}
