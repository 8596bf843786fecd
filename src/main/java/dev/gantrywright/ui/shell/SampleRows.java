package dev.gantrywright.ui.shell;

import dev.gantrywright.link.ByteLog;
import dev.gantrywright.link.LogEntry.Direction;
import dev.gantrywright.ui.state.LogFollower;
import java.util.List;

/** Rows of a made-up log that hold every character that a machine may say. */
final class SampleRows {
  private static final byte FIRST = ' ';
  private static final byte LAST = '~';

  private SampleRows() {}

  static List<String> of(int count) {
    byte[] line = new byte[LAST - FIRST + 2];
    for (int i = 0; i < line.length - 1; i++) {
      line[i] = (byte) (FIRST + i);
    }
    line[line.length - 1] = '\n';
    ByteLog log = ByteLog.inMemory(count * 2 * line.length, 0);
    for (int i = 0; i < count; i++) {
      log.record(Direction.values()[i % 2], line, line.length, i * 1_234_567L);
    }
    return new LogFollower(log, "", count).look().rows();
  }
}
