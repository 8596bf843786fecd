package dev.gantrywright.machine;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.stream.Collectors;
import tools.jackson.core.JacksonException;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamReadException;
import tools.jackson.databind.DatabindException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.exc.MismatchedInputException;
import tools.jackson.databind.node.ObjectNode;

/** Reads the two kinds of JSON file; every problem names file, line, column and key. */
final class JsonStore {
  /** A description is a few kilobytes; what is larger is no description. */
  static final int LARGEST_BYTES = 4 << 20;

  private JsonStore() {}

  static byte[] bytes(Path file) throws ProfileProblem {
    String name = file.toString();
    try {
      BasicFileAttributes found = Files.readAttributes(file, BasicFileAttributes.class);
      // Opening a pipe would wait for a writer for ever.
      if (found.isOther()) {
        throw whole(name, "is a pipe or a device; give a file");
      }
      if (found.size() > LARGEST_BYTES) {
        throw whole(name, "is larger than 4 MiB, so it is no printer or board description");
      }
      return Files.readAllBytes(file);
    } catch (NoSuchFileException e) {
      throw whole(name, "no such file");
    } catch (IOException e) {
      if (Files.isDirectory(file)) {
        throw whole(name, "is a folder; give the file in it");
      }
      if (e instanceof AccessDeniedException) {
        throw whole(name, "may not be read; check its permissions");
      }
      throw whole(name, "cannot be read: " + e.getMessage());
    }
  }

  static ProfileProblem whole(String file, String text) {
    return new ProfileProblem(file, 0, 0, "", text);
  }

  /** The text as an object, brought to the current format. */
  static ObjectNode tree(String file, byte[] bytes) throws ProfileProblem {
    JsonNode root;
    try {
      root = ProfileFormat.MAPPER.readTree(bytes);
    } catch (JacksonException e) {
      throw problem(file, e);
    }
    if (!(root instanceof ObjectNode object)) {
      throw new ProfileProblem(file, 1, 1, "", "holds no JSON object; a description starts with {");
    }
    try {
      return Migrations.SHIPPED.toCurrent(object);
    } catch (Migrations.UnknownFormat e) {
      Located.Place place = Located.of(bytes).at("format");
      throw new ProfileProblem(file, place.line(), place.column(), "format", e.getMessage());
    }
  }

  /**
   * Refuses the other kind of description: one that has sections of that kind alone and none that
   * only the wanted kind has. Unknown keys are kept, so it would else pass for an empty one.
   */
  static void refuseOther(String file, ObjectNode tree, Shape wanted, Shape other)
      throws ProfileProblem {
    if (alone(tree, other, wanted) && !alone(tree, wanted, other)) {
      throw whole(
          file,
          other == Shape.SHEET
              ? "is a board sheet; give a printer profile, *.printer.json"
              : "is a printer profile; give a board sheet, *.board.json");
    }
  }

  private static boolean alone(ObjectNode tree, Shape one, Shape other) {
    return one.index().keySet().stream()
        .anyMatch(key -> tree.has(key) && !other.index().containsKey(key));
  }

  static <T> T bind(String file, byte[] bytes, ObjectNode tree, Class<T> type)
      throws ProfileProblem {
    try {
      return ProfileFormat.MAPPER.treeToValue(tree, type);
    } catch (DatabindException e) {
      String key = key(e);
      Located.Place place = Located.of(bytes).at(key);
      throw new ProfileProblem(file, place.line(), place.column(), key, wrongValue(e, key, tree));
    } catch (JacksonException e) {
      throw problem(file, e);
    }
  }

  private static String key(JacksonException e) {
    return e.getPath().stream()
        .map(r -> r.getPropertyName() != null ? r.getPropertyName() : "" + r.getIndex())
        .collect(Collectors.joining("."));
  }

  private static String wrongValue(DatabindException e, String key, ObjectNode tree) {
    if (!(e instanceof MismatchedInputException)) {
      return firstLine(e.getOriginalMessage());
    }
    String found = ProfileValues.get(tree, key).map(JsonStore::shown).orElse("no value");
    String wanted =
        Fields.at(key).map(JsonStore::wanted).orElse("another kind of value is needed here");
    return "found " + found + "; " + wanted;
  }

  private static String shown(JsonNode value) {
    if (value.isContainer()) {
      return value.isArray() ? "a list" : "an object";
    }
    return value.toString();
  }

  /** What a field takes, in words. */
  static String wanted(Field field) {
    return switch (field.type()) {
      case NUMBER -> "give a number" + in(field);
      case INTEGER -> "give a whole number" + in(field);
      case FLAG -> "give true or false";
      case TEXT -> "give a text in quotes";
      case CHOICE -> "give one of " + String.join(", ", field.choices());
      case LIST -> "give a list of texts, [\"…\", \"…\"]";
      case MAP -> "give an object of texts, {\"…\": \"…\"}";
    };
  }

  private static String in(Field field) {
    return field.unit() == null ? "" : " in " + field.unit();
  }

  private static ProfileProblem problem(String file, JacksonException e) {
    TokenStreamLocation at = e.getLocation();
    int line = at == null ? 1 : Math.max(at.getLineNr(), 1);
    int column = at == null ? 1 : Math.max(at.getColumnNr(), 1);
    String text =
        e instanceof StreamReadException
            ? "is no sound JSON here: " + JsonFault.plain(e)
            : firstLine(e.getOriginalMessage());
    return new ProfileProblem(file, line, column, "", text);
  }

  private static String firstLine(String text) {
    return text == null ? "unreadable" : text.lines().findFirst().orElse("unreadable");
  }
}
