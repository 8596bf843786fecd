package dev.gantrywright.link.practice;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.ThreadFactory;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.LongSupplier;

/**
 * Serves a practice board on this computer's own loopback address only, by RFC 2217 and by plain
 * TCP. A second client is told that the line is busy.
 */
public final class PracticeServer implements AutoCloseable {
  private final ServerSocket listening;
  private final PracticeBoard board;
  private final Wire wire;
  private final LongSupplier nanoTime;
  private final ThreadFactory threads;
  private final AtomicReference<Socket> client = new AtomicReference<>();

  private PracticeServer(
      ServerSocket listening,
      PracticeBoard board,
      Wire wire,
      LongSupplier nanoTime,
      ThreadFactory threads) {
    this.listening = listening;
    this.board = board;
    this.wire = wire;
    this.nanoTime = nanoTime;
    this.threads = threads;
  }

  /**
   * Begins to serve.
   *
   * @param port 0 for any free one
   * @throws IOException when the port is taken
   */
  public static PracticeServer listen(
      int port, PracticeBoard board, Wire wire, LongSupplier nanoTime, ThreadFactory threads)
      throws IOException {
    ServerSocket socket = new ServerSocket();
    try {
      socket.setReuseAddress(true);
      socket.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), port), 8);
    } catch (IOException e) {
      socket.close();
      throw e;
    }
    PracticeServer server = new PracticeServer(socket, board, wire, nanoTime, threads);
    server.start("practice server", server::accept);
    return server;
  }

  public int port() {
    return listening.getLocalPort();
  }

  private void start(String name, Runnable work) {
    Thread thread = threads.newThread(work);
    thread.setName(name + " " + port());
    thread.setDaemon(true);
    thread.start();
  }

  private void accept() {
    while (!listening.isClosed()) {
      try {
        Socket socket = listening.accept();
        socket.setTcpNoDelay(true);
        if (client.compareAndSet(null, socket)) {
          start("practice client", () -> serve(socket));
        } else {
          start("practice refusal", () -> refuse(socket));
        }
      } catch (IOException e) {
        // The server was closed, or a client was gone before it was greeted; the next one counts.
        continue;
      }
    }
  }

  /** Says why, then waits for the client to go: a reset would take the words away with it. */
  private static void refuse(Socket socket) {
    try (socket) {
      socket.setSoTimeout(2_000);
      socket
          .getOutputStream()
          .write("line busy: another client has it\r\n".getBytes(StandardCharsets.US_ASCII));
      socket.shutdownOutput();
      socket.getInputStream().transferTo(OutputStream.nullOutputStream());
    } catch (IOException e) {
      // It has gone without listening.
      return;
    }
  }

  private void serve(Socket socket) {
    PracticeLine line = new PracticeLine(board);
    TelnetServerCodec codec = new TelnetServerCodec(115_200, wire::clientBaud);
    byte[] buffer = new byte[4096];
    try (socket) {
      InputStream in = socket.getInputStream();
      OutputStream out = socket.getOutputStream();
      for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
        byte[] data = codec.decode(buffer, n);
        out.write(codec.takeReplies());
        byte[] heard = wire.toBoard(data);
        byte[] answer = line.take(heard, heard.length, nanoTime.getAsLong());
        out.write(codec.encode(wire.toClient(answer)));
        out.flush();
      }
    } catch (IOException e) {
      // The client has hung up: the line is free again.
      return;
    } finally {
      client.set(null);
    }
  }

  /** Hangs up on the client, as an unplugged cable would. */
  public void hangUp() throws IOException {
    Socket socket = client.get();
    if (socket != null) {
      socket.close();
    }
  }

  @Override
  public void close() throws IOException {
    listening.close();
    hangUp();
  }
}
