package dev.gantrywright.link.remote;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.link.SerialSettings;
import dev.gantrywright.link.Transport;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A server that talks telnet without end, or says nothing: reading has a limit, closing ends it.
 */
class HostileServerTest {
  private static final Duration PATIENCE = Duration.ofSeconds(30);

  static Stream<Arguments> servers() {
    byte[] longOption = new byte[5000];
    longOption[0] = (byte) 255;
    longOption[1] = (byte) 250;
    longOption[2] = 44;
    return Stream.of(
        Arguments.of("offers options without end", new byte[] {(byte) 255, (byte) 251, 99}),
        Arguments.of("asks for options without end", new byte[] {(byte) 255, (byte) 253, 98}),
        Arguments.of("never ends a subnegotiation", longOption),
        Arguments.of("says nothing", new byte[0]));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("servers")
  @Timeout(120)
  void neitherFillsTheMemoryNorHoldsTheCaller(String what, byte[] says) throws Exception {
    try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      CompletableFuture<Boolean> hungUp = new CompletableFuture<>();
      Thread serving = new Thread(() -> serve(server, says, hungUp));
      serving.setDaemon(true);
      serving.start();
      Transport line =
          Rfc2217Transport.open(
              "127.0.0.1", server.getLocalPort(), SerialSettings.at(115_200), PATIENCE);
      byte[] buffer = new byte[256];
      for (int i = 0; i < 20; i++) {
        assertThat(line.read(buffer, Duration.ofMillis(20))).isZero();
      }
      line.close();
      assertThat(hungUp.get(60, TimeUnit.SECONDS)).isTrue();
    }
  }

  /** Repeats its words until the client is gone. */
  private static void serve(ServerSocket server, byte[] says, CompletableFuture<Boolean> hungUp) {
    try (Socket client = server.accept()) {
      Thread drain =
          new Thread(
              () -> {
                try {
                  client.getInputStream().transferTo(OutputStream.nullOutputStream());
                  client.close();
                } catch (IOException gone) {
                  hungUp.complete(true);
                }
                hungUp.complete(true);
              });
      drain.setDaemon(true);
      drain.start();
      while (says.length > 0 && !client.isClosed()) {
        client.getOutputStream().write(says);
      }
      drain.join();
    } catch (IOException | InterruptedException gone) {
      hungUp.complete(true);
    }
  }
}
