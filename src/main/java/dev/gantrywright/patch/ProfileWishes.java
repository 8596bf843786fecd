package dev.gantrywright.patch;

import dev.gantrywright.header.Change;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.Setting;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.names.FolderPlace;
import dev.gantrywright.names.ListParts;
import dev.gantrywright.names.NameEntry;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.Spelled;
import dev.gantrywright.names.Spelling;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** What a profile asks of a folder, worked out through the name map. */
final class ProfileWishes {
  /** One profile value with its place. */
  private record Asked(String path, JsonNode value, NameEntry entry) {
    String shown() {
      return value.isString() ? value.asString() : value.toString();
    }
  }

  private final FirmwareFolder folder;
  private final MappedPlaces places;
  private final List<Wish> wishes = new ArrayList<>();
  private final List<Refusal> refusals = new ArrayList<>();
  private final List<String> unchanged = new ArrayList<>();
  private final FlagWishes flags = new FlagWishes();

  private ProfileWishes(MappedPlaces places) {
    this.folder = places.folder();
    this.places = places;
  }

  /**
   * Works them out.
   *
   * @param places where the entries of the map stand in the folder
   */
  static ProfileWishes of(PrinterProfile profile, NameMap map, MappedPlaces places) {
    ProfileWishes result = new ProfileWishes(places);
    Map<String, List<Asked>> byMacro = new LinkedHashMap<>();
    map.fields()
        .forEach(
            (path, entry) -> {
              Optional<JsonNode> value = ProfileValues.get(profile, path);
              if (value.isPresent() && entry.macro() != null) {
                String key = (entry.section() == null ? "" : entry.section()) + "|" + entry.macro();
                byMacro
                    .computeIfAbsent(key, name -> new ArrayList<>())
                    .add(new Asked(path, value.get(), entry));
              }
            });
    byMacro.values().forEach(result::macro);
    result.wishes.addAll(result.flags.wishes());
    return result;
  }

  List<Wish> wishes() {
    return wishes;
  }

  /** Whether another profile asks for exactly this. */
  boolean same(ProfileWishes other) {
    return wishes.equals(other.wishes)
        && refusals.equals(other.refusals)
        && unchanged.equals(other.unchanged);
  }

  List<Refusal> refusals() {
    return refusals;
  }

  List<String> unchanged() {
    return unchanged;
  }

  private void macro(List<Asked> group) {
    List<Asked> sure = new ArrayList<>();
    for (Asked asked : group) {
      if (asked.entry().sure()) {
        sure.add(asked);
      } else {
        refuse(
            asked, "the name map is not sure of " + asked.entry().macro() + "; confirm it there");
      }
    }
    if (sure.isEmpty()) {
      return;
    }
    NameEntry entry = sure.get(0).entry();
    Optional<FolderPlace> place = places.of(entry);
    if (!entry.switches().isEmpty()) {
      sure.forEach(this::switches);
    } else if (place.isEmpty()) {
      sure.forEach(
          asked -> refuse(asked, "the folder has no " + entry.macro() + "; learn its names again"));
    } else if (place.get() instanceof FolderPlace.InHeader header) {
      header(sure, header);
    } else if (place.get() instanceof FolderPlace.InKey key) {
      key(sure, key);
    } else if (place.get() instanceof FolderPlace.InFlags flags) {
      flags(sure, flags);
    }
  }

  private void header(List<Asked> group, FolderPlace.InHeader place) {
    List<Asked> whole = group.stream().filter(asked -> asked.entry().element() == null).toList();
    List<Asked> parts = group.stream().filter(asked -> asked.entry().element() != null).toList();
    if (!whole.isEmpty()) {
      shared(whole, place.setting().value(), (asked, text) -> whole(asked, place.setting(), text));
    }
    if (!parts.isEmpty()) {
      parts(parts, place);
    }
  }

  private interface Write {
    void as(Asked asked, Spelled spelled);
  }

  /** Fields that share one macro must ask for the same text. */
  private void shared(List<Asked> group, String current, Write write) {
    Map<Object, List<Asked>> wanted = new LinkedHashMap<>();
    Map<Object, Spelled> spelled = new LinkedHashMap<>();
    for (Asked asked : group) {
      Spelled text = spelling(asked).spell(asked.value(), current);
      Object key = text instanceof Spelled.AlreadySo ? "" : text;
      wanted.computeIfAbsent(key, none -> new ArrayList<>()).add(asked);
      spelled.put(key, text);
    }
    if (wanted.size() > 1) {
      String all =
          String.join(
              ", ", group.stream().map(asked -> asked.path() + " = " + asked.shown()).toList());
      String macro = group.get(0).entry().macro();
      group.forEach(
          asked -> refuse(asked, macro + " serves several fields, which differ here: " + all));
      return;
    }
    Object key = wanted.keySet().iterator().next();
    Asked first = group.get(0);
    write.as(first, spelled.get(key));
    if (spelled.get(key) instanceof Spelled.AlreadySo) {
      group.stream().skip(1).forEach(asked -> unchanged.add(asked.path()));
    }
  }

  private void whole(Asked asked, Setting setting, Spelled spelled) {
    String macro = asked.entry().macro();
    String cause = asked.path() + " = " + asked.shown();
    List<Change> changes = new ArrayList<>();
    if (spelled instanceof Spelled.Not not) {
      refuse(asked, not.reason());
      return;
    }
    if (spelled instanceof Spelled.Off) {
      changes.add(new Change.SwitchOff(macro, cause));
    } else if (spelled instanceof Spelled.On) {
      changes.add(new Change.SwitchOn(macro, cause));
    } else {
      if (!setting.on()) {
        changes.add(new Change.SwitchOn(macro, cause));
      }
      if (spelled instanceof Spelled.Text text) {
        changes.add(new Change.SetValue(macro, text.text(), cause));
      }
    }
    wish(asked, changes);
  }

  private void parts(List<Asked> group, FolderPlace.InHeader place) {
    ListParts list = ListParts.of(place.raw());
    if (list.form() == ListParts.Form.BRACES) {
      for (Asked asked : group) {
        part(asked, list, text -> braces(asked, place.setting(), list, text));
      }
      return;
    }
    String value = place.setting().value();
    ListParts plain = ListParts.of(value);
    RewrittenParts rewritten = new RewrittenParts(value, plain);
    List<Asked> written = new ArrayList<>();
    for (Asked asked : group) {
      part(
          asked,
          plain,
          text -> {
            rewritten.put(asked.entry().element(), text);
            written.add(asked);
          });
    }
    if (!written.isEmpty()) {
      Asked first = written.get(0);
      String causes =
          String.join(
              ", ", written.stream().map(asked -> asked.path() + " = " + asked.shown()).toList());
      String macro = first.entry().macro();
      wishes.add(
          new Wish(
              String.join(", ", written.stream().map(Asked::path).toList()),
              String.join(", ", written.stream().map(Asked::shown).toList()),
              macro,
              List.of(new Change.SetValue(macro, rewritten.text(), causes))));
    }
  }

  private interface Put {
    void text(String text);
  }

  private void part(Asked asked, ListParts list, Put put) {
    int element = asked.entry().element();
    if (element < 0 || element >= list.parts().size()) {
      refuse(
          asked,
          asked.entry().macro()
              + " has "
              + list.parts().size()
              + " parts; there is no number "
              + element);
      return;
    }
    Spelled spelled = spelling(asked).spell(asked.value(), list.parts().get(element).text());
    if (spelled instanceof Spelled.Text text) {
      put.text(text.text());
    } else if (spelled instanceof Spelled.AlreadySo) {
      unchanged.add(asked.path());
    } else if (spelled instanceof Spelled.Not not) {
      refuse(asked, not.reason());
    } else {
      refuse(asked, "a part of a list cannot be switched on or off");
    }
  }

  private void braces(Asked asked, Setting setting, ListParts list, String text) {
    ListParts.Part part = list.parts().get(asked.entry().element());
    String cause = asked.path() + " = " + asked.shown();
    String macro = asked.entry().macro();
    String designated =
        part.designator().isEmpty()
            ? text
            : FolderPlace.innermost(part.designator()) + " = " + text;
    List<Change> changes = new ArrayList<>();
    if (!setting.on()) {
      changes.add(new Change.SwitchOn(macro, cause));
    }
    changes.add(new Change.SetElement(macro, FolderPlace.path(list, part), designated, cause));
    wish(asked, changes);
  }

  private void key(List<Asked> group, FolderPlace.InKey place) {
    shared(
        group,
        place.entry().value(),
        (asked, spelled) -> {
          String cause = asked.path() + " = " + asked.shown();
          if (spelled instanceof Spelled.Text text) {
            String section = place.entry().section();
            wish(
                asked,
                List.of(new Change.SetKey(section, place.entry().key(), text.text(), cause)));
          } else if (spelled instanceof Spelled.AlreadySo) {
            unchanged.add(asked.path());
          } else {
            refuse(
                asked,
                spelled instanceof Spelled.Not not
                    ? not.reason()
                    : "a build setting cannot be commented out");
          }
        });
  }

  private void flags(List<Asked> group, FolderPlace.InFlags place) {
    shared(
        group,
        place.value(),
        (asked, spelled) -> {
          if (spelled instanceof Spelled.Text text) {
            flags.add(asked.path(), asked.shown(), asked.entry().macro(), place, text.text());
          } else if (spelled instanceof Spelled.AlreadySo) {
            unchanged.add(asked.path());
          } else {
            refuse(
                asked,
                spelled instanceof Spelled.Not not
                    ? not.reason()
                    : "a flag of the build cannot be commented out");
          }
        });
  }

  /** One bare definition on, its rivals off. */
  private void switches(Asked asked) {
    String wanted = asked.entry().switches().get(asked.shown());
    if (wanted == null) {
      refuse(
          asked,
          "none of the folder's switches stands for it: "
              + String.join(", ", asked.entry().switches().values()));
      return;
    }
    String cause = asked.path() + " = " + asked.shown();
    List<Change> changes = new ArrayList<>();
    asked.entry().switches().values().stream()
        .distinct()
        .filter(other -> !other.equals(wanted) && !folder.named(other).isEmpty())
        .forEach(other -> changes.add(new Change.SwitchOff(other, cause)));
    changes.add(new Change.SwitchOn(wanted, cause));
    wishes.add(new Wish(asked.path(), asked.shown(), wanted, changes));
  }

  private Spelling spelling(Asked asked) {
    return new Spelling(asked.path(), asked.entry(), places::replacement);
  }

  private void wish(Asked asked, List<Change> changes) {
    if (changes.isEmpty()) {
      unchanged.add(asked.path());
    } else {
      wishes.add(new Wish(asked.path(), asked.shown(), asked.entry().macro(), changes));
    }
  }

  private void refuse(Asked asked, String reason) {
    refusals.add(new Refusal(asked.path(), asked.entry().macro(), asked.shown(), reason));
  }
}
