package dev.gantrywright.link.remote;

import dev.gantrywright.link.SerialSettings;
import java.util.List;
import org.apache.commons.net.telnet.TelnetOptionHandler;

/** The telnet COM-PORT option, number 44 (RFC 2217). */
final class ComPortOption extends TelnetOptionHandler {
  static final int OPTION = 44;
  static final int SET_BAUDRATE = 1;
  static final int SET_DATASIZE = 2;
  static final int SET_PARITY = 3;
  static final int SET_STOPSIZE = 4;
  static final int SET_CONTROL = 5;

  /** What a server adds to a command in its answer. */
  static final int FROM_SERVER = 100;

  static final int DTR_ON = 8;
  static final int DTR_OFF = 9;
  static final int RTS_ON = 11;
  static final int RTS_OFF = 12;
  private static final int NO_FLOW_CONTROL = 1;

  private volatile int confirmedBaud;

  ComPortOption() {
    super(OPTION, true, false, true, true);
  }

  int confirmedBaud() {
    return confirmedBaud;
  }

  /** The subnegotiations that ask for these settings. */
  static List<int[]> settings(SerialSettings s) {
    int baud = s.baud();
    return List.of(
        new int[] {
          OPTION, SET_BAUDRATE, baud >>> 24 & 255, baud >>> 16 & 255, baud >>> 8 & 255, baud & 255
        },
        new int[] {OPTION, SET_DATASIZE, s.dataBits()},
        new int[] {OPTION, SET_PARITY, parity(s)},
        new int[] {OPTION, SET_STOPSIZE, s.stopBits()},
        control(NO_FLOW_CONTROL));
  }

  static int[] control(int value) {
    return new int[] {OPTION, SET_CONTROL, value};
  }

  private static int parity(SerialSettings s) {
    return switch (s.parity()) {
      case NONE -> 1;
      case ODD -> 2;
      case EVEN -> 3;
    };
  }

  @Override
  public int[] answerSubnegotiation(int[] data, int length) {
    if (length >= 6 && data[0] == OPTION && data[1] == SET_BAUDRATE + FROM_SERVER) {
      confirmedBaud =
          (data[2] & 255) << 24 | (data[3] & 255) << 16 | (data[4] & 255) << 8 | (data[5] & 255);
    }
    return null;
  }

  @Override
  public int[] startSubnegotiationLocal() {
    return null;
  }

  @Override
  public int[] startSubnegotiationRemote() {
    return null;
  }
}
