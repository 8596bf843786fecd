package dev.gantrywright.machine;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/** Reads and writes board sheets, {@code *.board.json}. */
public final class BoardStore {
  private BoardStore() {}

  /**
   * Reads a board sheet.
   *
   * @throws ProfileProblem names file, line, column and key
   */
  public static BoardSheet read(Path file) throws ProfileProblem {
    return parse(file.toString(), JsonStore.bytes(file));
  }

  /** The board sheet in a text; {@code name} stands for the file in messages. */
  public static BoardSheet parse(String name, byte[] json) throws ProfileProblem {
    Optional<BoardSheet> quick = QuickReader.sheet(json);
    return quick.isPresent() ? quick.get() : parseWithCare(name, json);
  }

  /** The same by way of a tree, which knows what is wrong and where. */
  static BoardSheet parseWithCare(String name, byte[] json) throws ProfileProblem {
    ObjectNode tree = JsonStore.tree(name, json);
    JsonStore.refuseOther(name, tree, Shape.SHEET, Shape.PROFILE);
    return JsonStore.bind(name, json, tree, BoardSheet.class);
  }

  /** The sheet as it stands in a file. */
  public static byte[] bytes(BoardSheet sheet) {
    return TreeText.bytes(TreeText.pruned(ProfileFormat.MAPPER.valueToTree(sheet)));
  }

  /** Saves the sheet whole or not at all, see {@link ProfileStore#save}. */
  public static void save(BoardSheet sheet, Path file) throws IOException {
    AtomicSave.write(file, bytes(sheet));
  }
}
