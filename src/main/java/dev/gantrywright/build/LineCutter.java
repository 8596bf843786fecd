package dev.gantrywright.build;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/** Cuts a stream of bytes into lines; a line beyond the cap is handed over in pieces. */
final class LineCutter {
  private final int longest;
  private final Consumer<String> onLine;
  private final ByteArrayOutputStream line = new ByteArrayOutputStream();
  private boolean afterReturn;

  LineCutter(int longest, Consumer<String> onLine) {
    this.longest = longest;
    this.onLine = onLine;
  }

  void take(byte[] bytes, int count) {
    for (int i = 0; i < count; i++) {
      byte b = bytes[i];
      if (b == '\n' && afterReturn) {
        afterReturn = false;
        continue;
      }
      afterReturn = b == '\r';
      if (b == '\n' || b == '\r') {
        flush();
      } else {
        line.write(b);
        if (line.size() >= longest) {
          flush();
        }
      }
    }
  }

  void end() {
    if (line.size() > 0) {
      flush();
    }
  }

  /** UTF-8 with a mark for what is none; colours and other terminal controls are left out. */
  private void flush() {
    String text = line.toString(StandardCharsets.UTF_8);
    line.reset();
    onLine.accept(text.replaceAll("\u001B\\[[0-9;]*[A-Za-z]", "").replace("\0", ""));
  }
}
