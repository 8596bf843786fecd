package dev.gantrywright.machine;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import tools.jackson.databind.node.ObjectNode;

/** Reads and writes printer profiles, {@code *.printer.json}. */
public final class ProfileStore {
  private ProfileStore() {}

  /**
   * Reads a profile.
   *
   * @throws ProfileProblem names file, line, column and key
   */
  public static PrinterProfile read(Path file) throws ProfileProblem {
    return parse(file.toString(), JsonStore.bytes(file));
  }

  /** The profile in a text; {@code name} stands for the file in messages. */
  public static PrinterProfile parse(String name, byte[] json) throws ProfileProblem {
    Optional<PrinterProfile> quick = QuickReader.profile(json);
    return quick.isPresent() ? quick.get() : parseWithCare(name, json);
  }

  /** The same by way of a tree, which knows what is wrong and where. */
  static PrinterProfile parseWithCare(String name, byte[] json) throws ProfileProblem {
    ObjectNode tree = JsonStore.tree(name, json);
    JsonStore.refuseOther(name, tree, Shape.PROFILE, Shape.SHEET);
    PrinterProfile profile = JsonStore.bind(name, json, tree, PrinterProfile.class);
    Ranges.Outside outside = Ranges.first("", tree);
    if (outside != null) {
      Located.Place place = Located.of(json).at(outside.path());
      throw new ProfileProblem(name, place.line(), place.column(), outside.path(), outside.text());
    }
    return profile;
  }

  /** The profile as it stands in a file: one value a line, keys in the order of the format. */
  public static byte[] bytes(PrinterProfile profile) {
    return TreeText.bytes(ProfileValues.tree(profile));
  }

  /**
   * Saves the profile whole or not at all; the version before stays beside it, {@code
   * NAME.previous}.
   */
  public static void save(PrinterProfile profile, Path file) throws IOException {
    AtomicSave.write(file, bytes(profile));
  }
}
