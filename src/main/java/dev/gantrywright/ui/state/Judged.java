package dev.gantrywright.ui.state;

import java.util.List;

/**
 * What was found in one revision of a printer.
 *
 * @param revision of the profile
 * @param remarks what does not fit, worst first
 */
public record Judged(long revision, List<Remark> remarks) {
  public Judged {
    remarks = List.copyOf(remarks);
  }

  static Judged nothing() {
    return new Judged(-1, List.of());
  }
}
