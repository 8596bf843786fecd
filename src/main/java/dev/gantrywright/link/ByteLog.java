package dev.gantrywright.link;

import dev.gantrywright.link.LogEntry.Direction;
import java.io.BufferedWriter;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Every byte of a session: the newest in memory, all of them in a file that goes when the log is
 * closed, unless it was saved. Safe for several threads.
 */
public final class ByteLog implements AutoCloseable {
  private final Path file;
  private final DataOutputStream out;
  private final long start;
  private final int ringBytes;
  private final Deque<LogEntry> ring = new ArrayDeque<>();
  private int inRing;
  private long entries;
  private long bytes;
  private String trouble = "";

  private ByteLog(Path file, DataOutputStream out, int ringBytes, long start) {
    this.file = file;
    this.out = out;
    this.ringBytes = ringBytes;
    this.start = start;
  }

  /**
   * Begins a log.
   *
   * @param folder where its file lies
   * @param ringBytes how many bytes stay in memory
   * @param start the monotonic clock now
   */
  public static ByteLog in(Path folder, int ringBytes, long start) throws IOException {
    Path file = Files.createTempFile(folder, "line-", ".log");
    return new ByteLog(
        file,
        new DataOutputStream(
            new java.io.BufferedOutputStream(Files.newOutputStream(file), 1 << 16)),
        ringBytes,
        start);
  }

  /** A log that only keeps the newest bytes, for where no file can be written. */
  public static ByteLog inMemory(int ringBytes, long start) {
    return new ByteLog(null, null, ringBytes, start);
  }

  /** Adds what went over the line. */
  public synchronized void record(Direction direction, byte[] data, int count, long nanos) {
    LogEntry entry = new LogEntry(direction, nanos - start, java.util.Arrays.copyOf(data, count));
    ring.addLast(entry);
    // 48 bytes stand for the entry itself, so that many short ones are bounded too (estimate).
    inRing += count + 48;
    while (inRing > ringBytes && ring.size() > 1) {
      inRing -= ring.removeFirst().bytes().length + 48;
    }
    entries++;
    bytes += count;
    if (out != null && trouble.isEmpty()) {
      try {
        out.writeByte(direction.ordinal());
        out.writeLong(entry.nanos());
        out.writeInt(count);
        out.write(entry.bytes());
      } catch (IOException e) {
        trouble = "the log file is no longer written: " + e.getMessage();
      }
    }
  }

  /** The newest entries, oldest first. */
  public synchronized List<LogEntry> newest() {
    return List.copyOf(ring);
  }

  public synchronized long entries() {
    return entries;
  }

  public synchronized long bytes() {
    return bytes;
  }

  /** Why the file is no longer written, such as a full disk. */
  public synchronized Optional<String> trouble() {
    return trouble.isEmpty() ? Optional.empty() : Optional.of(trouble);
  }

  /**
   * The first entries whose text holds the words, in any case; a line cut by a read is put
   * together.
   */
  public List<LogEntry> search(String words, int most) throws IOException {
    String wanted = words.toLowerCase(java.util.Locale.ROOT);
    List<LogEntry> found = new ArrayList<>();
    LineAssembly assembly =
        new LineAssembly(
            entry -> {
              if (found.size() < most
                  && new String(entry.bytes(), java.nio.charset.StandardCharsets.ISO_8859_1)
                      .toLowerCase(java.util.Locale.ROOT)
                      .contains(wanted)) {
                found.add(entry);
              }
            });
    each(assembly::add);
    assembly.end();
    return found;
  }

  /** Writes all entries as text, one a line. */
  public void save(Path target) throws IOException {
    try (BufferedWriter writer = Files.newBufferedWriter(target)) {
      List<IOException> failures = new ArrayList<>();
      each(
          entry -> {
            try {
              writer.write(entry.text());
              writer.write('\n');
            } catch (IOException e) {
              failures.add(e);
            }
          });
      if (!failures.isEmpty()) {
        throw failures.get(0);
      }
    }
  }

  private void each(Consumer<LogEntry> sink) throws IOException {
    if (out == null || trouble().isPresent()) {
      newest().forEach(sink);
      return;
    }
    synchronized (this) {
      out.flush();
    }
    try (DataInputStream in =
        new DataInputStream(new java.io.BufferedInputStream(Files.newInputStream(file), 1 << 16))) {
      while (true) {
        int direction = in.read();
        if (direction < 0) {
          return;
        }
        long nanos = in.readLong();
        byte[] data = new byte[in.readInt()];
        in.readFully(data);
        sink.accept(new LogEntry(Direction.values()[direction], nanos, data));
      }
    } catch (EOFException e) {
      // The writer is in the middle of an entry: what stands before it is complete.
      return;
    }
  }

  @Override
  public synchronized void close() throws IOException {
    if (out != null) {
      try {
        out.close();
      } finally {
        Files.deleteIfExists(file);
      }
    }
  }
}
