package dev.gantrywright.link;

import java.util.List;
import java.util.Map;

/**
 * What we say to a machine and how its answers are read: all of it data, so that any firmware can
 * be served. The defaults stand in {@code dialect.json}; a profile's {@code link} section replaces
 * them.
 *
 * @param endstopQuery asks for the state of all endstops
 * @param identityQuery asks the firmware what it is
 * @param settingsQuery asks for the stored settings
 * @param temperatureQuery asks for temperatures
 * @param stop the emergency stop
 * @param save stores the settings that are in force
 * @param restoreBuild drops the stored settings for those that the firmware was built with
 * @param lineNumberReset starts line numbering anew
 * @param acknowledge words that end a reply; none means that a reply ends with silence
 * @param resend words that ask for a line again, followed by its number
 * @param failure words that begin an error message
 * @param busy words that ask for patience
 * @param restart words that begin the message of a board that has just started
 * @param halted words that confirm a stop
 * @param triggeredWords what a triggered endstop is called
 * @param openWords what an open endstop is called
 * @param settingWords field of an axis (stepsPerMm …) to the words that mark its line in the stored
 *     settings
 * @param settingCommands field of an axis to the command that sets it
 * @param endstopNames reported name to endstop of the profile, where the reader needs telling
 * @param lineNumbers number every line and add the checksum
 * @param replySeconds how long to wait for a reply
 * @param quietSeconds how long silence must last to count as the end of a burst
 * @param longestLine longest line kept, in bytes
 */
public record Dialect(
    String endstopQuery,
    String identityQuery,
    String settingsQuery,
    String temperatureQuery,
    String stop,
    String save,
    String restoreBuild,
    String lineNumberReset,
    List<String> acknowledge,
    List<String> resend,
    List<String> failure,
    List<String> busy,
    List<String> restart,
    List<String> halted,
    List<String> triggeredWords,
    List<String> openWords,
    Map<String, List<String>> settingWords,
    Map<String, String> settingCommands,
    Map<String, String> endstopNames,
    boolean lineNumbers,
    double replySeconds,
    double quietSeconds,
    int longestLine) {
  public Dialect {
    acknowledge = List.copyOf(acknowledge);
    resend = List.copyOf(resend);
    failure = List.copyOf(failure);
    busy = List.copyOf(busy);
    restart = List.copyOf(restart);
    halted = List.copyOf(halted);
    triggeredWords = List.copyOf(triggeredWords);
    openWords = List.copyOf(openWords);
    settingWords = Map.copyOf(settingWords);
    settingCommands = Map.copyOf(settingCommands);
    endstopNames = Map.copyOf(endstopNames);
    requireRange("link.replySeconds", replySeconds, 0.01, 600);
    requireRange("link.quietSeconds", quietSeconds, 0.001, 60);
    requireRange("link.longestLine", longestLine, 16, 1 << 20);
  }

  private static void requireRange(String what, double value, double low, double high) {
    if (!(value >= low && value <= high)) {
      throw new IllegalArgumentException(
          what + " is " + value + "; it must lie between " + low + " and " + high);
    }
  }

  long replyNanos() {
    return (long) (replySeconds * 1e9);
  }

  long quietNanos() {
    return (long) (quietSeconds * 1e9);
  }
}
