package dev.gantrywright.link.serial;

import com.fazecast.jSerialComm.SerialPort;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.LinkException.Kind;
import dev.gantrywright.link.SerialSettings;
import dev.gantrywright.link.Transport;
import java.time.Duration;

/**
 * A serial port. The driver serves time-outs in steps of 100 ms, and no listener is used: with one,
 * some drivers keep a port that was unplugged.
 */
public final class SerialTransport implements Transport {
  /** A write that takes longer means that the device is dead. */
  private static final long WRITE_LIMIT_NANOS = 5_000_000_000L;

  private static final int STEP_MILLIS = 100;

  private final SerialPort port;
  private final String name;
  private volatile boolean closed;
  private volatile long writeBegan;

  private SerialTransport(SerialPort port, String name) {
    this.port = port;
    this.name = name;
  }

  /**
   * Opens a port for this program alone.
   *
   * @param portName name or path
   * @throws LinkException NOT_FOUND, NOT_ALLOWED or BUSY
   */
  public static SerialTransport open(String portName, SerialSettings settings)
      throws LinkException {
    PortAccess.require(portName);
    SerialPort port;
    try {
      // A fresh object each time: the path may be a link that now points to another device.
      port = SerialPort.getCommPort(portName);
    } catch (RuntimeException e) {
      throw PortAccess.notFound(portName);
    }
    port.setComPortParameters(
        settings.baud(), settings.dataBits(), stopBits(settings), parity(settings));
    port.setFlowControl(SerialPort.FLOW_CONTROL_DISABLED);
    port.setComPortTimeouts(SerialPort.TIMEOUT_READ_SEMI_BLOCKING, STEP_MILLIS, 0);
    if (!port.openPort(0, 1 << 16, 1 << 16)) {
      throw PortAccess.refused(portName, port.getLastErrorCode());
    }
    return new SerialTransport(port, portName);
  }

  private static int stopBits(SerialSettings s) {
    return s.stopBits() == 2 ? SerialPort.TWO_STOP_BITS : SerialPort.ONE_STOP_BIT;
  }

  private static int parity(SerialSettings s) {
    return switch (s.parity()) {
      case NONE -> SerialPort.NO_PARITY;
      case ODD -> SerialPort.ODD_PARITY;
      case EVEN -> SerialPort.EVEN_PARITY;
    };
  }

  @Override
  public String name() {
    return name;
  }

  @Override
  public int read(byte[] into, Duration wait) throws LinkException {
    long end = System.nanoTime() + wait.toNanos();
    do {
      if (closed) {
        throw LinkException.closed(name);
      }
      long began = writeBegan;
      if (began != 0 && System.nanoTime() - began > WRITE_LIMIT_NANOS) {
        close();
        throw LinkException.lost(name);
      }
      int n = wait.isZero() && port.bytesAvailable() == 0 ? 0 : port.readBytes(into, into.length);
      if (n < 0) {
        throw closed ? LinkException.closed(name) : LinkException.lost(name);
      }
      if (n > 0) {
        return n;
      }
    } while (System.nanoTime() - end < 0);
    return 0;
  }

  @Override
  public void write(byte[] bytes) throws LinkException {
    if (closed) {
      throw LinkException.closed(name);
    }
    writeBegan = System.nanoTime();
    int n = port.writeBytes(bytes, bytes.length);
    writeBegan = 0;
    if (n < bytes.length) {
      // After a hang-up the driver reports 0 bytes written and no error.
      throw closed
          ? LinkException.closed(name)
          : new LinkException(
              Kind.LOST,
              name + " takes no more bytes: look at cable and power, then connect again");
    }
  }

  @Override
  public boolean controlLines(boolean dtr, boolean rts) {
    boolean d = dtr ? port.setDTR() : port.clearDTR();
    boolean r = rts ? port.setRTS() : port.clearRTS();
    return d && r;
  }

  @Override
  public void close() {
    closed = true;
    port.closePort();
  }
}
