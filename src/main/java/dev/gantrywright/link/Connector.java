package dev.gantrywright.link;

/**
 * Opens one line, as often as it is asked to: after an unplugged cable, a reset, another baud rate.
 */
@FunctionalInterface
public interface Connector {
  /**
   * Opens the line for this program alone.
   *
   * @throws LinkException saying why not, and what to try
   */
  Transport open(SerialSettings settings) throws LinkException;
}
