package dev.gantrywright.header;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The order in which the files of a folder are run: the source file that reaches the most headers
 * first, as the compiler would, then every header that it did not reach, those that define a name
 * before those whose conditions ask for it.
 */
final class FolderProgram {
  private final List<SourceFile> headers;
  private final List<SourceFile> sources;
  private final FolderIncludes includes;
  private final Map<SourceFile, Set<SourceFile>> direct = new IdentityHashMap<>();

  FolderProgram(
      Collection<SourceFile> headers, Collection<SourceFile> sources, FolderIncludes includes) {
    this.headers = List.copyOf(headers);
    this.sources = List.copyOf(sources);
    this.includes = includes;
  }

  /** The files to run, each of which may include others. */
  List<SourceFile> order() {
    Set<SourceFile> reached = new HashSet<>();
    List<SourceFile> out = new ArrayList<>();
    SourceFile main = null;
    for (SourceFile source : sources) {
      Set<SourceFile> here = reach(source);
      if (main == null && here.size() > 1 || here.size() > reached.size() && here.size() > 1) {
        main = source;
        reached = here;
      }
    }
    if (main != null) {
      out.add(main);
    }
    Set<SourceFile> left = new LinkedHashSet<>(headers);
    left.removeAll(reached);
    out.addAll(byNeed(left));
    return out;
  }

  private Set<SourceFile> reach(SourceFile from) {
    Set<SourceFile> seen = new HashSet<>();
    Deque<SourceFile> todo = new ArrayDeque<>(List.of(from));
    while (!todo.isEmpty()) {
      SourceFile file = todo.pop();
      if (seen.add(file)) {
        todo.addAll(included(file));
      }
    }
    return seen;
  }

  /** The files of the folder that a file names in its inclusions, live or not. */
  private Set<SourceFile> included(SourceFile file) {
    return direct.computeIfAbsent(file, this::findIncluded);
  }

  private Set<SourceFile> findIncluded(SourceFile file) {
    Set<SourceFile> out = new LinkedHashSet<>();
    DirectiveTable table = file.table();
    for (int row = 0; row < table.size(); row++) {
      if (table.kind(row) == DirectiveKind.INCLUDE) {
        int from = table.nameStart(row);
        int to = table.end(row);
        char open = from < to ? (char) file.bytes()[from] : ' ';
        int close = from + 1;
        while (close < to && file.bytes()[close] != (open == '<' ? '>' : '"')) {
          close++;
        }
        if ((open == '<' || open == '"') && close < to) {
          SourceFile found = includes.find(file.text(from + 1, close), open == '<', file, false);
          if (found != null) {
            out.add(found);
          }
        }
      }
    }
    return out;
  }

  private List<SourceFile> byNeed(Set<SourceFile> left) {
    return new NeedOrder(left, this::included).order();
  }
}
