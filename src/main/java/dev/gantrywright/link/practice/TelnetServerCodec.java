package dev.gantrywright.link.practice;

import java.io.ByteArrayOutputStream;
import java.util.Arrays;
import java.util.function.IntConsumer;

/**
 * The serving side of telnet with the COM-PORT option (RFC 854, RFC 2217). It begins nothing: only
 * a client that speaks telnet is answered so, and plain bytes pass as they are.
 */
final class TelnetServerCodec {
  private static final int IAC = 255;
  private static final int DONT = 254;
  private static final int DO = 253;
  private static final int WONT = 252;
  private static final int WILL = 251;
  private static final int SB = 250;
  private static final int SE = 240;

  private static final int BINARY = 0;
  private static final int SUPPRESS_GO_AHEAD = 3;
  private static final int COM_PORT = 44;
  private static final int SET_BAUDRATE = 1;
  private static final int LAST_SETTING = 5;
  private static final int FROM_SERVER = 100;
  private static final int LONGEST_OPTION = 256;

  private enum State {
    DATA,
    COMMAND,
    OPTION,
    INSIDE,
    INSIDE_COMMAND
  }

  private final IntConsumer baudSet;
  private final ByteArrayOutputStream replies = new ByteArrayOutputStream();
  private final ByteArrayOutputStream option = new ByteArrayOutputStream();
  private final boolean[] agreedDo = new boolean[256];
  private final boolean[] agreedWill = new boolean[256];
  private State state = State.DATA;
  private int verb;
  private boolean telnet;
  private int baud;

  /**
   * @param baud what is in force before a client sets it, bit/s
   * @param baudSet told when a client sets another
   */
  TelnetServerCodec(int baud, IntConsumer baudSet) {
    this.baud = baud;
    this.baudSet = baudSet;
  }

  /** The data bytes among what arrived; replies to the rest wait in {@link #takeReplies}. */
  byte[] decode(byte[] bytes, int count) {
    ByteArrayOutputStream data = new ByteArrayOutputStream(count);
    for (int i = 0; i < count; i++) {
      step(bytes[i] & 0xFF, data);
    }
    return data.toByteArray();
  }

  /** What has to go to the client outside the data. */
  byte[] takeReplies() {
    byte[] out = replies.toByteArray();
    replies.reset();
    return out;
  }

  /** Data as it goes on the wire: doubled where telnet would take it for a command. */
  byte[] encode(byte[] data) {
    if (!telnet) {
      return data;
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream(data.length + 8);
    for (byte b : data) {
      out.write(b);
      if ((b & 0xFF) == IAC) {
        out.write(b);
      }
    }
    return out.toByteArray();
  }

  private void step(int b, ByteArrayOutputStream data) {
    switch (state) {
      case DATA -> {
        if (b == IAC) {
          state = State.COMMAND;
        } else {
          data.write(b);
        }
      }
      case COMMAND -> command(b, data);
      case OPTION -> {
        negotiate(verb, b);
        state = State.DATA;
      }
      case INSIDE -> {
        if (b == IAC) {
          state = State.INSIDE_COMMAND;
        } else if (option.size() < LONGEST_OPTION) {
          option.write(b);
        }
      }
      case INSIDE_COMMAND -> {
        if (b == SE) {
          subnegotiation(option.toByteArray());
          state = State.DATA;
        } else {
          if (option.size() < LONGEST_OPTION) {
            option.write(b);
          }
          state = State.INSIDE;
        }
      }
    }
  }

  private void command(int b, ByteArrayOutputStream data) {
    if (b == IAC) {
      data.write(b);
      state = State.DATA;
    } else if (b == SB) {
      telnet = true;
      option.reset();
      state = State.INSIDE;
    } else if (b >= WILL) {
      telnet = true;
      verb = b;
      state = State.OPTION;
    } else {
      state = State.DATA;
    }
  }

  private void negotiate(int said, int what) {
    boolean known = what == BINARY || what == SUPPRESS_GO_AHEAD || what == COM_PORT;
    switch (said) {
      case DO -> agree(agreedWill, known, what, WILL, WONT);
      case WILL -> agree(agreedDo, known, what, DO, DONT);
      case DONT -> agreedWill[what] = false;
      case WONT -> agreedDo[what] = false;
      default -> throw new IllegalStateException("telnet command " + said);
    }
  }

  /** Answers once, so that two polite ends do not answer each other for ever. */
  private void agree(boolean[] agreed, boolean known, int what, int yes, int no) {
    if (!agreed[what]) {
      agreed[what] = known;
      send(IAC, known ? yes : no, what);
    }
  }

  private void subnegotiation(byte[] said) {
    if (said.length < 2 || said[0] != COM_PORT) {
      return;
    }
    int command = said[1] & 0xFF;
    if (command < SET_BAUDRATE || command > LAST_SETTING) {
      return;
    }
    byte[] value = Arrays.copyOfRange(said, 2, said.length);
    if (command == SET_BAUDRATE && value.length == 4) {
      int wanted =
          (value[0] & 255) << 24 | (value[1] & 255) << 16 | (value[2] & 255) << 8 | value[3] & 255;
      if (wanted > 0) {
        baud = wanted;
        baudSet.accept(baud);
      }
      value =
          new byte[] {(byte) (baud >> 24), (byte) (baud >> 16), (byte) (baud >> 8), (byte) baud};
    }
    send(IAC, SB, COM_PORT, command + FROM_SERVER);
    for (byte b : value) {
      send(b & 0xFF);
      if ((b & 0xFF) == IAC) {
        send(IAC);
      }
    }
    send(IAC, SE);
  }

  private void send(int... bytes) {
    for (int b : bytes) {
      replies.write(b);
    }
  }
}
