package dev.gantrywright.machine;

import java.util.List;
import java.util.function.UnaryOperator;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Brings an older file to the current format, one step a version. */
final class Migrations {
  /** Step number i (from 0) turns format i + 1 into format i + 2; none is needed yet. */
  static final Migrations SHIPPED = new Migrations(List.of());

  private final List<UnaryOperator<ObjectNode>> steps;

  Migrations(List<UnaryOperator<ObjectNode>> steps) {
    this.steps = List.copyOf(steps);
  }

  /** The file says a format that this version cannot know. */
  static final class UnknownFormat extends Exception {
    private static final long serialVersionUID = 1L;

    UnknownFormat(String text) {
      super(text);
    }
  }

  int newest() {
    return steps.size() + 1;
  }

  ObjectNode toCurrent(ObjectNode file) throws UnknownFormat {
    JsonNode given = file.get("format");
    if (given == null) {
      throw new UnknownFormat(
          "the key \"format\" is missing; a file of this version says \"format\": " + newest());
    }
    if (!given.isIntegralNumber() || given.asInt() < 1) {
      throw new UnknownFormat("found " + given + "; the format is a whole number from 1");
    }
    if (given.asInt() > newest()) {
      throw new UnknownFormat(
          "the file has format "
              + given
              + ", this version reads up to "
              + newest()
              + "; open it with a newer version");
    }
    ObjectNode at = file;
    for (int format = given.asInt(); format < newest(); format++) {
      at = steps.get(format - 1).apply(at);
      at.put("format", format + 1);
    }
    return at;
  }
}
