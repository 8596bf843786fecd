package dev.gantrywright.app.fleet;

import dev.gantrywright.app.ManyProofs.Board;
import dev.gantrywright.app.record.FirmwareIdentity;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Where the machines of a fleet are reached: a text file, on each line a profile and a port. Blank
 * lines, and what follows a {@code #} at the start of a line, are passed over.
 */
public final class PortList {
  private PortList() {}

  /**
   * One line.
   *
   * @param file the profile
   */
  public record Entry(Path file, Board board) {}

  /** The list is wrong; the message is the one line to show. */
  public static final class NoList extends Exception {
    private static final long serialVersionUID = 1L;

    NoList(String line, Throwable cause) {
      super(line, cause);
    }
  }

  /**
   * Reads the list.
   *
   * @param folder what the profiles' names are relative to
   */
  public static List<Entry> read(Path list, Path folder) throws NoList {
    List<Entry> entries = new ArrayList<>();
    Map<Path, PrinterProfile> known = new HashMap<>();
    int number = 0;
    for (String line : lines(list)) {
      number++;
      if (!line.isBlank() && !line.startsWith("#")) {
        entries.add(entry(list + ":" + number, line.strip(), folder, known));
      }
    }
    if (entries.isEmpty()) {
      throw new NoList(list + ": names no machine; write a profile and a port on each line", null);
    }
    return entries;
  }

  private static List<String> lines(Path list) throws NoList {
    try {
      return Files.readAllLines(list);
    } catch (IOException unreadable) {
      String why =
          unreadable instanceof NoSuchFileException ? "no such file" : unreadable.getMessage();
      throw new NoList(list + ": cannot be read (" + why + ")", unreadable);
    }
  }

  private static Entry entry(
      String place, String line, Path folder, Map<Path, PrinterProfile> known) throws NoList {
    String[] words = line.split("\\s+(?=\\S+$)");
    if (words.length != 2) {
      throw new NoList(
          place + ": write a profile and a port, such as heron.printer.json /dev/ttyUSB0", null);
    }
    try {
      Path file = folder.resolve(words[0]).normalize();
      PrinterProfile profile = known.get(file);
      if (profile == null) {
        profile = ProfileStore.read(file);
        known.put(file, profile);
      }
      PortAddress port = PortAddress.parse(words[1]);
      return new Entry(
          file,
          new Board(
              words[0] + " on " + words[1],
              profile,
              port,
              Set.of(),
              Map.of(),
              FirmwareIdentity.expected(profile, file)));
    } catch (ProfileProblem | LinkException wrong) {
      throw new NoList(place + ": " + wrong.getMessage(), wrong);
    }
  }
}
