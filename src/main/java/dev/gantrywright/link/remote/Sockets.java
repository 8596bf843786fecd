package dev.gantrywright.link.remote;

import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.LinkException.Kind;
import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.time.Duration;

/** Opens and closes sockets, and puts into words what goes wrong. */
final class Sockets {
  private Sockets() {}

  static Socket connect(String host, int port, Duration patience) throws LinkException {
    Socket socket = new Socket();
    try {
      socket.setTcpNoDelay(true);
      socket.setKeepAlive(true);
      InetSocketAddress address = new InetSocketAddress(host, port);
      if (address.isUnresolved()) {
        throw unreachable(host, port, "no such host");
      }
      socket.connect(address, (int) Math.max(1, patience.toMillis()));
      return socket;
    } catch (IOException e) {
      close(socket);
      throw unreachable(host, port, e.getMessage());
    } catch (LinkException e) {
      close(socket);
      throw e;
    }
  }

  private static LinkException unreachable(String host, int port, String why) {
    return new LinkException(
        Kind.NOT_FOUND,
        host
            + ":"
            + port
            + " cannot be reached ("
            + why
            + "): is the serving program running there, and the port right?");
  }

  static void close(Socket socket) {
    try {
      socket.close();
    } catch (IOException e) {
      // Nothing is left to be done with it.
      return;
    }
  }
}
