package dev.gantrywright.link.remote;

import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.Transport;
import java.io.IOException;
import java.net.Socket;
import java.net.SocketTimeoutException;
import java.time.Duration;

/** Plain bytes over TCP. */
public final class TcpTransport implements Transport {
  private final Socket socket;
  private final String name;
  private volatile boolean closed;

  private TcpTransport(Socket socket, String name) {
    this.socket = socket;
    this.name = name;
  }

  /**
   * Connects.
   *
   * @throws LinkException NOT_FOUND when nobody listens there
   */
  public static TcpTransport open(String host, int port, Duration patience) throws LinkException {
    return new TcpTransport(Sockets.connect(host, port, patience), "tcp://" + host + ":" + port);
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int read(byte[] into, Duration wait) throws LinkException {
    try {
      // A time-out of 0 would wait for ever.
      socket.setSoTimeout((int) Math.max(1, wait.toMillis()));
      int n = socket.getInputStream().read(into);
      if (n < 0) {
        throw gone();
      }
      return n;
    } catch (SocketTimeoutException e) {
      return 0;
    } catch (IOException e) {
      throw gone();
    }
  }

  @Override
  public void write(byte[] bytes) throws LinkException {
    try {
      socket.getOutputStream().write(bytes);
    } catch (IOException e) {
      throw gone();
    }
  }

  private LinkException gone() {
    return closed ? LinkException.closed(name) : LinkException.lost(name);
  }

  @Override
  public void close() {
    closed = true;
    Sockets.close(socket);
  }
}
