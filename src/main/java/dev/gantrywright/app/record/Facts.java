package dev.gantrywright.app.record;

import java.util.List;
import java.util.Optional;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Small steps of writing facts. */
final class Facts {
  private Facts() {}

  static ObjectNode object() {
    return JsonMapper.shared().createObjectNode();
  }

  /** Leaves an unknown out. */
  static void put(ObjectNode facts, String key, Optional<String> value) {
    value.ifPresent(text -> facts.put(key, text));
  }

  static void texts(ObjectNode facts, String key, List<String> texts) {
    ArrayNode list = facts.putArray(key);
    texts.forEach(list::add);
  }
}
