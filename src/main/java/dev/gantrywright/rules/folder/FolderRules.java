package dev.gantrywright.rules.folder;

import dev.gantrywright.rules.Check;
import java.util.List;

/** The catalogue of this family: one line a rule, in the order of their ids. */
public final class FolderRules {
  private FolderRules() {}

  public static List<Check> all() {
    return List.of(
        new MappedMacroMissing(),
        new MappedMacroDead(),
        new MappedMacroOpen(),
        new MacroDefinedTwice(),
        new MacroRedefinedLater(),
        new MappedMacroTakesArguments(),
        new MacroMovedSinceMap(),
        new ValueHasNoSpelling(),
        new ValueOutsideCommentedRange(),
        new ValueNotAmongChoices(),
        new MapNotSure(),
        new ListTooShort(),
        new FieldsShareMacro(),
        new MapNamesUnknownField(),
        new FolderHasProblem(),
        new UnitDiffersFromComment(),
        new FieldsNotMapped(),
        new MappedKeyMissing(),
        new KeyMovedSinceMap(),
        new KeyGivenTwice(),
        new KeyValueHasNoSpelling(),
        new FolderNotOpen());
  }
}
