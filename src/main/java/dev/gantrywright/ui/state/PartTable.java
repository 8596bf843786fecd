package dev.gantrywright.ui.state;

import dev.gantrywright.machine.Field;
import dev.gantrywright.machine.Fields;
import dev.gantrywright.machine.PrinterProfile;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Sorts every field of a profile into the parts of the machine, after {@code parts.json}. */
public final class PartTable {
  /** Written by the program itself, or edited where the findings are. */
  private static final Set<String> NOT_TYPED = Set.of("format");

  private static final List<String> ENDS = List.of("Min", "Max");

  private final Map<String, List<Part.Group>> layout;
  private List<Collection<String>> knownFor = List.of();
  private List<Part> known = List.of();

  private PartTable(Map<String, List<Part.Group>> layout) {
    this.layout = layout;
  }

  public static PartTable shipped() {
    try (InputStream in =
        PartTable.class.getResourceAsStream("/dev/gantrywright/ui/describe/parts.json")) {
      Map<String, List<Part.Group>> layout = new java.util.LinkedHashMap<>();
      JsonMapper.shared()
          .readTree(in)
          .properties()
          .forEach(part -> layout.put(part.getKey(), groups(part.getValue())));
      return new PartTable(layout);
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  private static List<Part.Group> groups(JsonNode array) {
    List<Part.Group> groups = new ArrayList<>();
    for (JsonNode group : array) {
      List<Part.Row> rows = new ArrayList<>();
      for (JsonNode row : group.get("fields")) {
        String[] when =
            row.has("when") ? row.get("when").asString().split("=") : new String[] {"", ""};
        String path = row.isString() ? row.asString() : row.get("path").asString();
        rows.add(new Part.Row(path, when[0], when[1]));
      }
      groups.add(new Part.Group(group.get("title").asString(), rows));
    }
    return groups;
  }

  /** The parts of this printer, in the order of the outline. */
  public List<Part> parts(PrinterProfile profile) {
    List<Collection<String>> asked =
        List.of(
            List.copyOf(profile.axes().keySet()),
            List.copyOf(endstops(profile)),
            List.copyOf(profile.heaters().keySet()));
    if (!asked.equals(knownFor)) {
      known = List.copyOf(laidOut(profile));
      knownFor = asked;
    }
    return known;
  }

  private List<Part> laidOut(PrinterProfile profile) {
    List<Part> parts = new ArrayList<>();
    for (String key : layout.keySet()) {
      if (key.endsWith(".*")) {
        String group = key.substring(0, key.length() - 2);
        for (String name : names(profile, group)) {
          parts.add(part(group + "." + name, key, group + "." + name + "."));
        }
      } else {
        parts.add(part(key, key, ""));
      }
    }
    return parts;
  }

  /** The part to which a value or finding belongs. */
  public Optional<Part> partOf(PrinterProfile profile, String path) {
    return parts(profile).stream().filter(part -> part.holds(path)).findFirst();
  }

  /** The field that decides whether a row is shown: one of the same part, or of the printer. */
  private static String when(String prefix, String path) {
    return path.isEmpty() || Fields.at(prefix + path).isEmpty() ? path : prefix + path;
  }

  private Part part(String id, String key, String prefix) {
    Set<String> placed = new HashSet<>();
    List<Part.Group> groups = new ArrayList<>();
    for (Part.Group group : layout.get(key)) {
      List<Part.Row> rows = new ArrayList<>();
      for (Part.Row row : group.rows()) {
        String path = prefix + row.path();
        if (Fields.at(path).isPresent() && placed.add(path)) {
          rows.add(new Part.Row(path, when(prefix, row.whenPath()), row.whenValue()));
        }
      }
      if (!rows.isEmpty()) {
        groups.add(new Part.Group(group.title(), rows));
      }
    }
    List<Part.Row> others = others(id, placed);
    if (!others.isEmpty()) {
      groups.add(new Part.Group("more", others));
    }
    return new Part(id, PlaceNames.part(id), groups);
  }

  /** Fields that the layout forgot still get a row: no value is out of reach. */
  private List<Part.Row> others(String id, Set<String> placed) {
    List<Part.Row> rows = new ArrayList<>();
    String star = id.indexOf('.') < 0 ? id + "." : id.substring(0, id.indexOf('.')) + ".*.";
    String name = id.substring(id.indexOf('.') + 1);
    for (Field field : Fields.all()) {
      boolean here =
          field.path().startsWith(star) || id.equals("printer") && homeless(field.path());
      String path = field.at(name);
      if (here && !placed.contains(path) && !NOT_TYPED.contains(path)) {
        rows.add(new Part.Row(path, "", ""));
      }
    }
    return rows;
  }

  private boolean homeless(String path) {
    for (Map.Entry<String, List<Part.Group>> entry : layout.entrySet()) {
      String key = entry.getKey();
      boolean listed =
          entry.getValue().stream()
              .flatMap(group -> group.rows().stream())
              .anyMatch(row -> row.path().equals(path));
      if (path.startsWith(key + ".") || listed) {
        return false;
      }
    }
    return true;
  }

  private static Collection<String> names(PrinterProfile profile, String group) {
    return switch (group) {
      case "axes" -> profile.axes().keySet();
      case "heaters" -> profile.heaters().keySet();
      default -> endstops(profile);
    };
  }

  /** Both ends of every axis that travels, fitted or not, then what else the profile names. */
  private static Set<String> endstops(PrinterProfile profile) {
    Set<String> names = new LinkedHashSet<>();
    profile
        .axes()
        .forEach(
            (axis, values) -> {
              for (String end : ENDS) {
                if (values.travelMax() != null || profile.endstops().containsKey(axis + end)) {
                  names.add(axis + end);
                }
              }
            });
    names.addAll(profile.endstops().keySet());
    return names;
  }
}
