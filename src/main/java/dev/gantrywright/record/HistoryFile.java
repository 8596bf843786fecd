package dev.gantrywright.record;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * A printer's history: a text file beside its profile, one JSON object a line, that only grows.
 *
 * <p>An event is written in one piece and flushed to the disk before {@link #append} returns. What
 * a crash leaves of a line is moved to a file beside it by the next append, never deleted. Several
 * processes may append: each holds the file's lock while it does.
 */
public final class HistoryFile {
  /** What a history's name ends in. */
  public static final String ENDING = ".history.jsonl";

  private static final String PROFILE_ENDING = ".printer.json";
  private static final Duration PATIENCE = Duration.ofSeconds(10);
  private static final int LOOK_MILLIS = 5;
  private static final int LARGEST_BYTES = 256 << 20;

  private final Path file;
  private final int piece;
  private final int largest;

  public HistoryFile(Path file) {
    this(file, Integer.MAX_VALUE);
  }

  /**
   * @param piece most bytes that are written at once; small ones let a test be killed between them
   */
  HistoryFile(Path file, int piece) {
    this(file, piece, LARGEST_BYTES);
  }

  /**
   * @param largest most bytes that a history may have
   */
  HistoryFile(Path file, int piece, int largest) {
    this.file = file;
    this.piece = piece;
    this.largest = largest;
  }

  /** The history of a profile: {@code heron.history.jsonl} beside {@code heron.printer.json}. */
  public static HistoryFile beside(Path profile) {
    String name = profile.getFileName().toString();
    String stem =
        name.endsWith(PROFILE_ENDING)
            ? name.substring(0, name.length() - PROFILE_ENDING.length())
            : name;
    return new HistoryFile(profile.toAbsolutePath().resolveSibling(stem + ENDING));
  }

  public Path file() {
    return file;
  }

  /** Where torn lines are set aside. */
  public Path torn() {
    String name = file.getFileName().toString();
    String stem =
        name.endsWith(ENDING) ? name.substring(0, name.length() - ".jsonl".length()) : name;
    return file.resolveSibling(stem + ".torn");
  }

  /**
   * Reads all of it; an empty timeline where there is no file yet.
   *
   * @throws IOException where the file cannot be read
   */
  public Timeline read() throws IOException {
    int aside = Files.exists(torn()) ? lines(whole(torn())).size() : 0;
    return Files.exists(file)
        ? timeline(whole(file), aside)
        : new Timeline(List.of(), List.of(), aside);
  }

  /**
   * Adds an event; when this returns it is on the disk. The profile's text goes with it unless the
   * file holds that state already.
   *
   * @return the event as it now stands in the file
   * @throws IOException where the file cannot be written or stays locked; the events before are
   *     untouched
   */
  public Event append(Draft draft) throws IOException {
    try {
      return appendLocked(draft);
    } catch (FileSystemException failed) {
      throw new IOException(file + ": cannot be written: " + reason(failed), failed);
    }
  }

  private static String reason(FileSystemException failed) {
    if (failed instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (failed instanceof NoSuchFileException) {
      return "its folder is not there";
    }
    return failed.getReason() == null ? failed.getClass().getSimpleName() : failed.getReason();
  }

  private Event appendLocked(Draft draft) throws IOException {
    boolean fresh = !Files.exists(file);
    if (!fresh && !Files.isRegularFile(file)) {
      throw new IOException(file + ": is no file, so it is no history; move it away");
    }
    try (FileChannel channel =
            FileChannel.open(
                file,
                StandardOpenOption.CREATE,
                StandardOpenOption.READ,
                StandardOpenOption.WRITE);
        FileLock lock = lock(channel)) {
      byte[] before = all(channel);
      int sound = setTornAside(channel, before);
      Timeline timeline = timeline(Arrays.copyOf(before, sound), 0);
      byte[] line = EventLine.bytes(draft, !timeline.holds(draft.state().sha256()));
      write(channel, Arrays.copyOf(line, line.length + 1), line.length, channel.size());
      if (fresh) {
        flushFolder();
      }
      int number = timeline.events().isEmpty() ? 1 : timeline.events().size() + 1;
      return lock.isValid() ? EventLine.read(number, line) : null;
    } catch (EventLine.NoEvent impossible) {
      throw new IllegalStateException(file + ": wrote what cannot be read", impossible);
    }
  }

  private FileLock lock(FileChannel channel) throws IOException {
    long end = System.nanoTime() + PATIENCE.toNanos();
    while (true) {
      FileLock lock = tryLock(channel);
      if (lock != null) {
        return lock;
      }
      if (System.nanoTime() - end > 0) {
        throw new IOException(file + ": another program holds it; close that and try again");
      }
      try {
        Thread.sleep(LOOK_MILLIS);
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
        throw new IOException(file + ": interrupted while waiting for it", stopped);
      }
    }
  }

  /** Null while another process, or another thread of this one, holds it. */
  private static FileLock tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock();
    } catch (OverlappingFileLockException anotherThread) {
      return null;
    }
  }

  /**
   * Ends a last line that lacks only its line feed; moves one that is no whole event aside.
   *
   * @return how many bytes of the content are sound
   */
  private int setTornAside(FileChannel channel, byte[] content) throws IOException {
    int start = lastLine(content);
    if (start == content.length) {
      return start;
    }
    byte[] tail = Arrays.copyOfRange(content, start, content.length);
    if (event(1, tail).isPresent()) {
      write(channel, new byte[1], 0, content.length);
      return content.length;
    }
    try (FileChannel aside =
        FileChannel.open(torn(), StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
      write(aside, Arrays.copyOf(tail, tail.length + 1), tail.length, aside.size());
    }
    flushFolder();
    channel.truncate(start);
    channel.force(true);
    return start;
  }

  /** Writes the bytes with a line feed put at one place, and flushes them. */
  private void write(FileChannel channel, byte[] bytes, int lineFeed, long at) throws IOException {
    bytes[lineFeed] = '\n';
    int done = 0;
    while (done < bytes.length) {
      ByteBuffer next = ByteBuffer.wrap(bytes, done, Math.min(piece, bytes.length - done));
      done += channel.write(next, at + done);
    }
    channel.force(true);
  }

  private byte[] whole(Path from) throws IOException {
    if (!Files.isRegularFile(from)) {
      throw new IOException(from + ": is no file, so it is no history; move it away");
    }
    try (InputStream in = Files.newInputStream(from)) {
      byte[] bytes = in.readNBytes(largest + 1);
      fits(from, bytes.length);
      return bytes;
    }
  }

  private void fits(Path from, long size) throws IOException {
    if (size > largest) {
      throw new IOException(
          from + ": is larger than " + (largest >> 20) + " MiB; move it away to begin a new one");
    }
  }

  private byte[] all(FileChannel channel) throws IOException {
    fits(file, channel.size());
    ByteBuffer bytes = ByteBuffer.allocate(Math.toIntExact(channel.size()));
    while (bytes.hasRemaining() && channel.read(bytes, bytes.position()) >= 0) {
      continue;
    }
    return Arrays.copyOf(bytes.array(), bytes.position());
  }

  private static Timeline timeline(byte[] content, int aside) {
    List<Event> events = new ArrayList<>();
    List<UnreadLine> unread = new ArrayList<>();
    List<byte[]> lines = lines(content);
    boolean open = lastLine(content) < content.length;
    for (int i = 0; i < lines.size(); i++) {
      try {
        events.add(EventLine.read(events.size() + 1, lines.get(i)));
      } catch (EventLine.NoEvent why) {
        boolean last = i == lines.size() - 1;
        unread.add(new UnreadLine(i + 1, last && open, why.getMessage()));
      }
    }
    return new Timeline(events, unread, aside);
  }

  private static Optional<Event> event(int number, byte[] line) {
    try {
      return Optional.of(EventLine.read(number, line));
    } catch (EventLine.NoEvent none) {
      return Optional.empty();
    }
  }

  /** Where the last line starts that has no end; the length where there is none. */
  private static int lastLine(byte[] content) {
    int at = content.length;
    while (at > 0 && content[at - 1] != '\n') {
      at--;
    }
    return at;
  }

  /** The lines without their ends; a carriage return that an editor put there goes too. */
  private static List<byte[]> lines(byte[] content) {
    List<byte[]> lines = new ArrayList<>();
    int start = 0;
    for (int at = 0; at <= content.length; at++) {
      if (at == content.length ? at > start : content[at] == '\n') {
        int end = at > start && content[at - 1] == '\r' ? at - 1 : at;
        if (end > start) {
          lines.add(Arrays.copyOfRange(content, start, end));
        }
        start = at + 1;
      }
    }
    return lines;
  }

  /**
   * Folders can be flushed on POSIX systems only; elsewhere the file's own flush is all there is.
   */
  private void flushFolder() {
    try (FileChannel channel =
        FileChannel.open(file.toAbsolutePath().getParent(), StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException notOnThisSystem) {
      return;
    }
  }
}
