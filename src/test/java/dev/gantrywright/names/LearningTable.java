package dev.gantrywright.names;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.FolderException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The table of how well learning does on the fixture firmware. Printed by {@code mvn -q test
 * -Dtest=LearningTableTest -Dnames.table=true}.
 */
public final class LearningTable {
  static final Path FIXTURES = Path.of("src/test/resources/names");

  /**
   * How learning did on one firmware.
   *
   * @param right fields whose macro and part were the first guess
   * @param sure answers given with confidence over the threshold, right or wrong
   * @param sureWrong such answers that are wrong, or for a field that the firmware does not carry
   * @param meanings meanings that were right, of {@code meaningsAsked}
   */
  record Row(
      String style,
      boolean heldOut,
      int fields,
      int right,
      int sure,
      List<String> wrong,
      List<String> sureWrong,
      int meanings,
      int meaningsAsked,
      List<String> meaningsWrong) {
    double accuracy() {
      return 100.0 * right / fields;
    }
  }

  private LearningTable() {}

  static List<Path> styles() {
    try (Stream<Path> all = Files.list(FIXTURES)) {
      return all.filter(style -> Files.exists(style.resolve("truth.json"))).sorted().toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  static Row row(Path style) {
    try {
      JsonNode truth = JsonMapper.shared().readTree(Files.readString(style.resolve("truth.json")));
      NameMap map = new Learner(McuNames.byShape()).learn(FirmwareFolder.read(style));
      return row(style.getFileName().toString(), truth, map);
    } catch (IOException | FolderException unreadable) {
      throw new IllegalStateException(unreadable);
    }
  }

  private static Row row(String style, JsonNode truth, NameMap map) {
    Map<String, String> expected = new LinkedHashMap<>();
    truth
        .get("fields")
        .properties()
        .forEach(one -> expected.put(one.getKey(), one.getValue().asString()));
    int right = 0;
    int sure = 0;
    List<String> wrong = new ArrayList<>();
    List<String> sureWrong = new ArrayList<>();
    for (Map.Entry<String, String> one : expected.entrySet()) {
      String got = map.entry(one.getKey()).map(LearningTable::shown).orElse("-");
      if (got.equals(one.getValue())) {
        right++;
      } else {
        wrong.add(one.getKey() + ": " + got + " instead of " + one.getValue());
      }
    }
    for (Map.Entry<String, NameEntry> one : map.fields().entrySet()) {
      if (one.getValue().sure()) {
        sure++;
        String got = shown(one.getValue());
        if (!got.equals(expected.get(one.getKey()))) {
          sureWrong.add(one.getKey() + ": " + got + " (" + one.getValue().confidence() + ")");
        }
      }
    }
    int meanings = 0;
    int asked = 0;
    List<String> meaningsWrong = new ArrayList<>();
    for (Map.Entry<String, JsonNode> one : truth.get("meanings").properties()) {
      asked++;
      String got = map.entry(one.getKey()).map(NameEntry::meaning).orElse("-");
      if (one.getValue().asString().equals(got)) {
        meanings++;
      } else {
        meaningsWrong.add(one.getKey() + ": " + got + " instead of " + one.getValue().asString());
      }
    }
    return new Row(
        style,
        truth.get("heldOut").asBoolean(),
        expected.size(),
        right,
        sure,
        wrong,
        sureWrong,
        meanings,
        asked,
        meaningsWrong);
  }

  private static String shown(NameEntry entry) {
    return entry.element() == null ? entry.macro() : entry.macro() + "[" + entry.element() + "]";
  }

  static String text(List<Row> rows) {
    StringBuilder out = new StringBuilder();
    out.append(
        String.format(
            "%-12s %-8s %6s %6s %8s %5s %10s %9s%n",
            "style", "held out", "fields", "right", "percent", "sure", "sure wrong", "meanings"));
    for (Row row : rows) {
      out.append(
          String.format(
              "%-12s %-8s %6d %6d %7.1f%% %5d %10d %5d/%d%n",
              row.style(),
              row.heldOut() ? "yes" : "",
              row.fields(),
              row.right(),
              row.accuracy(),
              row.sure(),
              row.sureWrong().size(),
              row.meanings(),
              row.meaningsAsked()));
    }
    return out.toString();
  }

  public static void main(String[] names) {
    List<Row> rows = new ArrayList<>();
    for (Path style : styles()) {
      String name = style.getFileName().toString();
      if (names.length == 0 || List.of(names).contains(name)) {
        rows.add(row(style));
      }
    }
    System.out.print(text(rows));
    for (Row row : rows) {
      if (names.length > 0) {
        row.wrong().forEach(line -> System.out.println(row.style() + " wrong: " + line));
        row.sureWrong().forEach(line -> System.out.println(row.style() + " SURE wrong: " + line));
        row.meaningsWrong().forEach(line -> System.out.println(row.style() + " meaning: " + line));
      }
    }
  }
}
