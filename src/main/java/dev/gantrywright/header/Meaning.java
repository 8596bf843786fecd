package dev.gantrywright.header;

import java.util.List;

/** What a macro name stands for at one place of the evaluation. */
sealed interface Meaning {

  /** No definition is in force. */
  record Undefined() implements Meaning {}

  /** The folder does not say: only the compiler, or a file outside, knows. */
  record External() implements Meaning {}

  /** Defined by a directive. */
  record Defined(SourceFile file, int directive) implements Meaning {
    String place() {
      return file.place(directive);
    }

    /** Null for a malformed parameter list. */
    MacroBody body() {
      return file.tokens().macro(directive);
    }
  }

  /** One of several, depending on a condition that is open. */
  record Several(List<Meaning> alternatives) implements Meaning {
    /** True or false when all alternatives agree on being defined, otherwise null. */
    Boolean defined() {
      Boolean all = null;
      for (Meaning m : alternatives) {
        if (m instanceof External) {
          return null;
        }
        boolean here = m instanceof Defined;
        if (all != null && all != here) {
          return null;
        }
        all = here;
      }
      return all;
    }
  }

  Undefined UNDEFINED = new Undefined();
  External EXTERNAL = new External();
}
