package dev.gantrywright.machine;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What a record of a profile or board sheet consists of, found by reflection once: its components
 * with their kinds and ranges, how they are read, and the constructor.
 *
 * @param components in the order of the record, without {@code more}
 * @param index of the component by its key
 * @param readers of every component in the order of the record, {@code more} last
 * @param make the canonical constructor, whose last parameter is {@code more}
 */
record Shape(
    List<Part> components, Map<String, Integer> index, List<Method> readers, Constructor<?> make) {
  /** The printer profile as a whole. */
  static final Shape PROFILE = of(PrinterProfile.class, "");

  /** The board sheet as a whole; the field table says nothing about it. */
  static final Shape SHEET = of(BoardSheet.class, "sheet");

  enum Kind {
    DECIMAL,
    WHOLE,
    LONG,
    FLAG,
    TEXT,
    WORD,
    RECORD,
    TEXTS,
    TEXT_MAP,
    RECORD_MAP,
    RECORDS
  }

  /**
   * One component.
   *
   * @param key as files spell it
   * @param minimum lowest value of a number, minus infinity where the field table gives none
   * @param maximum highest value
   * @param words of an enumeration: its constants as files spell them
   * @param shape of a record, or of the records of a map
   */
  record Part(
      String key,
      Kind kind,
      double minimum,
      double maximum,
      Map<String, Object> words,
      Shape shape) {}

  /** A record of this shape. */
  Object record(Object[] values) {
    try {
      return make.newInstance(values);
    } catch (InvocationTargetException
        | InstantiationException
        | IllegalAccessException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** A component of such a record; the last is {@code more}. */
  Object read(Object record, int component) {
    try {
      return readers.get(component).invoke(record);
    } catch (InvocationTargetException | IllegalAccessException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static Shape of(Class<?> type, String path) {
    RecordComponent[] all = type.getRecordComponents();
    List<Part> parts =
        Stream.of(all)
            .filter(component -> !component.getName().equals("more"))
            .map(component -> part(component, path))
            .toList();
    Map<String, Integer> index = new HashMap<>();
    parts.forEach(part -> index.put(part.key(), index.size()));
    if (!all[all.length - 1].getName().equals("more")) {
      throw new IllegalStateException(type + " must end with the keys that it does not know");
    }
    Class<?>[] types = Stream.of(all).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      return new Shape(
          parts,
          Map.copyOf(index),
          Stream.of(all).map(RecordComponent::getAccessor).toList(),
          type.getDeclaredConstructor(types));
    } catch (NoSuchMethodException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  private static Part part(RecordComponent component, String path) {
    String at = path.isEmpty() ? component.getName() : path + "." + component.getName();
    Class<?> type = component.getType();
    Class<?> held = held(component.getGenericType());
    Kind kind = kind(type, held);
    Shape shape =
        switch (kind) {
          case RECORD -> of(type, at);
          case RECORD_MAP, RECORDS -> of(held, at + ".*");
          default -> null;
        };
    Map<String, Object> words = new HashMap<>();
    if (kind == Kind.WORD) {
      for (Object constant : type.getEnumConstants()) {
        words.put(Words.of((Enum<?>) constant), constant);
      }
    }
    Optional<Field> field = Fields.at(at);
    return new Part(
        component.getName(),
        kind,
        field.map(Field::minimum).orElse(Double.NEGATIVE_INFINITY),
        field.map(Field::maximum).orElse(Double.POSITIVE_INFINITY),
        words,
        shape);
  }

  private static Class<?> held(Type type) {
    Type[] arguments =
        type instanceof ParameterizedType generic ? generic.getActualTypeArguments() : new Type[1];
    return (Class<?>) arguments[arguments.length - 1];
  }

  private static Kind kind(Class<?> type, Class<?> held) {
    if (type.isRecord()) {
      return Kind.RECORD;
    }
    if (type.isEnum()) {
      return Kind.WORD;
    }
    if (type == Map.class) {
      return held.isRecord() ? Kind.RECORD_MAP : Kind.TEXT_MAP;
    }
    if (type == List.class) {
      return held.isRecord() ? Kind.RECORDS : Kind.TEXTS;
    }
    Kind kind =
        Map.<Class<?>, Kind>of(
                Double.class, Kind.DECIMAL,
                Integer.class, Kind.WHOLE,
                Long.class, Kind.LONG,
                Boolean.class, Kind.FLAG,
                String.class, Kind.TEXT)
            .get(type);
    if (kind == null) {
      throw new IllegalStateException("no kind of component is a " + type);
    }
    return kind;
  }
}
