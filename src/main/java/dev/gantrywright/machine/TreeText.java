package dev.gantrywright.machine;

import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.Map;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** A JSON tree without what says nothing, and its text. */
final class TreeText {
  private TreeText() {}

  /** Removes nulls, and objects and lists that are empty, in place. */
  static ObjectNode pruned(ObjectNode tree) {
    Iterator<Map.Entry<String, JsonNode>> entries = tree.properties().iterator();
    while (entries.hasNext()) {
      JsonNode value = entries.next().getValue();
      if (value instanceof ObjectNode object) {
        pruned(object);
      } else if (value.isArray()) {
        value.forEach(TreeText::pruneElement);
      }
      if (value.isNull() || (value.isContainer() && value.isEmpty())) {
        entries.remove();
      }
    }
    return tree;
  }

  private static void pruneElement(JsonNode element) {
    if (element instanceof ObjectNode object) {
      pruned(object);
    }
  }

  static byte[] bytes(ObjectNode tree) {
    String text =
        ProfileFormat.MAPPER.writer().with(ProfileFormat.printer()).writeValueAsString(tree);
    return (text + "\n").getBytes(StandardCharsets.UTF_8);
  }
}
