package dev.gantrywright.patch;

import dev.gantrywright.header.Change;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.IniDocument;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A change named by hand: a macro's value, one element of its list, a switch, a build setting. */
public sealed interface HandChange {
  /** {@code NAME=VALUE}, {@code NAME[2]=VALUE} or {@code [section] key=VALUE}. */
  record Set(String name, String value) implements HandChange {}

  /** A commented-out definition is to count. */
  record On(String name) implements HandChange {}

  /** A definition is to be commented out. */
  record Off(String name) implements HandChange {}

  /** A line is to be added behind a definition. */
  record Insert(String anchor, String line) implements HandChange {}

  /** What stands before the first {@code =} outside brackets, and what follows it. */
  static Set set(String text) {
    int equals = text.indexOf('=');
    if (equals < 1) {
      throw new IllegalArgumentException(
          "'" + text + "' is no NAME=VALUE; write for example BAUD_WORD=115200");
    }
    return new Set(text.substring(0, equals).strip(), text.substring(equals + 1).strip());
  }

  /** The macro before the first {@code =}, and the line behind it. */
  static Insert insert(String text) {
    int equals = text.indexOf('=');
    if (equals < 1 || text.substring(equals + 1).isBlank()) {
      throw new IllegalArgumentException(
          "'" + text + "' is no NAME=LINE; write for example 'BAUD_WORD=#define PARITY_WORD 0'");
    }
    return new Insert(text.substring(0, equals).strip(), text.substring(equals + 1));
  }

  /** The wish that it makes of a folder. */
  default Wish wish(FirmwareFolder folder) {
    if (this instanceof On on) {
      String cause = "--on " + on.name();
      return new Wish("", cause, on.name(), List.of(new Change.SwitchOn(on.name(), cause)));
    }
    if (this instanceof Off off) {
      String cause = "--off " + off.name();
      return new Wish("", cause, off.name(), List.of(new Change.SwitchOff(off.name(), cause)));
    }
    if (this instanceof Insert insert) {
      String cause = "--insert " + insert.anchor() + "=" + insert.line();
      return new Wish(
          "",
          cause,
          insert.anchor(),
          List.of(new Change.InsertAfter(insert.anchor(), insert.line(), cause)));
    }
    Set set = (Set) this;
    return HandSet.wish(set, folder);
  }

  /** Finds out what a name given by hand stands for. */
  final class HandSet {
    private static final Pattern ELEMENT = Pattern.compile("(.+?)((?:\\[\\d+\\])+)");
    private static final Pattern KEY = Pattern.compile("\\[([^\\]]*)\\]\\s*(.+)");

    private HandSet() {}

    static Wish wish(Set set, FirmwareFolder folder) {
      String cause = "--set " + set.name() + "=" + set.value();
      Matcher key = KEY.matcher(set.name());
      if (key.matches()) {
        String section = key.group(1).strip();
        String name = key.group(2).strip();
        return wish(cause, name, new Change.SetKey(section, name, set.value(), cause));
      }
      Matcher element = ELEMENT.matcher(set.name());
      if (element.matches()) {
        List<Integer> path = new ArrayList<>();
        Matcher index = Pattern.compile("\\d+").matcher(element.group(2));
        while (index.find()) {
          path.add(Integer.parseInt(index.group()));
        }
        String name = element.group(1);
        return wish(cause, name, new Change.SetElement(name, path, set.value(), cause));
      }
      if (folder.named(set.name()).isEmpty()) {
        for (IniDocument ini : folder.buildSettings()) {
          for (IniDocument.Entry entry : ini.entries()) {
            if (entry.key().equals(set.name())) {
              String section = entry.section();
              return wish(
                  cause, set.name(), new Change.SetKey(section, set.name(), set.value(), cause));
            }
          }
        }
      }
      return wish(cause, set.name(), new Change.SetValue(set.name(), set.value(), cause));
    }

    private static Wish wish(String cause, String macro, Change change) {
      return new Wish("", cause, macro, List.of(change));
    }
  }
}
