package dev.gantrywright.link;

import dev.gantrywright.board.Tool;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;

/** The real ser2net, serving one port by RFC 2217 on the loopback address. */
public final class Ser2net implements AutoCloseable {
  private final Process process;
  private final int port;

  private Ser2net(Process process, int port) {
    this.process = process;
    this.port = port;
  }

  /** Starts it, or skips the test where it is not installed. */
  public static Ser2net serve(String device, Path folder) throws Exception {
    Path program = Tool.path("ser2net");
    int port = freePort();
    Path config =
        Files.writeString(
            folder.resolve("ser2net.yaml"),
            """
            %%YAML 1.1
            ---
            connection: &bench
              accepter: telnet(rfc2217),tcp(nodelay),127.0.0.1,%d
              connector: serialdev,%s,115200n81,local
              options:
                chardelay: false
            """
                .formatted(port, device));
    Process process =
        new ProcessBuilder(program.toString(), "-d", "-u", "-n", "-c", config.toString())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("ser2net.log").toFile())
            .start();
    Ser2net server = new Ser2net(process, port);
    server.awaitListening(folder);
    return server;
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  private void awaitListening(Path folder) throws Exception {
    for (int i = 0; i < 500; i++) {
      try (Socket probe = new Socket(InetAddress.getLoopbackAddress(), port)) {
        // The probe held the device for a moment; the first client must find it free.
        probe.close();
        Thread.sleep(200);
        return;
      } catch (IOException e) {
        if (!process.isAlive()) {
          break;
        }
        Thread.sleep(20);
      }
    }
    throw new IllegalStateException(
        "ser2net does not listen: " + Files.readString(folder.resolve("ser2net.log")));
  }

  public int port() {
    return port;
  }

  @Override
  public void close() throws Exception {
    process.destroy();
    if (!process.waitFor(5, TimeUnit.SECONDS)) {
      process.destroyForcibly();
    }
  }
}
