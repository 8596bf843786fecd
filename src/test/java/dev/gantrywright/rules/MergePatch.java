package dev.gantrywright.rules;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** JSON Merge Patch, RFC 7396 section 2. */
final class MergePatch {
  private MergePatch() {}

  static JsonNode apply(JsonNode target, JsonNode patch) {
    if (!(patch instanceof ObjectNode changes)) {
      return patch;
    }
    ObjectNode merged =
        target instanceof ObjectNode object
            ? object.deepCopy()
            : JsonNodeFactory.instance.objectNode();
    changes
        .properties()
        .forEach(
            change -> {
              if (change.getValue().isNull()) {
                merged.remove(change.getKey());
              } else {
                JsonNode before = merged.get(change.getKey());
                merged.set(change.getKey(), apply(before, change.getValue()));
              }
            });
    return merged;
  }
}
