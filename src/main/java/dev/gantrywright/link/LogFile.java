package dev.gantrywright.link;

import dev.gantrywright.link.LogEntry.Direction;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import java.util.function.Consumer;

/**
 * The entries of a log in a file that is gone when it is closed, and where the system allows it
 * also when the program is killed. Written by one thread at a time; read by others while it grows.
 */
final class LogFile implements AutoCloseable {
  /** More is not written, so that a machine that talks for days does not fill the disk. */
  static final long LARGEST = 512L << 20;

  /** Direction, time, count. */
  private static final int HEAD = 1 + Long.BYTES + Integer.BYTES;

  private static final int BLOCK = 1 << 16;
  private static final Direction[] DIRECTIONS = Direction.values();

  private final FileChannel channel;
  private final ByteBuffer pending = ByteBuffer.allocate(BLOCK);
  private long written;
  private long entries;
  private int waiting;

  private LogFile(FileChannel channel) {
    this.channel = channel;
  }

  static LogFile in(Path folder) throws IOException {
    return new LogFile(
        FileChannel.open(
            folder.resolve("line-" + UUID.randomUUID() + ".log"),
            StandardOpenOption.CREATE_NEW,
            StandardOpenOption.READ,
            StandardOpenOption.WRITE,
            StandardOpenOption.DELETE_ON_CLOSE));
  }

  /** How far the file goes, in bytes, with what is still to be written. */
  long size() {
    return written + pending.position();
  }

  /** How far it is written, in bytes; an entry ends there. */
  long written() {
    return written;
  }

  /** How many entries are written. */
  long entries() {
    return entries;
  }

  void add(LogEntry entry) throws IOException {
    byte[] data = entry.bytes();
    if (pending.remaining() < HEAD + data.length) {
      flush();
    }
    boolean large = pending.capacity() < HEAD + data.length;
    ByteBuffer to = large ? ByteBuffer.allocate(HEAD + data.length) : pending;
    to.put((byte) entry.direction().ordinal()).putLong(entry.nanos()).putInt(data.length).put(data);
    waiting++;
    if (large) {
      write(to);
    }
  }

  /** Writes what waits; where that fails, the file ends as it did before. */
  void flush() throws IOException {
    write(pending);
  }

  private void write(ByteBuffer whole) throws IOException {
    whole.flip();
    long end = written;
    while (whole.hasRemaining()) {
      end += channel.write(whole, end);
    }
    whole.clear();
    written = end;
    entries += waiting;
    waiting = 0;
  }

  /**
   * Gives entries to a sink, not many at a time.
   *
   * @param from where an entry begins
   * @param to where an entry ends, behind it; all of it is written
   * @return where the next entry begins
   */
  long read(long from, long to, Consumer<LogEntry> sink) throws IOException {
    ByteBuffer block = filled(from, (int) Math.min(BLOCK, to - from));
    int first = HEAD + block.getInt(HEAD - Integer.BYTES);
    if (first > block.limit()) {
      block = filled(from, first);
    }
    int at = 0;
    while (at + HEAD <= block.limit()) {
      int count = block.getInt(at + HEAD - Integer.BYTES);
      if (at + HEAD + count > block.limit()) {
        break;
      }
      byte[] data = new byte[count];
      block.get(at + HEAD, data);
      sink.accept(new LogEntry(DIRECTIONS[block.get(at)], block.getLong(at + 1), data));
      at += HEAD + count;
    }
    return from + at;
  }

  private ByteBuffer filled(long from, int length) throws IOException {
    ByteBuffer block = ByteBuffer.allocate(length);
    while (block.hasRemaining()) {
      if (channel.read(block, from + block.position()) < 0) {
        throw new IOException("the log's file ends at " + (from + block.position()) + " bytes");
      }
    }
    return block.flip();
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
