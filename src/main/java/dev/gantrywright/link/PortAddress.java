package dev.gantrywright.link;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;

/**
 * Where a machine is reached: a port name, {@code practice:}, {@code tcp://…} or {@code
 * rfc2217://…}.
 */
public sealed interface PortAddress {
  /** A serial port of this computer, by the name or path that the system gives it. */
  record Serial(String port) implements PortAddress {
    @Override
    public String toString() {
      return port;
    }
  }

  /** A serial port of this computer by its USB identity, wherever it turns up. */
  record Usb(UsbIdentity identity) implements PortAddress {
    @Override
    public String toString() {
      return identity.toString();
    }
  }

  /** The practice board inside this program; options are those of its faults. */
  record Practice(String options) implements PortAddress {
    @Override
    public String toString() {
      return "practice:" + options;
    }
  }

  /** Plain bytes over TCP. */
  record Tcp(String host, int port) implements PortAddress {
    @Override
    public String toString() {
      return "tcp://" + bracketed(host) + ":" + port;
    }
  }

  /** A remote serial port served as RFC 2217 describes. */
  record Rfc2217(String host, int port) implements PortAddress {
    @Override
    public String toString() {
      return "rfc2217://" + bracketed(host) + ":" + port;
    }
  }

  /**
   * Reads an address.
   *
   * @throws LinkException of kind BAD_ADDRESS with one clear line
   */
  static PortAddress parse(String text) throws LinkException {
    String t = text.strip();
    String lower = t.toLowerCase(Locale.ROOT);
    if (t.isEmpty()) {
      throw bad(text, "it is empty");
    }
    if (lower.startsWith("practice:")) {
      return new Practice(t.substring("practice:".length()));
    }
    if (lower.startsWith("usb:")) {
      return new Usb(
          UsbIdentity.parse(t).orElseThrow(() -> bad(text, "it is not usb:VENDOR:PRODUCT:SERIAL")));
    }
    if (lower.startsWith("tcp://")) {
      URI uri = uri(t);
      return new Tcp(plain(uri.getHost()), uri.getPort());
    }
    if (lower.startsWith("rfc2217://")) {
      URI uri = uri(t);
      return new Rfc2217(plain(uri.getHost()), uri.getPort());
    }
    if (t.contains("://")) {
      throw bad(text, "it starts with neither tcp:// nor rfc2217://");
    }
    return new Serial(t);
  }

  private static URI uri(String t) throws LinkException {
    try {
      URI uri = new URI(t);
      if (uri.getHost() == null || uri.getPort() < 1 || uri.getPort() > 65_535) {
        throw bad(t, "it needs host:port with a port from 1 to 65535");
      }
      return uri;
    } catch (URISyntaxException e) {
      throw bad(t, "it needs host:port with a port from 1 to 65535");
    }
  }

  private static String plain(String host) {
    return host.startsWith("[") ? host.substring(1, host.length() - 1) : host;
  }

  private static String bracketed(String host) {
    return host.indexOf(':') < 0 ? host : "[" + host + "]";
  }

  private static LinkException bad(String text, String why) {
    return new LinkException(
        LinkException.Kind.BAD_ADDRESS,
        "'"
            + text
            + "' is no port: "
            + why
            + "; use a port name, practice:, usb:VENDOR:PRODUCT:SERIAL, tcp://host:port or"
            + " rfc2217://host:port");
  }
}
