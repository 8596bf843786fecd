package dev.gantrywright.build;

/** Hears a build as it runs; called on the build's own threads, one call at a time. */
public interface BuildListener {
  /** The command starts; {@code attempt} is 1, or 2 for the one automatic second try. */
  default void started(BuildCommand command, int attempt) {}

  /** A line that the build printed, without its end. */
  default void line(String text) {}

  /** How far it is, 0 to 1, where its output says so. */
  default void progress(double done) {}

  /** A diagnostic, as soon as its line is read. */
  default void diagnostic(Diagnostic diagnostic) {}

  /** Why a second try is made. */
  default void secondTry(String reason) {}
}
