package dev.gantrywright.load;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * A flashing command of the user's own, looked at before it runs.
 *
 * @param words the command with the file put in
 * @param wholeChipErase the word that asks for an erase of everything, where one does
 */
public record FlashCommand(List<String> words, Optional<String> wholeChipErase) {
  /** Stands in a command for the image. */
  public static final String FILE = "{file}";

  /** Read once: the window looks at a command with every key that is typed into it. */
  private static final List<Pattern> ERASE_WORDS = patterns();

  public FlashCommand {
    words = List.copyOf(words);
  }

  /**
   * Puts the image into the command.
   *
   * @throws IllegalArgumentException where the command is empty or has no place for the file
   */
  public static FlashCommand of(List<String> words, Path file) {
    if (words.isEmpty() || words.get(0).isBlank()) {
      throw new IllegalArgumentException("the flashing command is empty; give a program to run");
    }
    if (words.stream().noneMatch(w -> w.contains(FILE))) {
      throw new IllegalArgumentException(
          "the flashing command has no " + FILE + ", so it would not load this image");
    }
    List<String> filled = words.stream().map(w -> w.replace(FILE, file.toString())).toList();
    return new FlashCommand(filled, eraseWord(words));
  }

  /** The cautions that stand before it. */
  public List<Caution> cautions() {
    List<Caution> out = new ArrayList<>(Caution.before(Caution.Act.COMMAND));
    if (wholeChipErase.isPresent()) {
      out.addAll(0, Caution.before(Caution.Act.WHOLE_CHIP_ERASE));
    }
    return out;
  }

  /** What must be typed before it runs; empty where it erases no more than it writes. */
  public Optional<TypedConfirmation> confirmation(String boardName) {
    return wholeChipErase.map(word -> TypedConfirmation.wholeChip(boardName, word));
  }

  /** A word that, in common flashing programs, asks for an erase of the whole chip. */
  private static Optional<String> eraseWord(List<String> words) {
    List<String> all = words.stream().map(w -> w.toLowerCase(Locale.ROOT)).toList();
    for (Pattern pattern : ERASE_WORDS) {
      for (int i = 0; i < all.size(); i++) {
        // A file may be called anything; only what stands in the command itself counts.
        String word = all.get(i).replace(FILE, "");
        if (pattern.matcher(word).matches()) {
          return Optional.of(words.get(i));
        }
      }
    }
    return Optional.empty();
  }

  private static List<Pattern> patterns() {
    try (InputStream in = FlashCommand.class.getResourceAsStream("erase-words.json")) {
      List<Pattern> out = new ArrayList<>();
      for (JsonNode row : JsonMapper.shared().readTree(in.readAllBytes()).get("patterns")) {
        out.add(Pattern.compile(row.asString()));
      }
      return out;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
