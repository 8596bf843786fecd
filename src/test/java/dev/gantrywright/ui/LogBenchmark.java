package dev.gantrywright.ui;

import dev.gantrywright.link.PortAddress;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import javafx.application.Platform;

/**
 * A board that says 1,000,000 lines over TCP, with the log pulled up in the window: as fast as they
 * are read, or as fast as full-speed USB can carry them.
 */
final class LogBenchmark {
  private static final int LINES = 1_000_000;

  /** From a printer that is open to the press of Connect; a quick hand, our estimate. */
  private static final int HAND_SECONDS = 3;

  /**
   * Bytes a second that full-speed USB can carry in bulk: 19 packets of 64 bytes in a frame of 1 ms
   * (USB 2.0 specification, table 5-9).
   */
  static final int FULL_SPEED_USB = 19 * 64 * 1000;

  private static final byte[] HEAD = "echo: feather ".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] TAIL = " of the left wing\n".getBytes(StandardCharsets.US_ASCII);

  private final byte[] line = Arrays.copyOf(HEAD, HEAD.length + 10 + TAIL.length);
  private final Socket board;
  private final int rate;

  private LogBenchmark(Socket board, int rate) {
    this.board = board;
    this.rate = rate;
  }

  /**
   * @param rate bytes a second; 0 for as fast as they are read
   */
  static void run(Path data, int rate) throws Exception {
    try (ServerSocket server = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      CompletableFuture<WorkbenchWindow> opened = new CompletableFuture<>();
      Platform.startup(() -> opened.complete(WindowBenchmark.open(data)));
      WorkbenchWindow window = opened.get();
      Platform.runLater(() -> window.open(data.resolve("workshop/heron.printer.json")));
      KeystrokeBenchmark.until(
          () -> window.printer().map(d -> d.planned().get().revision() >= 0).orElse(false));
      TimeUnit.SECONDS.sleep(HAND_SECONDS);
      Platform.runLater(
          () -> {
            var desk = window.printer().orElseThrow();
            PortAddress address = new PortAddress.Tcp("127.0.0.1", server.getLocalPort());
            desk.link().connect(desk.profile(), address, 20);
            window.desk().orElseThrow().line().pull();
          });
      CompletableFuture<PulseMeter> meter = new CompletableFuture<>();
      Platform.runLater(() -> meter.complete(new PulseMeter(window.scene())));
      try (Socket board = server.accept()) {
        new LogBenchmark(board, rate).talk(meter.get());
        CompletableFuture<Long> entries = new CompletableFuture<>();
        Platform.runLater(() -> entries.complete(window.printer().orElseThrow().link().logged()));
        Figures.report("entries in the log", entries.get());
      }
    }
    System.exit(0);
  }

  private void talk(PulseMeter meter) throws IOException {
    try (OutputStream out = new BufferedOutputStream(board.getOutputStream(), 1 << 13)) {
      say(out, 20_000);
      Platform.runLater(meter::begin);
      long start = System.nanoTime();
      say(out, LINES);
      double seconds = (System.nanoTime() - start) / 1e9;
      CompletableFuture<Void> reported = new CompletableFuture<>();
      Platform.runLater(
          () -> {
            meter.end();
            System.out.println("log, 1,000,000 lines");
            Figures.report("lines a second", LINES / seconds);
            meter.report();
            reported.complete(null);
          });
      reported.join();
    }
  }

  private void say(OutputStream out, int lines) throws IOException {
    long begun = System.nanoTime();
    long said = 0;
    for (int i = 0; i < lines; i++) {
      int length = line(i);
      out.write(line, 0, length);
      said += length;
      if (rate > 0) {
        long early = begun + said * 1_000_000_000L / rate - System.nanoTime();
        if (early > 1_000_000) {
          answer(out);
          out.flush();
          LockSupport.parkNanos(early);
        }
      }
    }
    out.flush();
  }

  /** Made without garbage: the board is no part of the program, though it shares its heap here. */
  private int line(int number) {
    int digits = 1;
    for (int left = number; left >= 10; left /= 10) {
      digits++;
    }
    int left = number;
    for (int i = HEAD.length + digits - 1; i >= HEAD.length; i--) {
      line[i] = (byte) ('0' + left % 10);
      left /= 10;
    }
    System.arraycopy(TAIL, 0, line, HEAD.length + digits, TAIL.length);
    return HEAD.length + digits + TAIL.length;
  }

  /** A board that answers nothing for seconds is given up. */
  private void answer(OutputStream out) throws IOException {
    while (board.getInputStream().available() > 0) {
      if (board.getInputStream().read() == '\n') {
        out.write("ok\n".getBytes(StandardCharsets.US_ASCII));
      }
    }
  }
}
