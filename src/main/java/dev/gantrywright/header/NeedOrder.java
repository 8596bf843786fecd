package dev.gantrywright.header;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/** Headers so that those that define a name stand before those whose conditions ask for it. */
final class NeedOrder {
  /** A header that waits for those before it. */
  private record Waiting(int file, Iterator<Integer> needed) {}

  private final List<SourceFile> files;
  private final Function<SourceFile, Set<SourceFile>> included;
  private final List<Set<String>> needs = new ArrayList<>();

  /** The headers that define a name that one asks for, those that have their place taken out. */
  private final Map<String, List<Integer>> definers = new HashMap<>();

  private final boolean[] placed;
  private final List<SourceFile> out = new ArrayList<>();

  NeedOrder(Collection<SourceFile> headers, Function<SourceFile, Set<SourceFile>> included) {
    this.files = List.copyOf(headers);
    this.included = included;
    this.placed = new boolean[files.size()];
  }

  List<SourceFile> order() {
    findDefiners();
    for (int file = 0; file < files.size(); file++) {
      place(file);
    }
    return out;
  }

  private void findDefiners() {
    NameHashes wanted = new NameHashes();
    for (SourceFile file : files) {
      Set<String> words = ConditionWords.of(file);
      needs.add(words);
      for (String name : words) {
        wanted.add(name.hashCode());
        definers.computeIfAbsent(name, k -> new ArrayList<>());
      }
    }
    for (int file = 0; file < files.size(); file++) {
      findDefiners(file, wanted);
    }
  }

  private void findDefiners(int file, NameHashes wanted) {
    SourceFile source = files.get(file);
    DirectiveTable table = source.table();
    for (int row = 0; row < table.size(); row++) {
      if (NameIndex.isDefinition(table, row) && wanted.mayHold(NameIndex.hash(source, row))) {
        List<Integer> known = definers.get(source.name(row));
        if (known != null && (known.isEmpty() || known.get(known.size() - 1) != file)) {
          known.add(file);
        }
      }
    }
  }

  private void place(int first) {
    Deque<Waiting> waiting = new ArrayDeque<>();
    enter(first, waiting);
    while (!waiting.isEmpty()) {
      Waiting now = waiting.peek();
      if (now.needed().hasNext()) {
        enter(now.needed().next(), waiting);
      } else {
        out.add(files.get(waiting.pop().file()));
      }
    }
  }

  private void enter(int file, Deque<Waiting> waiting) {
    if (!placed[file]) {
      placed[file] = true;
      waiting.push(new Waiting(file, needed(file).iterator()));
    }
  }

  /** The headers without a place that a header needs, but those that it includes itself. */
  private List<Integer> needed(int file) {
    Set<SourceFile> own = included.apply(files.get(file));
    List<Integer> all = new ArrayList<>();
    for (String name : needs.get(file)) {
      List<Integer> here = definers.get(name);
      here.removeIf(other -> placed[other]);
      for (int other : here) {
        if (!own.contains(files.get(other))) {
          all.add(other);
        }
      }
    }
    return all.stream().distinct().sorted().toList();
  }
}
