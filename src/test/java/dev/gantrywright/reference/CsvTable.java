package dev.gantrywright.reference;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A small reader of the two reference tables (RFC 4180: quotes, doubled quotes, one header). */
final class CsvTable {
  private CsvTable() {}

  static List<Map<String, String>> read(String name) {
    try (InputStream in = CsvTable.class.getResourceAsStream("/reference/" + name)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      List<List<String>> lines = lines(text);
      List<Map<String, String>> rows = new ArrayList<>();
      for (List<String> line : lines.subList(1, lines.size())) {
        Map<String, String> row = new LinkedHashMap<>();
        for (int i = 0; i < lines.get(0).size(); i++) {
          row.put(lines.get(0).get(i), line.get(i));
        }
        rows.add(row);
      }
      return rows;
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }

  private static List<List<String>> lines(String text) {
    List<List<String>> lines = new ArrayList<>();
    List<String> line = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (quoted && c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
        cell.append('"');
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && c == ',') {
        line.add(cell.toString());
        cell.setLength(0);
      } else if (!quoted && c == '\n') {
        line.add(cell.toString());
        cell.setLength(0);
        lines.add(line);
        line = new ArrayList<>();
      } else if (quoted || c != '\r') {
        cell.append(c);
      }
    }
    if (cell.length() > 0 || !line.isEmpty()) {
      line.add(cell.toString());
      lines.add(line);
    }
    return lines;
  }
}
