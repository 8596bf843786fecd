package dev.gantrywright.app;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Servers on loopback that do to a client what troubled boards and cables do. */
public final class TroubledServers implements AutoCloseable {
  /** What one client gets. */
  public interface Serving {
    void serve(InputStream in, OutputStream out) throws IOException, InterruptedException;
  }

  private final List<ServerSocket> servers = new ArrayList<>();
  private final List<Socket> clients = new CopyOnWriteArrayList<>();
  private final List<Socket> held = new ArrayList<>();

  /** A port that serves every client so; the connection ends with the serving. */
  public int serve(Serving serving) throws IOException {
    ServerSocket server = new ServerSocket(0, 8, InetAddress.getLoopbackAddress());
    servers.add(server);
    daemon(() -> accept(server, serving));
    return server.getLocalPort();
  }

  /** A port on which nobody listens, held so that no other board of the test gets its number. */
  public int nobody() throws IOException {
    Socket holder = new Socket();
    held.add(holder);
    holder.bind(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0));
    return holder.getLocalPort();
  }

  private void accept(ServerSocket server, Serving serving) {
    while (!server.isClosed()) {
      try {
        Socket socket = server.accept();
        clients.add(socket);
        daemon(() -> serveOne(socket, serving));
      } catch (IOException e) {
        return;
      }
    }
  }

  private static void serveOne(Socket socket, Serving serving) {
    try (socket) {
      serving.serve(socket.getInputStream(), socket.getOutputStream());
    } catch (IOException e) {
      return;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private static void daemon(Runnable work) {
    Thread thread = new Thread(work, "troubled server");
    thread.setDaemon(true);
    thread.start();
  }

  /** Reads and says nothing. */
  public static void mute(InputStream in, OutputStream out) throws IOException {
    in.transferTo(OutputStream.nullOutputStream());
  }

  /** Says that the line is taken and waits for the client to go. */
  public static void refuses(InputStream in, OutputStream out) throws IOException {
    out.write("line busy: another client has it\r\n".getBytes(StandardCharsets.US_ASCII));
    mute(in, out);
  }

  /** Answers every line with the same text. */
  public static Serving always(String answer) {
    return (in, out) -> {
      for (int b = in.read(); b >= 0; b = in.read()) {
        if (b == '\n') {
          out.write(answer.getBytes(StandardCharsets.ISO_8859_1));
        }
      }
    };
  }

  /** Says something without end, whatever it is asked. */
  public static Serving endless(String text, int everyMillis) {
    return (in, out) -> {
      while (true) {
        out.write(text.getBytes(StandardCharsets.ISO_8859_1));
        if (everyMillis > 0) {
          Thread.sleep(everyMillis);
        }
      }
    };
  }

  /** Answers so many lines with ok, then hangs up, and again on every new connection. */
  public static Serving hangsUpAfter(int lines) {
    return (in, out) -> {
      int left = lines;
      for (int b = in.read(); b >= 0 && left > 0; b = in.read()) {
        if (b == '\n') {
          left--;
          out.write("ok\n".getBytes(StandardCharsets.US_ASCII));
        }
      }
    };
  }

  /** Answers so many lines with ok, then asks for patience for ever. */
  public static Serving busyAfter(int lines) {
    return (in, out) -> {
      int left = lines;
      while (left > 0) {
        if (in.read() == '\n') {
          left--;
          out.write("ok\n".getBytes(StandardCharsets.US_ASCII));
        }
      }
      endless("busy: wait\n", 20).serve(in, out);
    };
  }

  @Override
  public void close() throws IOException {
    for (ServerSocket server : servers) {
      server.close();
    }
    for (Socket client : clients) {
      client.close();
    }
    for (Socket holder : held) {
      holder.close();
    }
  }
}
