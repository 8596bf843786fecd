package dev.gantrywright.header;

/**
 * The names of the macros whose expansion a token came from, as an immutable chain.
 *
 * @param name one of the names
 * @param rest the others, or null
 */
record HideSet(String name, HideSet rest) {

  static boolean contains(HideSet set, String name) {
    for (HideSet s = set; s != null; s = s.rest) {
      if (s.name.equals(name)) {
        return true;
      }
    }
    return false;
  }

  static HideSet add(HideSet set, String name) {
    return contains(set, name) ? set : new HideSet(name, set);
  }

  static HideSet union(HideSet a, HideSet b) {
    HideSet out = a;
    for (HideSet s = b; s != null; s = s.rest) {
      out = add(out, s.name);
    }
    return out;
  }

  static HideSet intersection(HideSet a, HideSet b) {
    HideSet out = null;
    for (HideSet s = a; s != null; s = s.rest) {
      if (contains(b, s.name)) {
        out = new HideSet(s.name, out);
      }
    }
    return out;
  }
}
