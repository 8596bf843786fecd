package dev.gantrywright.header;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Picks the definition that a change is about, or says why there is none. */
final class Targets {
  /** A definition to change and what to say about it, or a refusal. */
  record Choice(Setting setting, String note, Proposal.No no) {
    static Choice of(Setting setting, String note) {
      return new Choice(setting, note, null);
    }

    static Choice no(String reason, boolean mayChange) {
      return new Choice(null, "", new Proposal.No(reason, mayChange));
    }
  }

  private Targets() {}

  /** The switched-on definition that decides what the name stands for. */
  static Choice deciding(FirmwareFolder folder, String name) {
    List<Setting> all = folder.named(name);
    if (all.isEmpty()) {
      return Choice.no("no header of the folder defines " + name, true);
    }
    List<Setting> on = all.stream().filter(Setting::on).toList();
    if (on.isEmpty()) {
      return Choice.no(name + " is commented out at " + places(all) + "; switch it on first", true);
    }
    List<Setting> live = on.stream().filter(Setting::live).toList();
    List<Setting> open = on.stream().filter(s -> s.state() == State.OPEN).toList();
    Choice choice;
    if (live.isEmpty()) {
      choice = fromOpen(name, on, open);
    } else {
      choice = fromLive(folder, name, live, open);
    }
    if (choice.setting() != null && isGuard(folder, choice.setting())) {
      return Choice.no(
          name
              + " at "
              + place(choice.setting())
              + " is the include guard of its file; it stays as it is",
          false);
    }
    boolean function = choice.setting() != null && choice.setting().kind() == Setting.Kind.FUNCTION;
    return function
        ? Choice.no(
            name + " at " + place(choice.setting()) + " is a function-like macro; edit it by hand",
            false)
        : choice;
  }

  private static Choice fromOpen(String name, List<Setting> on, List<Setting> open) {
    if (open.isEmpty()) {
      return Choice.no(
          name + " is not seen by the compiler at " + places(on) + ": " + on.get(0).reason(), true);
    }
    if (open.size() > 1) {
      return Choice.no(
          name
              + " has several definitions, and the folder does not settle which counts: "
              + places(open),
          true);
    }
    Setting only = open.get(0);
    return Choice.of(only, "whether it counts is open: " + only.reason());
  }

  private static Choice fromLive(
      FirmwareFolder folder, String name, List<Setting> live, List<Setting> open) {
    Optional<Setting> last = folder.live(name);
    if (last.isEmpty()) {
      boolean maybe = !open.isEmpty();
      return Choice.no(
          maybe
              ? name + " at " + places(live) + " may be defined again at " + places(open)
              : name + " at " + places(live) + " is taken away or defined again later",
          true);
    }
    String note = "";
    if (live.size() > 1) {
      note =
          "of several definitions this one decides; the others are at "
              + places(live.stream().filter(s -> !s.equals(last.get())).toList());
    } else if (!open.isEmpty()) {
      note = "an open condition may define it too, at " + places(open);
    }
    return Choice.of(last.get(), note);
  }

  /** Whether the definition is the one that keeps its header from being read twice. */
  private static boolean isGuard(FirmwareFolder folder, Setting setting) {
    HeaderDocument document = folder.header(setting.file()).orElseThrow();
    int guard = IncludeGuard.row(document.source());
    return guard >= 0 && document.rowAt(setting.nameSpan().start()) == guard + 1;
  }

  static String places(List<Setting> settings) {
    String shown = settings.stream().limit(4).map(Targets::place).collect(Collectors.joining(", "));
    return settings.size() > 4 ? shown + " and " + (settings.size() - 4) + " more" : shown;
  }

  static String place(Setting setting) {
    return setting.file() + ":" + setting.line();
  }
}
