package dev.gantrywright.rules.folder;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.rules.Context;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The fields that the name map leads to macros of headers, looked up in the folder once. */
record MappedFields(List<MappedField> all) {
  static Stream<MappedField> of(Context context) {
    return context.once(MappedFields.class, MappedFields::look).all().stream();
  }

  /** Those that the profile gives a value for. */
  static Stream<MappedField> stated(Context context) {
    return of(context).filter(field -> field.value() != null);
  }

  /** The first stated field of each macro, so that a fault of the macro is told once. */
  static Stream<MappedField> macros(Context context) {
    Set<String> seen = new HashSet<>();
    return stated(context).filter(field -> seen.add(field.entry().macro()));
  }

  private static MappedFields look(Context context) {
    if (context.names().isEmpty() || context.boardFolder().isEmpty()) {
      return new MappedFields(List.of());
    }
    FirmwareFolder folder = context.boardFolder().get();
    MacroTable table = context.keptWithFolder(MacroTable.class, MacroTable::new);
    List<MappedField> fields = new ArrayList<>();
    context
        .names()
        .get()
        .fields()
        .forEach(
            (path, entry) -> {
              if (inHeader(folder, entry)) {
                fields.add(
                    table.field(
                        path,
                        entry,
                        ProfileValues.get(context.profile(), path).orElse(null),
                        folder));
              }
            });
    return new MappedFields(List.copyOf(fields));
  }

  private static boolean inHeader(FirmwareFolder folder, NameEntry entry) {
    return entry.macro() != null
        && entry.switches().isEmpty()
        && !MappedKeys.inBuildSettings(folder, entry);
  }
}
