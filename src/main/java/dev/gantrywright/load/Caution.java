package dev.gantrywright.load;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A caution that stands where the hand is about to act.
 *
 * @param signal the word of ANSI Z535: DANGER, WARNING, CAUTION or NOTICE
 * @param hazard what can happen
 * @param avoid how to avoid it
 * @param who may do it
 */
public record Caution(String signal, String hazard, String avoid, String who) {
  /** What the user is about to do. */
  public enum Act {
    CARD,
    USB_DRIVE,
    COMMAND,
    WHOLE_CHIP_ERASE
  }

  /** The cautions for an act, gravest first. */
  public static List<Caution> before(Act act) {
    try (InputStream in = Caution.class.getResourceAsStream("cautions.json")) {
      List<Caution> out = new ArrayList<>();
      JsonNode rows = JsonMapper.shared().readTree(in.readAllBytes()).get("cautions");
      for (JsonNode row : rows) {
        for (JsonNode name : row.get("before")) {
          if (name.asString().equals(act.name())) {
            out.add(
                new Caution(
                    row.get("signal").asString(),
                    row.get("hazard").asString(),
                    row.get("avoid").asString(),
                    row.get("who").asString()));
          }
        }
      }
      return out;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** All of it in one line. */
  public String line() {
    return (signal + ": " + hazard + " " + avoid + " " + who).strip();
  }
}
