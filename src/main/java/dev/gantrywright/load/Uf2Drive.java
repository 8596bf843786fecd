package dev.gantrywright.load;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/**
 * A board that shows itself as a drive and takes UF2 files.
 *
 * <p>Source: UF2 specification, "Files exposed by bootloaders".
 *
 * @param loader first line of its description
 * @param model the board, for people
 * @param boardId the board, for programs: processor, board and revision joined by hyphens
 */
public record Uf2Drive(String loader, String model, String boardId) {
  private static final String DESCRIPTION = "INFO_UF2.TXT";
  private static final int LONGEST = 4096;

  /** The description, where the drive carries one. */
  public static Optional<Uf2Drive> on(Card card) throws IOException {
    Optional<Card.Entry> info = card.find(DESCRIPTION);
    if (info.isEmpty()) {
      return Optional.empty();
    }
    try (InputStream in = card.read(info.get().name())) {
      return Optional.of(parse(new String(in.readNBytes(LONGEST), StandardCharsets.UTF_8)));
    }
  }

  static Uf2Drive parse(String text) {
    String model = "";
    String id = "";
    for (String line : text.split("\\R")) {
      if (line.startsWith("Model:")) {
        model = line.substring(6).strip();
      } else if (line.startsWith("Board-ID:")) {
        id = line.substring(9).strip();
      }
    }
    return new Uf2Drive(text.lines().findFirst().orElse("").strip(), model, id);
  }
}
