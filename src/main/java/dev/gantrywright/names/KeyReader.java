package dev.gantrywright.names;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.IniDocument;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Lists the values of a folder's build settings with what stands beside them. */
final class KeyReader {
  private KeyReader() {}

  static List<KeyText> read(FirmwareFolder folder) {
    List<KeyText> keys = new ArrayList<>();
    for (IniDocument document : folder.buildSettings()) {
      String text = new String(document.bytes(), StandardCharsets.ISO_8859_1);
      for (IniDocument.Entry entry : document.entries()) {
        String comment =
            beside(text, entry.valueSpan().end()) + above(text, entry.keySpan().start());
        String section = entry.section();
        keys.add(
            new KeyText(
                document.path(),
                entry.line(),
                section,
                entry.key(),
                entry.value(),
                comment,
                false));
        for (BuildFlags.Define define : BuildFlags.of(entry.value())) {
          String value = entry.value().substring(define.start(), define.end());
          keys.add(
              new KeyText(document.path(), entry.line(), section, define.name(), value, "", true));
        }
      }
    }
    return keys;
  }

  private static String beside(String text, int from) {
    int end = text.indexOf('\n', from);
    String rest = text.substring(from, end < 0 ? text.length() : end).strip();
    return rest.startsWith(";") || rest.startsWith("#") ? rest.substring(1).strip() : "";
  }

  /** The comment lines directly above a key. */
  private static String above(String text, int keyStart) {
    StringBuilder above = new StringBuilder();
    int line = text.lastIndexOf('\n', Math.max(0, keyStart - 1));
    while (line > 0) {
      int start = text.lastIndexOf('\n', line - 1) + 1;
      String body = text.substring(start, line).strip();
      if (!body.startsWith(";") && !body.startsWith("#")) {
        break;
      }
      above.insert(0, "\n" + body.substring(1).strip());
      line = start - 1;
    }
    return above.toString();
  }
}
