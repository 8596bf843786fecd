package dev.gantrywright.names;

import dev.gantrywright.names.FolderTexts.Placed;
import dev.gantrywright.names.WordReader.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;

/** What each part of a list stands for: by designator, by comment, by the folder's order. */
final class PartDims {
  /**
   * One part.
   *
   * @param words what names it
   * @param dims the axis, end and heater that it may speak of
   * @param note the text that names it; null where none does
   * @param key tells it from the other parts among sibling lists
   */
  record Part(List<Word> words, List<Dims> dims, String note, String key) {}

  private static final double NAMED = 1;
  private static final double BY_COMMENT = 0.95;
  private static final double BY_ORDER = 0.85;
  private static final double BY_HABIT = 0.6;

  private static final Pattern OF_ORDER =
      Pattern.compile("order|list|table|reihenfolge|ordre|orden|tables|listes");

  private final WordReader words;
  private final DimsReader dims;
  private final ListOrder order;
  private final FolderTexts folder;
  private final int[] axisOrder;
  private final Map<String, List<String>> rows = new HashMap<>();

  PartDims(WordReader words, DimsReader dims, FolderTexts folder) {
    this.words = words;
    this.dims = dims;
    this.order = new ListOrder(words, dims);
    this.folder = folder;
    this.axisOrder = folderOrder();
  }

  /** The order of axes that index constants or a file's opening give, else x, y, z, e. */
  private int[] folderOrder() {
    int[] byIndex = new int[words.axes().names().size()];
    int known = 0;
    for (Placed placed : folder.settings()) {
      String value = placed.setting().value();
      if (value.isEmpty() || !Character.isDigit(value.charAt(0)) && value.charAt(0) != '(') {
        continue;
      }
      List<Word> name = words.identifier(placed.setting().name());
      OptionalDouble number = Arithmetic.of(value);
      if (name.size() > 3 || number.isEmpty() || !indexName(name)) {
        continue;
      }
      int bits = dims.read(name, 1).axes();
      int at = (int) number.getAsDouble();
      if (Integer.bitCount(bits) == 1 && at >= 0 && at < byIndex.length && byIndex[at] == 0) {
        byIndex[at] = bits;
        known++;
      }
    }
    if (known >= 3 && byIndex[0] != 0 && byIndex[1] != 0 && byIndex[2] != 0) {
      return byIndex;
    }
    for (String opening : folder.openings()) {
      boolean speaks = OF_ORDER.matcher(opening.toLowerCase(Locale.ROOT)).find();
      for (int count = 4; speaks && count >= 3; count--) {
        int[] told = order.axes(opening, count);
        if (told != null) {
          return whole(told);
        }
      }
    }
    return whole(new int[] {Axes.X, Axes.Y, Axes.Z, Axes.E});
  }

  /** The order with the axes that it leaves out at the end. */
  private int[] whole(int[] told) {
    int[] all = java.util.Arrays.copyOf(told, words.axes().names().size());
    int seen = 0;
    for (int bits : told) {
      seen |= bits;
    }
    int at = told.length;
    for (int bit : new int[] {Axes.X, Axes.Y, Axes.Z, Axes.E}) {
      if ((seen & bit) == 0 && at < all.length) {
        all[at++] = bit;
      }
    }
    // further extruders follow the first by habit; where a rotary axis stands nobody can guess
    for (int bit : words.axes().furtherExtruders()) {
      if ((seen & bit) == 0 && at < all.length) {
        all[at++] = bit;
      }
    }
    return all;
  }

  private boolean indexName(List<Word> name) {
    boolean axis = false;
    for (Word word : name) {
      boolean letter = Integer.bitCount(words.axes().of(word.text())) == 1;
      boolean extruder = Axes.extruder(word.text());
      boolean index =
          switch (word.text()) {
            case "axis",
                "ax",
                "axe",
                "achse",
                "eje",
                "asse",
                "idx",
                "index",
                "i",
                "k",
                "motor",
                "m",
                "id",
                "n",
                "no" ->
                true;
            default -> false;
          };
      if (!letter && !extruder && !index) {
        return false;
      }
      axis |= letter || extruder;
    }
    return axis && name.size() > 1;
  }

  List<Part> of(Placed placed, List<Word> own, ListParts list) {
    int count = list.parts().size();
    Dims named = dims.read(own, NAMED);
    Dims told = dims.read(words.comment(placed.setting().section()), 0.4);
    boolean designated = false;
    boolean noted = true;
    int columns = 1;
    int rowCount = 1;
    for (ListParts.Part part : list.parts()) {
      designated |= !part.designator().isEmpty();
      noted &= !part.note().isEmpty();
      columns = Math.max(columns, part.column() + 1);
      rowCount = Math.max(rowCount, part.row() + 1);
    }
    if (designated || noted) {
      return listed(list, named, told);
    }
    if (rowCount > 1 && rowCount * columns == count) {
      return table(placed, list, named, rowCount, columns);
    }
    return row(placed, own, count, named, told);
  }

  private List<Part> listed(ListParts list, Dims named, Dims told) {
    List<Part> parts = new ArrayList<>();
    for (ListParts.Part part : list.parts()) {
      String note = part.designator().isEmpty() ? part.note() : part.designator();
      List<Word> names = new ArrayList<>();
      for (String piece : note.split("[^\\p{L}\\p{N}_]+")) {
        names.addAll(piece.isEmpty() ? List.of() : words.identifier(piece));
      }
      String beside = part.designator().isEmpty() ? part.note() : note + " " + part.note();
      Dims own = dims.read(names, NAMED);
      parts.add(new Part(names, List.of(named.or(own).or(told)), beside, template(names)));
    }
    return parts;
  }

  /** A flat list without names: axes in their order, two ends, two heaters, or told columns. */
  private List<Part> row(Placed placed, List<Word> own, int count, Dims named, Dims told) {
    int[] axes = named.axes() == 0 ? axes(placed, count) : null;
    if (axes != null) {
      return spread(count, i -> List.of(named.axis(axes[i], BY_COMMENT)));
    }
    int[] heaters = named.heater() == 0 ? heaters(placed, count) : null;
    if (heaters != null) {
      return spread(count, i -> List.of(named.heater(heaters[i], BY_COMMENT)));
    }
    List<String> columns = columns(placed, own, count);
    if (columns != null) {
      List<Part> parts = new ArrayList<>();
      for (String column : columns) {
        List<Word> names = words.comment(column);
        Dims way = named.or(dims.read(names, BY_COMMENT)).or(told);
        parts.add(new Part(names, List.of(way), column, template(names)));
      }
      return parts;
    }
    return spread(count, i -> habits(placed, named, told, count, i));
  }

  private int[] axes(Placed placed, int count) {
    for (String text : List.of(placed.trailing(), placed.lead(), placed.setting().section())) {
      int[] told = order.axes(text, count);
      if (told != null) {
        return told;
      }
    }
    return null;
  }

  private int[] heaters(Placed placed, int count) {
    int[] told = order.heaters(placed.trailing(), count);
    return told != null ? told : order.heaters(placed.lead(), count);
  }

  /** The column titles of a row: beside it, above it, or above an earlier row like it. */
  private List<String> columns(Placed placed, List<Word> own, int count) {
    String key = template(own) + count;
    for (String text : List.of(placed.trailing(), placed.lead())) {
      List<String> titles = ListOrder.parts(text, count);
      if (titles != null && speaking(titles)) {
        if (text.equals(placed.lead()) || !rows.containsKey(key)) {
          rows.put(key, titles);
        }
        List<String> above = rows.get(key);
        List<String> both = new ArrayList<>();
        for (int i = 0; i < count; i++) {
          boolean same = above.get(i).equals(titles.get(i));
          both.add(same ? titles.get(i) : above.get(i) + " " + titles.get(i));
        }
        List<String> lead =
            text.equals(placed.lead()) ? null : ListOrder.parts(placed.lead(), count);
        if (lead != null && speaking(lead)) {
          both.clear();
          for (int i = 0; i < count; i++) {
            both.add(lead.get(i) + ", " + titles.get(i));
          }
          rows.put(key, both);
        }
        return both;
      }
    }
    return rows.get(key);
  }

  private boolean speaking(List<String> titles) {
    long known =
        titles.stream()
            .filter(
                title ->
                    !UnitReader.ofComment(title).isEmpty()
                        || words.comment(title).stream().anyMatch(word -> !word.hits().isEmpty()))
            .count();
    return known * 2 >= titles.size();
  }

  private List<Dims> habits(Placed placed, Dims named, Dims told, int count, int i) {
    List<Dims> ways = new ArrayList<>();
    boolean axisOpen = named.axes() == 0;
    if (axisOpen && count <= axisOrder.length && axisOrder[i] != 0) {
      double strength = count >= 3 ? BY_ORDER : 0.4;
      ways.add(named.axis(axisOrder[i], strength).or(told));
    }
    if (count == 2 && named.end() == 0) {
      String text = placed.trailing() + "\n" + placed.lead();
      boolean upperFirst = order.upperFirst(text);
      int end = (i == 0) != upperFirst ? Dims.LOWER : Dims.UPPER;
      ways.add(named.end(end, order.bothEnds(text) ? BY_COMMENT : BY_ORDER).or(told));
    }
    if (count == 6 && axisOpen && named.end() == 0) {
      int axis = axisOrder[i / 2];
      ways.add(named.axis(axis, BY_HABIT).end(i % 2 == 0 ? Dims.LOWER : Dims.UPPER, BY_HABIT));
    }
    if (count <= 3 && named.heater() == 0) {
      ways.add(named.heater(i + 1, BY_HABIT).or(told));
    }
    if (ways.isEmpty()) {
      ways.add(named.or(told));
    }
    return ways;
  }

  /** Rows of columns: axis by end, end by axis, or axis by titles. */
  private List<Part> table(Placed placed, ListParts list, Dims named, int rowCount, int columns) {
    List<Part> parts = new ArrayList<>();
    List<String> titles =
        Optional.ofNullable(ListOrder.parts(placed.trailing(), columns))
            .filter(this::speaking)
            .orElseGet(() -> ListOrder.parts(placed.lead(), columns));
    int[] rowAxes = rowCount >= 3 ? orElse(axes(placed, rowCount), axisOrder) : null;
    int[] columnAxes = rowCount == 2 ? orElse(axes(placed, columns), axisOrder) : null;
    for (ListParts.Part part : list.parts()) {
      List<Word> names = List.of();
      Dims way = named;
      if (rowAxes != null && part.row() < rowAxes.length) {
        way = way.axis(rowAxes[part.row()], BY_ORDER);
        if (titles != null && speaking(titles)) {
          names = words.comment(titles.get(part.column()));
          way = way.or(dims.read(names, BY_COMMENT));
        } else if (columns == 2) {
          way = way.end(part.column() == 0 ? Dims.LOWER : Dims.UPPER, BY_ORDER);
        }
      } else if (columnAxes != null && part.column() < columnAxes.length) {
        way = way.axis(columnAxes[part.column()], BY_ORDER);
        way = way.end(part.row() == 0 ? Dims.LOWER : Dims.UPPER, BY_ORDER);
      }
      String note = titles == null ? null : titles.get(part.column());
      parts.add(new Part(names, List.of(way), note, "r" + template(names)));
    }
    return parts;
  }

  private static int[] orElse(int[] told, int[] usual) {
    return told != null ? told : usual;
  }

  private interface Ways {
    List<Dims> at(int index);
  }

  private static List<Part> spread(int count, Ways ways) {
    List<Part> parts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      parts.add(new Part(List.of(), ways.at(i), null, ""));
    }
    return parts;
  }

  private String template(List<Word> names) {
    StringBuilder key = new StringBuilder();
    for (Word word : names) {
      boolean open = words.axes().of(word.text()) != 0 || dims.isEnd(word) || dims.isHeater(word);
      key.append(open ? "*" : word.text()).append('_');
    }
    return key.toString();
  }
}
