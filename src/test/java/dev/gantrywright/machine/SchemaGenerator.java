package dev.gantrywright.machine;

import com.fasterxml.jackson.annotation.JsonAnySetter;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Makes the JSON Schemas (2020-12) of the file formats from the records and the field table. */
final class SchemaGenerator {
  private final boolean profile;

  private SchemaGenerator(boolean profile) {
    this.profile = profile;
  }

  static byte[] of(Class<? extends Record> type, String title) {
    ObjectNode schema = JsonNodeFactory.instance.objectNode();
    schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    schema.put("title", title);
    new SchemaGenerator(type == PrinterProfile.class).object(schema, type, "");
    boolean numbered =
        Arrays.stream(type.getRecordComponents())
            .anyMatch(component -> component.getName().equals("format"));
    if (numbered) {
      schema.putArray("required").add("format");
    } else {
      orNull(schema);
    }
    return TreeText.bytes(schema);
  }

  /** Name maps write what is not known as null. */
  private static void orNull(ObjectNode schema) {
    schema
        .properties()
        .forEach(
            one -> {
              boolean scalar =
                  one.getKey().equals("type")
                      && one.getValue().isString()
                      && !List.of("object", "array").contains(one.getValue().asString());
              if (scalar) {
                String type = one.getValue().asString();
                schema.putArray("type").add(type).add("null");
              } else if (one.getValue() instanceof ObjectNode inner) {
                orNull(inner);
              }
            });
  }

  private void object(ObjectNode schema, Class<?> type, String path) {
    schema.put("type", "object");
    ObjectNode properties = schema.putObject("properties");
    for (RecordComponent component : type.getRecordComponents()) {
      if (component.getAccessor().isAnnotationPresent(JsonAnySetter.class)
          || component.getName().equals("more")) {
        continue;
      }
      String own = path.isEmpty() ? component.getName() : path + "." + component.getName();
      value(properties.putObject(component.getName()), component.getGenericType(), own);
    }
  }

  private void value(ObjectNode schema, Type type, String path) {
    if (type instanceof ParameterizedType generic) {
      Type last = generic.getActualTypeArguments()[generic.getActualTypeArguments().length - 1];
      if (generic.getRawType() == List.class) {
        schema.put("type", "array");
        value(schema.putObject("items"), last, path + ".*");
      } else if (generic.getRawType() == Map.class) {
        schema.put("type", "object");
        value(schema.putObject("additionalProperties"), last, path + ".*");
      }
    } else if (type instanceof Class<?> plain && plain.isRecord()) {
      object(schema, plain, path);
    } else if (type instanceof Class<?> plain && plain.isEnum()) {
      ArrayNode words = schema.putArray("enum");
      for (Object constant : plain.getEnumConstants()) {
        words.add(Words.of((Enum<?>) constant));
      }
    } else {
      schema.put("type", scalar(type));
    }
    // The table of fields speaks of the profile; a sheet's field of the same path is another.
    if (profile || path.equals("format")) {
      Fields.at(path).ifPresent(field -> describe(schema, field));
    }
  }

  private static String scalar(Type type) {
    if (type == String.class) {
      return "string";
    }
    if (type == Boolean.class || type == boolean.class) {
      return "boolean";
    }
    return type == Integer.class || type == int.class || type == Long.class ? "integer" : "number";
  }

  private static void describe(ObjectNode schema, Field field) {
    String unit = field.unit() == null ? "" : " Unit: " + field.unit() + ".";
    schema.put("description", field.help() + unit);
    if (field.minimum() != null) {
      schema.set("minimum", ProfileFormat.MAPPER.valueToTree(field.minimum()));
    }
    if (field.maximum() != null) {
      schema.set("maximum", ProfileFormat.MAPPER.valueToTree(field.maximum()));
    }
  }
}
