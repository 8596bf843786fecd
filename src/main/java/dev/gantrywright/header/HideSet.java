package dev.gantrywright.header;

/**
 * The names of the macros whose expansion a token came from, as an immutable chain.
 *
 * @param name one of the names
 * @param rest the others, or null
 * @param size how many names there are
 */
record HideSet(String name, HideSet rest, int size) {

  static boolean contains(HideSet set, String name) {
    for (HideSet s = set; s != null; s = s.rest) {
      if (s.name.equals(name)) {
        return true;
      }
    }
    return false;
  }

  static int size(HideSet set) {
    return set == null ? 0 : set.size;
  }

  static HideSet add(HideSet set, String name) {
    return contains(set, name) ? set : new HideSet(name, set, size(set) + 1);
  }

  /** Nearly every token of a replacement has no names yet, or those of the token beside it. */
  static HideSet union(HideSet a, HideSet b) {
    if (a == null || a == b) {
      return b;
    }
    HideSet out = a;
    for (HideSet s = b; s != null && s != a; s = s.rest) {
      out = add(out, s.name);
    }
    return out;
  }

  static HideSet intersection(HideSet a, HideSet b) {
    if (a == b) {
      return a;
    }
    HideSet out = null;
    for (HideSet s = a; s != null; s = s.rest) {
      if (contains(b, s.name)) {
        out = add(out, s.name);
      }
    }
    return out;
  }
}
