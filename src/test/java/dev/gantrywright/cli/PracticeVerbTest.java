package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class PracticeVerbTest {
  private static final String SANDPIPER = "demo-profiles/sandpiper.printer.json";

  /** Serves for some seconds while the test is a client. */
  private static String served(StringWriter out, String... more) throws Exception {
    String[] args = new String[more.length + 6];
    System.arraycopy(
        new String[] {"practice", SANDPIPER, "--listen", "0", "--for", "240"}, 0, args, 0, 6);
    System.arraycopy(more, 0, args, 6, more.length);
    Thread server =
        new Thread(() -> Cli.run(new PrintWriter(out), new PrintWriter(out), args), "practice");
    server.setDaemon(true);
    server.start();
    Matcher m = Pattern.compile("rfc2217://[0-9.]+:\\d+").matcher("");
    for (int i = 0; i < 6_000; i++) {
      Thread.sleep(10);
      m = Pattern.compile("rfc2217://[0-9.]+:\\d+").matcher(out.toString());
      if (m.find()) {
        return m.group();
      }
    }
    throw new AssertionError("not served: " + out);
  }

  @Test
  void isProvenOverRfc2217AndPlainTcp() throws Exception {
    String address = served(new StringWriter());
    CommandRun remote = CommandRun.of("prove", SANDPIPER, "--port", address);
    assertThat(remote.out()).contains("proven:");
    assertThat(remote.status()).isEqualTo(ExitStatus.FINE);
    CommandRun plain =
        CommandRun.of("prove", SANDPIPER, "--port", address.replace("rfc2217", "tcp"));
    assertThat(plain.out()).contains("proven:");
  }

  @Test
  void servesItsFaults() throws Exception {
    String address =
        served(new StringWriter(), "--fault", "stuck:zMin:triggered,stored:x.maxSpeed:99");
    CommandRun run = CommandRun.of("prove", SANDPIPER, "--port", address);
    assertThat(run.status()).isEqualTo(ExitStatus.FINDINGS);
    assertThat(run.out()).contains("fail    endstops.zMin").contains("fail    axes.x.maxSpeed");
  }

  @Test
  void aPortThatIsTakenIsOneLine() throws Exception {
    try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      CommandRun run =
          CommandRun.of("practice", SANDPIPER, "--listen", String.valueOf(taken.getLocalPort()));
      assertThat(run.status()).isEqualTo(ExitStatus.DEVICE);
      assertThat(run.err()).contains("on port " + taken.getLocalPort());
      assertThat(run.err().strip().lines()).hasSize(1);
    }
  }

  @Test
  void badUsage() {
    assertThat(CommandRun.of("practice", SANDPIPER, "--listen", "99999").status())
        .isEqualTo(ExitStatus.USAGE);
    assertThat(CommandRun.of("practice", SANDPIPER, "--fault", "x").status())
        .isEqualTo(ExitStatus.USAGE);
    assertThat(CommandRun.of("practice", "none.json").status()).isEqualTo(ExitStatus.USAGE);
  }

  @Test
  void portsAreFollowedForATime() {
    CommandRun run = CommandRun.of("ports", "--for", "0.2", "--format", "json");
    assertThat(run.status()).isEqualTo(ExitStatus.FINE);
    assertThat(run.json().path("ports").isArray()).isTrue();
    assertThat(run.json().path("changes").isArray()).isTrue();
    assertThat(CommandRun.of("ports", "--for", "-1").status()).isEqualTo(ExitStatus.USAGE);
  }

  @Test
  void portsAreListed() {
    assertThat(CommandRun.of("ports").status()).isEqualTo(ExitStatus.FINE);
    assertThat(CommandRun.of("ports", "--format", "json").json().path("ports").isArray()).isTrue();
  }
}
