package dev.gantrywright.link;

import dev.gantrywright.board.Tool;
import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticePty;
import dev.gantrywright.link.practice.PracticeServer;
import dev.gantrywright.link.practice.PracticeTransport;
import dev.gantrywright.link.practice.Wire;
import dev.gantrywright.link.pty.Pty;
import dev.gantrywright.link.remote.Rfc2217Transport;
import dev.gantrywright.link.remote.TcpTransport;
import dev.gantrywright.link.serial.SerialTransport;
import java.io.IOException;
import java.time.Duration;

/** A practice board at the far end of one kind of line. */
public interface Peer extends AutoCloseable {
  /** Opens our end. */
  Connector connector();

  /** Takes the line away from the far end. */
  void hangUp() throws IOException;

  @Override
  void close() throws IOException;

  /** The kinds of line. */
  enum Kind {
    MEMORY,
    TCP,
    RFC2217,
    PTY
  }

  static Peer of(Kind kind, PracticeBoard board) throws IOException {
    return of(kind, board, Wire.ideal());
  }

  static Peer of(Kind kind, PracticeBoard board, Wire wire) throws IOException {
    return switch (kind) {
      case MEMORY -> new Memory(board);
      case TCP, RFC2217 -> new Tcp(kind, board, wire);
      case PTY -> {
        Tool.needThat(Pty.available(), "pseudo-terminals");
        yield new OnPty(board, wire);
      }
    };
  }

  /** Inside the program. */
  final class Memory implements Peer {
    private final PracticeBoard board;
    private Transport last;

    private Memory(PracticeBoard board) {
      this.board = board;
    }

    @Override
    public Connector connector() {
      return settings -> last = new PracticeTransport(board, System::nanoTime);
    }

    @Override
    public void hangUp() {
      throw new UnsupportedOperationException("nothing to be unplugged inside the program");
    }

    @Override
    public void close() {
      if (last != null) {
        last.close();
      }
    }
  }

  /** Loopback TCP, plain or RFC 2217. */
  final class Tcp implements Peer {
    private final PracticeServer server;
    private final Kind kind;

    private Tcp(Kind kind, PracticeBoard board, Wire wire) throws IOException {
      this.kind = kind;
      this.server = PracticeServer.listen(0, board, wire, System::nanoTime, Thread::new);
    }

    @Override
    public Connector connector() {
      Duration patience = Duration.ofSeconds(60);
      return kind == Kind.TCP
          ? settings -> TcpTransport.open("127.0.0.1", server.port(), patience)
          : settings -> Rfc2217Transport.open("127.0.0.1", server.port(), settings, patience);
    }

    @Override
    public void hangUp() throws IOException {
      server.hangUp();
    }

    @Override
    public void close() throws IOException {
      server.close();
    }
  }

  /** A pseudo-terminal, opened by the serial library. */
  final class OnPty implements Peer {
    private final PracticePty pty;

    private OnPty(PracticeBoard board, Wire wire) throws IOException {
      this.pty = PracticePty.open(board, wire, System::nanoTime, Thread::new);
    }

    @Override
    public Connector connector() {
      return settings -> SerialTransport.open(pty.path(), settings);
    }

    @Override
    public void hangUp() {
      pty.close();
    }

    @Override
    public void close() {
      pty.close();
    }
  }
}
