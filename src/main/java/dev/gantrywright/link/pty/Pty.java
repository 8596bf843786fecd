package dev.gantrywright.link.pty;

import com.sun.jna.Memory;
import com.sun.jna.Native;
import com.sun.jna.NativeLong;
import com.sun.jna.Platform;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.locks.ReentrantReadWriteLock;

/**
 * The serving end of a pseudo-terminal. One thread may read while another writes; closing waits for
 * both, which takes at most one {@link #POLL_MILLIS}, so that no descriptor is used after its
 * number was given to somebody else.
 */
public final class Pty implements AutoCloseable {
  /** Longest stay in one read, so that closing is prompt. */
  public static final int POLL_MILLIS = 100;

  private static final int O_RDWR = 2;
  // <fcntl.h> of Linux and of macOS.
  private static final int O_NOCTTY = Platform.isMac() ? 0x20000 : 0x100;
  private static final short POLLIN = 1;
  private static final short POLLOUT = 4;

  /** Larger than struct termios anywhere. */
  private static final int TERMIOS_BYTES = 256;

  private final CLibrary c;
  private final int master;
  private final int slave;
  private final String path;
  private final ReentrantReadWriteLock use = new ReentrantReadWriteLock();
  private boolean closed;

  private Pty(CLibrary c, int master, int slave, String path) {
    this.c = c;
    this.master = master;
    this.slave = slave;
    this.path = path;
  }

  /** Whether this system has pseudo-terminals that we can make. */
  public static boolean available() {
    return !Platform.isWindows() && Files.exists(Path.of("/dev/ptmx"));
  }

  /**
   * Makes one, in raw mode: bytes pass unchanged.
   *
   * @throws IOException when the system refuses
   */
  public static Pty open() throws IOException {
    if (!available()) {
      throw new IOException("this system has no pseudo-terminals; use --listen PORT instead");
    }
    CLibrary c = Native.load("c", CLibrary.class);
    int master = c.posix_openpt(O_RDWR | O_NOCTTY);
    byte[] name = new byte[128];
    if (master < 0
        || c.grantpt(master) != 0
        || c.unlockpt(master) != 0
        || c.ptsname_r(master, name, new NativeLong(name.length)) != 0) {
      throw new IOException("the system gives no pseudo-terminal (are too many in use?)");
    }
    int end = 0;
    while (name[end] != 0) {
      end++;
    }
    String path = new String(name, 0, end, StandardCharsets.US_ASCII);
    // Our own open end keeps the line alive while no client has it.
    int slave = c.open(path, O_RDWR | O_NOCTTY);
    if (slave < 0) {
      c.close(master);
      throw new IOException(path + " cannot be opened");
    }
    try (Memory termios = new Memory(TERMIOS_BYTES)) {
      c.tcgetattr(slave, termios);
      c.cfmakeraw(termios);
      c.tcsetattr(slave, 0, termios);
    }
    return new Pty(c, master, slave, path);
  }

  /** The port that a client opens. */
  public String path() {
    return path;
  }

  /**
   * Reads what a client wrote.
   *
   * @return 0 when nothing came within {@link #POLL_MILLIS}, -1 when closed
   */
  public int read(byte[] into) throws IOException {
    use.readLock().lock();
    try {
      if (closed) {
        return -1;
      }
      if (!ready(POLLIN)) {
        return 0;
      }
      return c.read(master, into, new NativeLong(into.length)).intValue();
    } finally {
      use.readLock().unlock();
    }
  }

  /**
   * Writes to the client. What the client does not take within five seconds is dropped, as a wire
   * would.
   */
  public void write(byte[] bytes) throws IOException {
    int done = 0;
    int waits = 0;
    while (done < bytes.length && waits < 5_000 / POLL_MILLIS) {
      use.readLock().lock();
      try {
        if (closed) {
          return;
        }
        if (!ready(POLLOUT)) {
          waits++;
          continue;
        }
        // Small pieces: a larger one would block where the client reads slowly.
        byte[] piece = Arrays.copyOfRange(bytes, done, Math.min(bytes.length, done + 512));
        int n = c.write(master, piece, new NativeLong(piece.length)).intValue();
        if (n < 0) {
          throw new IOException(path + " takes no bytes");
        }
        done += n;
      } finally {
        use.readLock().unlock();
      }
    }
  }

  private boolean ready(short what) {
    try (Memory descriptor = new Memory(8)) {
      descriptor.setInt(0, master);
      descriptor.setShort(4, what);
      descriptor.setShort(6, (short) 0);
      return c.poll(descriptor, new NativeLong(1), POLL_MILLIS) > 0
          && (descriptor.getShort(6) & what) != 0;
    }
  }

  @Override
  public void close() {
    use.writeLock().lock();
    try {
      if (!closed) {
        closed = true;
        c.close(slave);
        c.close(master);
      }
    } finally {
      use.writeLock().unlock();
    }
  }
}
