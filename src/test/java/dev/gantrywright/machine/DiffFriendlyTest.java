package dev.gantrywright.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Saved profiles keep their order, and one changed value is one changed line. */
class DiffFriendlyTest {
  @ParameterizedTest
  @ValueSource(strings = {"heron", "sandpiper", "guillemot"})
  void oneChangedValueIsOneChangedLine(String name) throws Exception {
    PrinterProfile profile = ProfileStore.read(Path.of("demo-profiles", name + ".printer.json"));
    List<String> before = lines(profile);
    List<String> paths = new ArrayList<>();
    leaves("", ProfileValues.tree(profile), paths);
    int changed = 0;
    for (String path : paths) {
      Object other = other(path, ProfileValues.get(profile, path).orElseThrow());
      if (other == null) {
        continue;
      }
      List<String> after;
      try {
        after = lines(ProfileValues.with(profile, path, other));
      } catch (ProfileProblem outsideItsRange) {
        continue;
      }
      assertThat(after).as(path).hasSameSizeAs(before);
      int differing = 0;
      for (int i = 0; i < before.size(); i++) {
        differing += before.get(i).equals(after.get(i)) ? 0 : 1;
      }
      assertThat(differing).as(path).isEqualTo(1);
      changed++;
    }
    assertThat(changed).isGreaterThan(60);
  }

  @ParameterizedTest
  @ValueSource(strings = {"heron", "sandpiper", "guillemot"})
  void theOrderOfKeysInTheFileDoesNotMatter(String name) throws Exception {
    PrinterProfile profile = ProfileStore.read(Path.of("demo-profiles", name + ".printer.json"));
    ObjectNode turned = turned(ProfileValues.tree(profile));

    PrinterProfile read =
        ProfileStore.parse(name, turned.toString().getBytes(StandardCharsets.UTF_8));

    // Axes, endstops and heaters stand in the user's own order; all else has the format's.
    assertThat(lines(read)).containsExactlyInAnyOrderElementsOf(lines(profile));
    assertThat(lines(read).get(1)).isEqualTo(lines(profile).get(1));
  }

  /** The same with the keys of every object but the named groups in reverse. */
  private static ObjectNode turned(ObjectNode tree) {
    ObjectNode out = tree.objectNode();
    List<String> keys = new ArrayList<>(tree.propertyNames());
    java.util.Collections.reverse(keys);
    for (String key : keys) {
      JsonNode value = tree.get(key);
      out.set(key, value instanceof ObjectNode object ? turned(object) : value);
    }
    return out;
  }

  private static List<String> lines(PrinterProfile profile) {
    return new String(ProfileStore.bytes(profile), StandardCharsets.UTF_8)
        .lines()
        .map(line -> line.replaceAll(",$", ""))
        .toList();
  }

  private static void leaves(String at, JsonNode node, List<String> paths) {
    if (node instanceof ObjectNode object) {
      object
          .properties()
          .forEach(
              entry ->
                  leaves(
                      at.isEmpty() ? entry.getKey() : at + "." + entry.getKey(),
                      entry.getValue(),
                      paths));
    } else if (!node.isArray()) {
      paths.add(at);
    }
  }

  /** Another value that the field takes; null where none is tried. */
  private static Object other(String path, JsonNode value) {
    if (path.equals("format")) {
      return null;
    }
    if (value.isBoolean()) {
      return !value.asBoolean();
    }
    if (value.isString()) {
      boolean free = Fields.at(path).map(f -> f.type() == FieldType.TEXT).orElse(false);
      return free ? value.asString() + " x" : null;
    }
    if (value.isIntegralNumber()) {
      return Fields.at(path).map(f -> f.type() == FieldType.INTEGER).orElse(false)
          ? (Object) (value.asInt() + 1)
          : (Object) (value.asDouble() + 1);
    }
    return value.asDouble() + 0.25;
  }
}
