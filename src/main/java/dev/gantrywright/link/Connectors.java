package dev.gantrywright.link;

import dev.gantrywright.link.practice.PracticeBoard;
import dev.gantrywright.link.practice.PracticeTransport;
import dev.gantrywright.link.remote.Rfc2217Transport;
import dev.gantrywright.link.remote.TcpTransport;
import dev.gantrywright.link.serial.PortList;
import dev.gantrywright.link.serial.SerialTransport;
import java.time.Duration;
import java.util.function.LongSupplier;

/** From an address to what opens it. */
public final class Connectors {
  private static final Duration CONNECT_PATIENCE = Duration.ofSeconds(5);

  private Connectors() {}

  /**
   * The way to open an address, each time anew.
   *
   * @param board what {@code practice:} reaches; not used for other addresses
   * @param nanoTime the monotonic clock
   */
  public static Connector of(PortAddress address, PracticeBoard board, LongSupplier nanoTime) {
    if (address instanceof PortAddress.Serial serial) {
      return settings -> SerialTransport.open(serial.port(), settings);
    }
    if (address instanceof PortAddress.Usb usb) {
      return settings -> SerialTransport.open(PortList.system().require(usb.identity()), settings);
    }
    if (address instanceof PortAddress.Tcp tcp) {
      return settings -> TcpTransport.open(tcp.host(), tcp.port(), CONNECT_PATIENCE);
    }
    if (address instanceof PortAddress.Rfc2217 remote) {
      return settings ->
          Rfc2217Transport.open(remote.host(), remote.port(), settings, CONNECT_PATIENCE);
    }
    return settings -> new PracticeTransport(board, nanoTime);
  }
}
