package dev.gantrywright.record;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import java.nio.charset.StandardCharsets;

/**
 * A profile at one time: its text in the order of the file format, and the SHA-256 of that text. So
 * a profile that was only laid out anew is in the same state.
 *
 * @param sha256 lower-case hexadecimal
 * @param text with its line ends
 */
public record ProfileState(String sha256, String text) {
  /** The state of a profile, saved or not. */
  public static ProfileState of(PrinterProfile profile) {
    byte[] bytes = ProfileStore.bytes(profile);
    return new ProfileState(Sha256.of(bytes), new String(bytes, StandardCharsets.UTF_8));
  }

  /**
   * The profile again.
   *
   * @throws ProfileProblem where a newer version wrote what this one cannot read
   */
  public PrinterProfile profile() throws ProfileProblem {
    return ProfileStore.parse(
        "state " + sha256.substring(0, Event.ID_DIGITS), text.getBytes(StandardCharsets.UTF_8));
  }
}
