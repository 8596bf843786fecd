package dev.gantrywright.link;

import dev.gantrywright.link.LogEntry.Direction;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * Every byte of a session: the newest in memory, all of them in a file that goes when the log is
 * closed; {@link SavedLog} keeps them. Safe for several threads; none waits to ask how much there
 * is.
 */
public final class ByteLog implements AutoCloseable {
  private final LogFile file;
  private final long largest;
  private final long start;
  private final int ringBytes;
  private final Deque<LogEntry> ring = new ArrayDeque<>();
  private int inRing;
  private long filed;
  private boolean filing;
  private boolean closed;
  private volatile long entries;
  private volatile long bytes;
  private volatile String trouble = "";

  private ByteLog(LogFile file, long largest, int ringBytes, long start) {
    this.file = file;
    this.largest = largest;
    this.filing = file != null;
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
    return in(folder, LogFile.LARGEST, ringBytes, start);
  }

  /**
   * The same with another bound.
   *
   * @param largest bytes of the file, about
   */
  static ByteLog in(Path folder, long largest, int ringBytes, long start) throws IOException {
    return new ByteLog(LogFile.in(folder), largest, ringBytes, start);
  }

  /** A log that only keeps the newest bytes. */
  public static ByteLog inMemory(int ringBytes, long start) {
    return new ByteLog(null, 0, ringBytes, start);
  }

  /** The same, for where a file was wanted and cannot be had. */
  public static ByteLog inMemory(int ringBytes, long start, String trouble) {
    ByteLog log = inMemory(ringBytes, start);
    log.trouble = trouble;
    return log;
  }

  /** Adds what went over the line. */
  public synchronized void record(Direction direction, byte[] data, int count, long nanos) {
    LogEntry entry = new LogEntry(direction, nanos - start, Arrays.copyOf(data, count));
    ring.addLast(entry);
    // 48 bytes stand for the entry itself, so that many short ones are bounded too (estimate).
    inRing += count + 48;
    while (inRing > ringBytes && ring.size() > 1) {
      inRing -= ring.removeFirst().bytes().length + 48;
    }
    if (filing) {
      file(entry);
    }
    bytes += count;
    entries++;
  }

  private void file(LogEntry entry) {
    if (file.size() >= largest) {
      filing = false;
      trouble =
          "the log's file holds "
              + (largest >> 20)
              + " MiB and is full: of what comes now only the newest is kept";
      return;
    }
    try {
      file.add(entry);
      filed++;
    } catch (IOException e) {
      broken(e);
    }
  }

  private void broken(IOException why) {
    filing = false;
    filed = file.entries();
    trouble = "the log's file is no longer written: " + why.getMessage();
  }

  /** The entries in memory, oldest first. */
  public synchronized List<LogEntry> newest() {
    return List.copyOf(ring);
  }

  /** Of the entries in memory the newest that hold more line ends than asked for, or all. */
  public synchronized List<LogEntry> newest(int lineEnds) {
    List<LogEntry> newest = new ArrayList<>();
    int ends = 0;
    for (Iterator<LogEntry> back = ring.descendingIterator();
        back.hasNext() && ends <= lineEnds; ) {
      LogEntry entry = back.next();
      newest.add(entry);
      for (byte b : entry.bytes()) {
        ends += b == '\n' ? 1 : 0;
      }
    }
    Collections.reverse(newest);
    return newest;
  }

  /** How many entries there have been. */
  public long entries() {
    return entries;
  }

  public long bytes() {
    return bytes;
  }

  /** Why not everything is kept, such as a full disk. */
  public Optional<String> trouble() {
    return trouble.isEmpty() ? Optional.empty() : Optional.of(trouble);
  }

  /** Begins to read the log from its first entry. */
  public LogReading reading() {
    return new LogReading(this);
  }

  /**
   * Where the next entries are to be had.
   *
   * @param fileEnd how far the file may be read; 0 when they are not in the file
   * @param inMemory the entries, where they are not in the file
   * @param first the number of the first of these
   */
  record Place(long fileEnd, List<LogEntry> inMemory, long first) {}

  synchronized Place from(long number) {
    if (closed) {
      return new Place(0, List.of(), number);
    }
    if (number < filed) {
      try {
        file.flush();
      } catch (IOException e) {
        broken(e);
      }
    }
    if (number < filed) {
      return new Place(file.written(), List.of(), number);
    }
    long first = Math.max(number, entries - ring.size());
    long skipped = first - (entries - ring.size());
    return new Place(0, ring.stream().skip(skipped).toList(), first);
  }

  long readFile(long from, long to, Consumer<LogEntry> sink) throws IOException {
    return file.read(from, to, sink);
  }

  @Override
  public synchronized void close() throws IOException {
    closed = true;
    filing = false;
    if (file != null) {
      file.close();
    }
  }
}
