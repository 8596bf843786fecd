package dev.gantrywright.link;

import dev.gantrywright.board.Tool;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
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
    for (int tries = 0; tries < 5; tries++) {
      // It takes no port 0; another program may take the one that was free a moment ago.
      Ser2net server = started(program, device, folder, freePort());
      if (server.listens()) {
        return server;
      }
      server.close();
    }
    throw new IllegalStateException(
        "ser2net does not listen: " + Files.readString(folder.resolve("ser2net.log")));
  }

  private static Ser2net started(Path program, String device, Path folder, int port)
      throws IOException {
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
    return new Ser2net(process, port);
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }

  /** Waits until it listens; a connection to try it would hold the device for a moment. */
  private boolean listens() throws IOException, InterruptedException {
    String local = String.format(Locale.ROOT, ":%04X ", port);
    long end = System.nanoTime() + 60_000_000_000L;
    while (process.isAlive() && System.nanoTime() < end) {
      // <net/tcp_states.h>: 0A is a socket that listens.
      if (Files.readAllLines(Path.of("/proc/net/tcp")).stream()
          .anyMatch(row -> row.contains(local) && row.matches(".*:0000 0A .*"))) {
        return true;
      }
      Thread.sleep(20);
    }
    return false;
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
