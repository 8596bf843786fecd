import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Locale;

/**
 * How often a peer answers the barest client there is: one socket, one thread, a question written,
 * bytes read until the acknowledgement, and again. What it does not reach, no watch can.
 *
 * <p>usage: java docs/benchmarks/PeerRate.java PORT SECONDS [QUESTION] [LAST-LINE]
 */
final class PeerRate {
  private PeerRate() {}

  public static void main(String[] args) throws Exception {
    long nanos = (long) (Double.parseDouble(args[1]) * 1e9);
    byte[] question = ((args.length > 2 ? args[2] : "M119") + "\n").getBytes(StandardCharsets.UTF_8);
    byte[] last = ((args.length > 3 ? args[3] : "done") + "\r\n").getBytes(StandardCharsets.UTF_8);
    try (Socket socket = new Socket("127.0.0.1", Integer.parseInt(args[0]))) {
      socket.setTcpNoDelay(true);
      long[] taken = new long[1 << 20];
      int count = 0;
      exchange(socket, question, last, 200_000_000L, new long[1 << 20]);
      long start = System.nanoTime();
      count = exchange(socket, question, last, nanos, taken);
      double seconds = (System.nanoTime() - start) / 1e9;
      long[] sorted = Arrays.copyOf(taken, count);
      Arrays.sort(sorted);
      System.out.printf(
          Locale.ROOT,
          "%.2f %.3f %.3f%n",
          count / seconds,
          sorted[count / 2] / 1e6,
          sorted[(int) (count * 0.99)] / 1e6);
    }
  }

  private static int exchange(
      Socket socket, byte[] question, byte[] last, long nanos, long[] taken) throws Exception {
    OutputStream out = socket.getOutputStream();
    InputStream in = socket.getInputStream();
    byte[] buffer = new byte[4096];
    long end = System.nanoTime() + nanos;
    int count = 0;
    for (long sent = System.nanoTime(); sent < end && count < taken.length; ) {
      out.write(question);
      int length = 0;
      while (!endsWith(buffer, length, last)) {
        int n = in.read(buffer, length, buffer.length - length);
        if (n < 0) {
          throw new IllegalStateException("the peer has hung up");
        }
        length += n;
      }
      long now = System.nanoTime();
      taken[count++] = now - sent;
      sent = now;
    }
    return count;
  }

  private static boolean endsWith(byte[] buffer, int length, byte[] last) {
    return length >= last.length
        && Arrays.equals(buffer, length - last.length, length, last, 0, last.length);
  }
}
