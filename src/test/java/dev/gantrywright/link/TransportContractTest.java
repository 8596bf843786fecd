package dev.gantrywright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What every transport keeps. */
class TransportContractTest {
  private static final SerialSettings SETTINGS = SerialSettings.at(115_200);

  @ParameterizedTest
  @EnumSource(Peer.Kind.class)
  void carriesACommandAndItsReply(Peer.Kind kind) throws Exception {
    try (Peer peer = Peer.of(kind, PracticeMachines.board());
        Transport line = peer.connector().open(SETTINGS)) {
      line.write("M119\n".getBytes(StandardCharsets.US_ASCII));
      assertThat(until(line, "done")).contains("x_min = clear").contains("z_min = clear");
    }
  }

  @ParameterizedTest
  @EnumSource(Peer.Kind.class)
  void silenceIsZeroBytesAndNoError(Peer.Kind kind) throws Exception {
    try (Peer peer = Peer.of(kind, PracticeMachines.board());
        Transport line = peer.connector().open(SETTINGS)) {
      byte[] buffer = new byte[64];
      assertThat(line.read(buffer, Duration.ofMillis(120))).isZero();
      assertThat(line.read(buffer, Duration.ZERO)).isZero();
    }
  }

  @ParameterizedTest
  @EnumSource(Peer.Kind.class)
  void closingEndsAReaderThatWaits(Peer.Kind kind) throws Exception {
    try (Peer peer = Peer.of(kind, PracticeMachines.board())) {
      Transport line = peer.connector().open(SETTINGS);
      CompletableFuture<LinkException.Kind> ended = new CompletableFuture<>();
      Thread reader = new Thread(() -> ended.complete(readUntilItFails(line)));
      reader.start();
      line.close();
      assertThat(ended.get(60, TimeUnit.SECONDS)).isEqualTo(LinkException.Kind.CLOSED);
      reader.join();
    }
  }

  @ParameterizedTest
  @EnumSource(Peer.Kind.class)
  void aClosedLineTakesNothingAndMayBeClosedAgain(Peer.Kind kind) throws Exception {
    try (Peer peer = Peer.of(kind, PracticeMachines.board())) {
      Transport line = peer.connector().open(SETTINGS);
      line.close();
      line.close();
      assertThatThrownBy(() -> line.write(new byte[] {'M'})).isInstanceOf(LinkException.class);
      assertThatThrownBy(() -> line.read(new byte[8], Duration.ZERO))
          .isInstanceOf(LinkException.class);
    }
  }

  @ParameterizedTest
  @EnumSource(value = Peer.Kind.class, mode = EnumSource.Mode.EXCLUDE, names = "MEMORY")
  void aHangUpIsALoss(Peer.Kind kind) throws Exception {
    try (Peer peer = Peer.of(kind, PracticeMachines.board());
        Transport line = peer.connector().open(SETTINGS)) {
      line.write("M119\n".getBytes(StandardCharsets.US_ASCII));
      until(line, "done");
      peer.hangUp();
      assertThat(readUntilItFails(line)).isEqualTo(LinkException.Kind.LOST);
    }
  }

  @ParameterizedTest
  @EnumSource(Peer.Kind.class)
  void aLineThatWasClosedCanBeOpenedAgain(Peer.Kind kind) throws Exception {
    try (Peer peer = Peer.of(kind, PracticeMachines.board())) {
      for (int i = 0; i < 3; i++) {
        assertThat(askedWhenFree(peer)).contains("rookery 2.3");
      }
    }
  }

  /** Opens, asks, closes. A server may need a moment to see that its last client has gone. */
  private static String askedWhenFree(Peer peer) throws Exception {
    String said = "";
    for (int tries = 0; tries < 1_000 && !said.contains("done"); tries++) {
      try (Transport line = peer.connector().open(SETTINGS)) {
        line.write("M115\n".getBytes(StandardCharsets.US_ASCII));
        said = until(line, "done");
      } catch (LinkException e) {
        assertThat(e.kind()).isIn(LinkException.Kind.BUSY, LinkException.Kind.LOST);
        Thread.sleep(20);
      }
    }
    return said;
  }

  private static LinkException.Kind readUntilItFails(Transport line) {
    byte[] buffer = new byte[64];
    try {
      long end = System.nanoTime() + 60_000_000_000L;
      while (System.nanoTime() < end) {
        int n = line.read(buffer, Duration.ofMillis(50));
        assertThat(n).isGreaterThanOrEqualTo(0);
      }
      return null;
    } catch (LinkException e) {
      return e.kind();
    }
  }

  private static String until(Transport line, String word) throws LinkException {
    StringBuilder text = new StringBuilder();
    byte[] buffer = new byte[256];
    long end = System.nanoTime() + 60_000_000_000L;
    while (text.indexOf(word) < 0 && System.nanoTime() < end) {
      int n = line.read(buffer, Duration.ofMillis(100));
      text.append(new String(buffer, 0, n, StandardCharsets.US_ASCII));
    }
    return text.toString();
  }
}
