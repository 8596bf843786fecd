package dev.gantrywright.link.remote;

import dev.gantrywright.link.ByteQueue;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.LinkException.Kind;
import dev.gantrywright.link.SerialSettings;
import dev.gantrywright.link.Transport;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.UnknownHostException;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.apache.commons.net.telnet.InvalidTelnetOptionException;
import org.apache.commons.net.telnet.SimpleOptionHandler;
import org.apache.commons.net.telnet.SuppressGAOptionHandler;
import org.apache.commons.net.telnet.TelnetClient;
import org.apache.commons.net.telnet.TelnetOption;

/**
 * A remote serial port after RFC 2217. The telnet library knows no time-outs: whoever wants to read
 * with one is served by a thread that ends with the connection; {@link #receive} needs none.
 */
public final class Rfc2217Transport implements Transport {
  /** Hangs up without taking the streams from under a thread that writes. */
  private static final class Telnet extends TelnetClient {
    Telnet() {
      super("dumb");
    }

    boolean reached() {
      return _socket_ != null && _socket_.isConnected();
    }

    void hangUp() {
      Sockets.close(_socket_);
    }
  }

  private final Telnet telnet;
  private final ComPortOption comPort;
  private final String name;
  private final OutputStream out;
  private final CountDownLatch ended = new CountDownLatch(1);
  private ByteQueue arrived;
  private boolean received;
  private volatile boolean closed;
  private volatile String refusal = "";

  private Rfc2217Transport(Telnet telnet, ComPortOption comPort, String name) {
    this.telnet = telnet;
    this.comPort = comPort;
    this.name = name;
    this.out = telnet.getOutputStream();
  }

  /**
   * Connects and asks for the settings. Not every server confirms them, so none is waited for.
   *
   * @throws LinkException NOT_FOUND when nobody listens there
   */
  public static Rfc2217Transport open(
      String host, int port, SerialSettings settings, Duration patience) throws LinkException {
    String name = "rfc2217://" + host + ":" + port;
    Telnet telnet = new Telnet();
    ComPortOption comPort = new ComPortOption();
    try {
      telnet.addOptionHandler(comPort);
      telnet.addOptionHandler(new SimpleOptionHandler(TelnetOption.BINARY, true, true, true, true));
      telnet.addOptionHandler(new SuppressGAOptionHandler(true, true, true, true));
      // Our own thread reads; another one between it and the wire would only cost time.
      telnet.setReaderThread(false);
      telnet.setSocketFactory(new BufferedSocket.Factory());
      telnet.setConnectTimeout((int) patience.toMillis());
      telnet.connect(host, port);
      telnet.setTcpNoDelay(true);
      telnet.setKeepAlive(true);
      return new Rfc2217Transport(telnet, comPort, name).asked(settings);
    } catch (IOException | InvalidTelnetOptionException e) {
      if (telnet.reached()) {
        telnet.hangUp();
        throw new LinkException(
            Kind.BUSY,
            name
                + " hangs up at once: another program may have the port, or the device is not"
                + " plugged in there",
            e);
      }
      throw new LinkException(
          Kind.NOT_FOUND,
          host
              + ":"
              + port
              + " cannot be reached ("
              + (e instanceof UnknownHostException ? "no such host" : e.getMessage())
              + "): is an RFC 2217 server running there, and the port right?",
          e);
    }
  }

  private Rfc2217Transport asked(SerialSettings settings) throws IOException, LinkException {
    try {
      for (int[] words : ComPortOption.settings(settings)) {
        telnet.sendSubnegotiation(words);
      }
      return this;
    } catch (IOException e) {
      awaitLastWords();
      close();
      if (!refusal.isEmpty()) {
        throw busy();
      }
      throw e;
    }
  }

  /** A server that refuses says why and hangs up; its words may still be on the way. */
  private void awaitLastWords() {
    try {
      queue();
      boolean over = ended.await(1, TimeUnit.SECONDS);
      refusal = over ? refusal : "";
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  private LinkException busy() {
    return new LinkException(
        Kind.BUSY,
        name
            + ": the server says '"
            + refusal
            + "'; close the other program, or look at the server");
  }

  /** The baud rate that the server says is in force; 0 while it has not said. */
  public int confirmedBaud() {
    return comPort.confirmedBaud();
  }

  /** What the thread that reads puts in; it is begun when first wanted. */
  private synchronized ByteQueue queue() {
    if (arrived == null) {
      if (received) {
        throw new IllegalStateException(name + " is being received already");
      }
      ByteQueue filled = new ByteQueue(1 << 16);
      arrived = filled;
      Thread reader = new Thread(() -> fill(filled), name);
      reader.setDaemon(true);
      reader.start();
    }
    return arrived;
  }

  private void fill(ByteQueue queue) {
    try {
      hear(
          (bytes, count) -> {
            try {
              return queue.put(bytes, 0, count);
            } catch (InterruptedException e) {
              Thread.currentThread().interrupt();
              return false;
            }
          });
    } finally {
      queue.end();
      ended.countDown();
    }
  }

  /** Reads until the connection ends, here or there, or the receiver has enough. */
  private void hear(Receiver receiver) {
    byte[] buffer = new byte[4096];
    try {
      InputStream in = telnet.getInputStream();
      boolean first = true;
      for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
        if (first && n > 0) {
          first = false;
          refusal = ServerRefusal.in(buffer, n);
          if (!refusal.isEmpty()) {
            return;
          }
        }
        if (!receiver.take(buffer, n)) {
          return;
        }
      }
    } catch (IOException e) {
      // The connection is gone, or closed by us: the caller tells which.
      return;
    }
  }

  /** Straight from the telnet library, on the calling thread. */
  @Override
  public void receive(Receiver receiver) throws LinkException {
    synchronized (this) {
      if (arrived != null) {
        throw new IllegalStateException(name + " is being read already");
      }
      received = true;
    }
    boolean[] enough = {false};
    hear(
        (bytes, count) -> {
          enough[0] = !receiver.take(bytes, count);
          return !enough[0];
        });
    if (enough[0]) {
      return;
    }
    throw !closed && !refusal.isEmpty() ? busy() : gone();
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int read(byte[] into, Duration wait) throws LinkException {
    try {
      int n = closed ? -1 : queue().take(into, wait);
      if (!closed && !refusal.isEmpty()) {
        throw busy();
      }
      if (n < 0) {
        throw gone();
      }
      return n;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw LinkException.closed(name);
    }
  }

  @Override
  public void write(byte[] bytes) throws LinkException {
    if (closed) {
      throw gone();
    }
    try {
      out.write(bytes);
      out.flush();
    } catch (IOException e) {
      throw gone();
    }
  }

  private LinkException gone() {
    return closed ? LinkException.closed(name) : LinkException.lost(name);
  }

  @Override
  public boolean controlLines(boolean dtr, boolean rts) {
    try {
      telnet.sendSubnegotiation(
          ComPortOption.control(dtr ? ComPortOption.DTR_ON : ComPortOption.DTR_OFF));
      telnet.sendSubnegotiation(
          ComPortOption.control(rts ? ComPortOption.RTS_ON : ComPortOption.RTS_OFF));
      return true;
    } catch (IOException e) {
      return false;
    }
  }

  @Override
  public void close() {
    closed = true;
    telnet.hangUp();
    synchronized (this) {
      if (arrived != null) {
        arrived.end();
      }
    }
  }
}
