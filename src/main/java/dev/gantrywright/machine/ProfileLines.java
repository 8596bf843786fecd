package dev.gantrywright.machine;

import tools.jackson.core.JacksonException;

/** On which line of a profile's file a field stands. */
public final class ProfileLines {
  private final Located located;

  private ProfileLines(Located located) {
    this.located = located;
  }

  /** Of a file's bytes; where they are no JSON every field stands on line 1. */
  public static ProfileLines of(byte[] json) {
    try {
      return new ProfileLines(Located.of(json));
    } catch (JacksonException broken) {
      return new ProfileLines(Located.of(new byte[] {'{', '}'}));
    }
  }

  /** The line of the field, counted from 1, or of the section that would hold it. */
  public int of(String path) {
    return located.at(path).line();
  }
}
