package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.link.Connector;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.link.SerialSettings;
import dev.gantrywright.link.Transport;
import dev.gantrywright.link.remote.Rfc2217Transport;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** DTR and RTS as a user asks for them. */
class ControlLinesTest {
  private static final String PROFILE = "demo-profiles/sandpiper.printer.json";

  private static final class Recorder implements Transport {
    private final List<String> set = new ArrayList<>();
    private final boolean takes;
    private boolean closed;

    Recorder(boolean takes) {
      this.takes = takes;
    }

    @Override
    public String name() {
      return "COM9";
    }

    @Override
    public int read(byte[] into, Duration wait) {
      return 0;
    }

    @Override
    public void write(byte[] bytes) {}

    @Override
    public boolean controlLines(boolean dtr, boolean rts) {
      set.add(dtr + " " + rts);
      return takes;
    }

    @Override
    public void close() {
      closed = true;
    }
  }

  private static Connector connector(LineOptions options, Recorder line) throws Exception {
    return options.withControlLines(PortAddress.parse("COM9"), settings -> line);
  }

  @Test
  void theyAreSetEachTimeThatTheLineIsOpenedAndTheOtherStaysOn() throws Exception {
    Recorder line = new Recorder(true);
    LineOptions options = new LineOptions();
    options.dtr = LineOptions.ControlLine.off;
    Connector asked = connector(options, line);
    SerialSettings settings = new SerialSettings(115_200, 8, SerialSettings.Parity.NONE, 1);
    assertThat(asked.open(settings)).isSameAs(line);
    asked.open(settings);
    assertThat(line.set).containsExactly("false true", "false true");
    options.dtr = null;
    connector(options, line).open(settings);
    assertThat(line.set).as("nothing is touched unasked").hasSize(2);
  }

  @Test
  void aLineThatTakesThemNotIsGivenUp() throws Exception {
    Recorder line = new Recorder(false);
    LineOptions options = new LineOptions();
    options.rts = LineOptions.ControlLine.on;
    Connector asked = connector(options, line);
    assertThatThrownBy(
            () -> asked.open(new SerialSettings(9_600, 8, SerialSettings.Parity.NONE, 1)))
        .isInstanceOf(LinkException.class)
        .hasMessageContaining("leave --dtr and --rts out");
    assertThat(line.closed).isTrue();
  }

  @Test
  void thePracticeBoardHasNone() {
    CommandRun run = CommandRun.of("prove", PROFILE, "--dtr", "off");
    assertThat(run.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(run.err()).contains("for a serial port or an rfc2217:// line");
    assertThat(CommandRun.of("prove", PROFILE, "--dtr", "maybe").err())
        .contains("maybe")
        .contains("on, off");
  }

  /** SET-CONTROL values of RFC 2217 section 3: 9 DTR off, 11 RTS on. */
  @Test
  void overRfc2217TheyAreAskedForByTheComPortOption() throws Exception {
    try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        Rfc2217Transport line =
            Rfc2217Transport.open(
                "127.0.0.1",
                server.getLocalPort(),
                new SerialSettings(115_200, 8, SerialSettings.Parity.NONE, 1),
                Duration.ofSeconds(60));
        Socket there = server.accept()) {
      there.setSoTimeout((int) TimeUnit.SECONDS.toMillis(60));
      assertThat(line.controlLines(false, true)).isTrue();
      assertThat(until(there, "fffa2c050bfff0")).contains("fffa2c0509fff0");
    }
  }

  private static String until(Socket socket, String last) throws IOException {
    ByteArrayOutputStream heard = new ByteArrayOutputStream();
    String hex = "";
    while (!hex.contains(last)) {
      heard.write(socket.getInputStream().read());
      hex = HexFormat.of().formatHex(heard.toByteArray());
    }
    return hex;
  }
}
