package dev.gantrywright.link.remote;

import java.util.Map;
import java.util.OptionalInt;

/** The option's numbers under the names of RFC 2217, for the table of published values. */
public final class ComPortCodes {
  private static final Map<String, Integer> CODES =
      Map.of(
          "COM_PORT_OPTION", ComPortOption.OPTION,
          "SET_BAUDRATE", ComPortOption.SET_BAUDRATE,
          "SET_DATASIZE", ComPortOption.SET_DATASIZE,
          "SET_PARITY", ComPortOption.SET_PARITY,
          "SET_STOPSIZE", ComPortOption.SET_STOPSIZE,
          "SET_CONTROL", ComPortOption.SET_CONTROL,
          "SET_CONTROL_DTR_ON", ComPortOption.DTR_ON,
          "SET_CONTROL_DTR_OFF", ComPortOption.DTR_OFF,
          "SET_CONTROL_RTS_ON", ComPortOption.RTS_ON,
          "SET_CONTROL_RTS_OFF", ComPortOption.RTS_OFF);

  private ComPortCodes() {}

  public static OptionalInt code(String name) {
    Integer code = CODES.get(name);
    return code == null ? OptionalInt.empty() : OptionalInt.of(code);
  }

  public static int fromServer(int command) {
    return command + ComPortOption.FROM_SERVER;
  }

  public static Class<?> owner() {
    return ComPortOption.class;
  }
}
