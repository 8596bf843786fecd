package dev.gantrywright.machine;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ChangedFieldsTest {
  private static PrinterProfile demo() throws Exception {
    return ProfileStore.read(DemoFilesTest.DEMO.resolve("guillemot.printer.json"));
  }

  /** A profile with one axis, axis end and heater, all fields null but the one at the path. */
  private static PrinterProfile with(String path, boolean other) {
    return (PrinterProfile) make(PrinterProfile.class, "", path, other);
  }

  private static Object make(Class<?> type, String at, String path, boolean other) {
    Object[] values =
        Stream.of(type.getRecordComponents())
            .map(c -> value(c, at.isEmpty() ? c.getName() : at + "." + c.getName(), path, other))
            .toArray();
    Class<?>[] types =
        Stream.of(type.getRecordComponents())
            .map(RecordComponent::getType)
            .toArray(Class<?>[]::new);
    try {
      return type.getDeclaredConstructor(types).newInstance(values);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }

  private static Object value(RecordComponent component, String at, String path, boolean other) {
    Class<?> type = component.getType();
    if (type.isRecord()) {
      return make(type, at, path, other);
    }
    Class<?> held =
        switch (at) {
          case "axes" -> Axis.class;
          case "endstops" -> Endstop.class;
          case "heaters" -> Heater.class;
          default -> null;
        };
    if (held != null) {
      return Map.of("one", make(held, at + ".one", path, other));
    }
    if (!at.equals(path)) {
      return null;
    }
    if (type == Map.class) {
      return at.equals("waivers")
          ? Map.of("a", new Waiver(other ? "b" : "a", null, null, null))
          : Map.of("a", other ? "b" : "a");
    }
    if (type == List.class) {
      return List.of(other ? "b" : "a");
    }
    if (type.isEnum()) {
      return type.getEnumConstants()[other ? 1 : 0];
    }
    return Map.<Class<?>, Object>of(
            Double.class, other ? 2.0 : 1.0,
            Integer.class, other ? 2 : 1,
            Long.class, other ? 2L : 1L,
            Boolean.class, other,
            String.class, other ? "b" : "a")
        .get(type);
  }

  static List<String> everyField() {
    List<String> paths = new ArrayList<>();
    collect(PrinterProfile.class, "", paths);
    return paths;
  }

  private static void collect(Class<?> type, String at, List<String> paths) {
    for (RecordComponent component : type.getRecordComponents()) {
      String path = at.isEmpty() ? component.getName() : at + "." + component.getName();
      if (component.getName().equals("more")) {
        continue;
      } else if (component.getType().isRecord()) {
        collect(component.getType(), path, paths);
      } else {
        switch (path) {
          case "axes" -> collect(Axis.class, "axes.one", paths);
          case "endstops" -> collect(Endstop.class, "endstops.one", paths);
          case "heaters" -> collect(Heater.class, "heaters.one", paths);
          default -> paths.add(path);
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("everyField")
  void aFieldThatDiffersIsNamedAloneAndByItsPath(String path) {
    PrinterProfile one = with(path, false);
    assertThat(ChangedFields.between(one, with(path, false))).isEmpty();
    assertThat(ChangedFields.between(one, with(path, true))).containsExactly(path);
    assertThat(ChangedFields.between(one, with("none", true))).containsExactly(path);
  }

  @Test
  void aGroupWithOtherMembersOrAnotherOrderIsNamedItself() throws Exception {
    PrinterProfile demo = demo();
    Map<String, Axis> fewer = new LinkedHashMap<>(demo.axes());
    fewer.remove("z");
    assertThat(ChangedFields.between(demo, withAxes(demo, fewer))).containsExactly("axes");
    List<String> names = new ArrayList<>(demo.axes().keySet());
    java.util.Collections.reverse(names);
    Map<String, Axis> turned = new LinkedHashMap<>();
    names.forEach(name -> turned.put(name, demo.axes().get(name)));
    assertThat(ChangedFields.between(demo, withAxes(demo, turned))).containsExactly("axes");
  }

  private static PrinterProfile withAxes(PrinterProfile p, Map<String, Axis> axes) {
    return new PrinterProfile(
        p.format(),
        p.name(),
        p.notes(),
        p.board(),
        p.serial(),
        p.kinematics(),
        axes,
        p.endstops(),
        p.heaters(),
        p.supply(),
        p.build(),
        p.link(),
        p.waivers(),
        p.printing(),
        p.more());
  }
}
