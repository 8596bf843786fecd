package dev.gantrywright.load;

import java.io.IOException;
import java.io.InputStream;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** A card or drive as the copy sees it: one flat folder. */
public interface Card {
  /**
   * A file on it.
   *
   * @param written as the file system says; cards often have a wrong clock
   */
  record Entry(String name, long bytes, Instant written) {}

  /** Where it is, for messages. */
  String shown();

  /** Bytes that still fit. */
  long freeBytes() throws IOException;

  /** Its files; folders, links and devices left out. */
  List<Entry> list() throws IOException;

  /** Writes a new file, or over an old one, and returns once the bytes have left the computer. */
  void write(String name, byte[] bytes) throws IOException;

  /** Makes the next read come from the card itself, where the system allows it. */
  boolean forgetCached(String name);

  InputStream read(String name) throws IOException;

  /** Gives a file its final name in one step, in place of what bore it. */
  void rename(String from, String to) throws IOException;

  void delete(String name) throws IOException;

  /** The entry of that name, in any case. */
  default Optional<Entry> find(String name) throws IOException {
    return list().stream().filter(e -> e.name().equalsIgnoreCase(name)).findFirst();
  }
}
