package dev.gantrywright.header;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/** Whether any header of a folder defines a name, or has its definition commented out. */
final class KnownNames implements Predicate<String> {
  /** So many headers are asked one by one in less time than it takes to gather their names. */
  private static final int FEW = 32;

  private final List<SourceFile> headers;
  private final Map<String, Boolean> asked = new HashMap<>();
  private NameHashes hashes;

  KnownNames(List<SourceFile> headers) {
    this.headers = headers;
  }

  @Override
  public boolean test(String name) {
    return asked.computeIfAbsent(name, this::find);
  }

  private boolean find(String name) {
    if (headers.size() > FEW && !gathered().mayHold(name.hashCode())) {
      return false;
    }
    for (SourceFile header : headers) {
      if (header.names().contains(name)) {
        return true;
      }
    }
    return false;
  }

  private NameHashes gathered() {
    if (hashes == null) {
      hashes = new NameHashes();
      headers.forEach(hashes::addDefinitions);
    }
    return hashes;
  }
}
