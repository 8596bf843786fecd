package dev.gantrywright.header;

import java.util.List;

/** Works out what a change to a macro would do to a folder as it stands. */
final class HeaderChanges {
  private final FirmwareFolder folder;

  HeaderChanges(FirmwareFolder folder) {
    this.folder = folder;
  }

  Proposal setValue(Change.SetValue change) {
    Targets.Choice choice = Targets.deciding(folder, change.name());
    if (choice.no() != null) {
      return choice.no();
    }
    Setting setting = choice.setting();
    String value = change.value().strip();
    String fault = ValueCheck.fault(value, document(setting).source().charset());
    if (fault != null) {
      return new Proposal.No(change.name() + ": " + fault, false);
    }
    if (setting.value().equals(value)) {
      return new Proposal.Already(setting.file(), setting.line());
    }
    List<Edit> edits = new SettingEdits(document(setting)).value(setting, value);
    return edits(setting, edits, false, choice.note());
  }

  Proposal setElement(Change.SetElement change) {
    Targets.Choice choice = Targets.deciding(folder, change.name());
    if (choice.no() != null) {
      return choice.no();
    }
    Setting setting = choice.setting();
    HeaderDocument document = document(setting);
    String value = change.value().strip();
    String fault = ElementCheck.fault(value, document.source().charset());
    if (fault != null) {
      return new Proposal.No(change.name() + ": " + fault, false);
    }
    byte[] bytes = document.source().bytes();
    List<Span> elements = setting.elements();
    Span element = setting.valueSpan();
    StringBuilder list = new StringBuilder(change.name());
    for (int index : change.path()) {
      if (index < 0 || index >= elements.size()) {
        return new Proposal.No(
            list
                + " at "
                + Targets.place(setting)
                + (elements.isEmpty() ? " is no brace list" : outside(index, elements.size())),
            true);
      }
      list.append('[').append(index).append(']');
      element = elements.get(index);
      elements = BraceList.elements(bytes, element.start(), element.end());
    }
    if (document.source().text(element.start(), element.end()).equals(value)) {
      return new Proposal.Already(setting.file(), setting.line());
    }
    List<Edit> edits = new SettingEdits(document).part(setting, element, value);
    return edits(setting, edits, false, choice.note());
  }

  private static String outside(int index, int size) {
    String numbered =
        size == 1 ? "1 element, number 0" : size + " elements, numbers 0 to " + (size - 1);
    return " has " + numbered + "; there is no number " + index;
  }

  Proposal switchOn(Change.SwitchOn change) {
    String name = change.name();
    List<Setting> all = folder.named(name);
    if (all.isEmpty()) {
      return new Proposal.No("no header of the folder defines " + name, true);
    }
    for (Setting setting : all) {
      if (setting.live()) {
        return new Proposal.Already(setting.file(), setting.line());
      }
    }
    List<Setting> off = all.stream().filter(s -> !s.on()).toList();
    List<Setting> seen = off.stream().filter(s -> s.state() == State.LIVE).toList();
    List<Setting> pick =
        seen.isEmpty() ? off.stream().filter(s -> s.state() == State.OPEN).toList() : seen;
    if (pick.size() > 1) {
      return new Proposal.No(
          name
              + " is commented out in several places; switch one on by hand: "
              + Targets.places(pick),
          false);
    }
    if (pick.isEmpty()) {
      Setting first = all.get(0);
      return new Proposal.No(
          name + " is not seen by the compiler at " + Targets.places(all) + ": " + first.reason(),
          true);
    }
    Setting setting = pick.get(0);
    String note = setting.state() == State.OPEN ? "whether it counts is open: " : "";
    List<Edit> edits = new SettingEdits(document(setting)).switchedOn(row(setting));
    return edits(setting, edits, false, note.isEmpty() ? note : note + setting.reason());
  }

  Proposal switchOff(Change.SwitchOff change) {
    String name = change.name();
    List<Setting> all = folder.named(name);
    List<Setting> live = all.stream().filter(Setting::live).toList();
    if (live.size() > 1) {
      return new Proposal.No(
          name
              + " is defined in several live places; switch them off by hand: "
              + Targets.places(live),
          false);
    }
    if (live.isEmpty()) {
      for (Setting setting : all) {
        if (!setting.on() && setting.state() == State.LIVE) {
          return new Proposal.Already(setting.file(), setting.line());
        }
      }
    }
    Targets.Choice choice = Targets.deciding(folder, name);
    if (choice.no() != null) {
      return choice.no();
    }
    Setting setting = choice.setting();
    SettingEdits edits = new SettingEdits(document(setting));
    if (edits.runsOverLines(row(setting))) {
      return new Proposal.No(
          name
              + " at "
              + Targets.place(setting)
              + " has a comment that runs over several lines; switch it off by hand",
          false);
    }
    return edits(setting, edits.switchedOff(row(setting)), false, choice.note());
  }

  Proposal insertAfter(Change.InsertAfter change) {
    String name = change.anchorName();
    List<Setting> all = folder.named(name);
    List<Setting> live = all.stream().filter(Setting::live).toList();
    if (all.isEmpty() || live.size() != 1 && all.size() != 1) {
      return new Proposal.No(
          all.isEmpty()
              ? "no header of the folder defines " + name
              : name
                  + " stands in several places; the line has no one place: "
                  + Targets.places(all),
          true);
    }
    Setting setting = live.size() == 1 ? live.get(0) : all.get(0);
    HeaderDocument document = document(setting);
    String line = change.line().stripTrailing();
    String fault = LineCheck.fault(line, document.source().charset());
    if (fault != null) {
      return new Proposal.No(fault, false);
    }
    int end = setting.lineSpan().end();
    int next = document.lineOf(end) + 1;
    if (next <= document.source().lines().count()
        && line.equals(document.source().line(next).stripTrailing())) {
      return new Proposal.Already(setting.file(), next);
    }
    return edits(setting, new SettingEdits(document).inserted(row(setting), line), true, "");
  }

  private Proposal edits(Setting setting, List<Edit> edits, boolean inserts, String note) {
    HeaderDocument document = document(setting);
    Span line = setting.lineSpan();
    return new Proposal.Edits(
        setting.file(),
        edits,
        line.start(),
        document.source().text(line.start(), line.end()),
        row(setting),
        inserts,
        note);
  }

  private int row(Setting setting) {
    return document(setting).rowAt(setting.nameSpan().start());
  }

  private HeaderDocument document(Setting setting) {
    return folder.header(setting.file()).orElseThrow();
  }
}
