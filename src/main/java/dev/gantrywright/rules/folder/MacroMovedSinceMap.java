package dev.gantrywright.rules.folder;

import static dev.gantrywright.rules.Known.known;

import dev.gantrywright.header.Setting;
import dev.gantrywright.rules.Check;
import dev.gantrywright.rules.Context;
import dev.gantrywright.rules.Family;
import dev.gantrywright.rules.Level;
import dev.gantrywright.rules.Remedy;
import dev.gantrywright.rules.Rule;
import dev.gantrywright.rules.Safety;
import dev.gantrywright.rules.Sink;
import java.util.ArrayList;
import java.util.List;

/** Macros no longer stand where the name map saw them. */
@Rule(
    id = "GW-F007",
    slug = "macro-moved-since-map",
    level = Level.NOTE,
    family = Family.FOLDER,
    fix = Rule.Fix.SAFE,
    summary = "Macros no longer stand where the name map saw them",
    reads = {"**"},
    source = "the firmware folder")
public final class MacroMovedSinceMap implements Check {
  @Override
  public void check(Context context, Sink sink) {
    List<Remedy.Edit> edits = new ArrayList<>();
    List<String> moved = new ArrayList<>();
    MappedFields.of(context)
        .filter(
            field ->
                known(field.entry().file(), field.entry().line()) && !field.settings().isEmpty())
        .filter(
            field ->
                field.settings().stream()
                    .noneMatch(
                        setting ->
                            setting.file().equals(field.entry().file())
                                && setting.line() == field.entry().line()))
        .forEach(
            field -> {
              Setting now = field.live() == null ? field.settings().get(0) : field.live();
              moved.add(
                  field.entry().macro()
                      + " from "
                      + field.entry().file()
                      + ":"
                      + field.entry().line()
                      + " to "
                      + MappedField.at(now));
              edits.add(
                  new Remedy.SetName(
                      field.path(),
                      field.entry().macro(),
                      field.entry().element(),
                      now.file(),
                      now.line()));
            });
    List<String> places = moved.stream().distinct().toList();
    if (!edits.isEmpty()) {
      sink.report(
          "build.names",
          places.size()
              + (places.size() == 1 ? " mapped macro moved: " : " mapped macros moved: ")
              + String.join(", ", places.subList(0, Math.min(3, places.size())))
              + (places.size() > 3 ? " and others" : ""),
          new Remedy("Note the new places", Safety.SAFE, edits));
    }
  }
}
