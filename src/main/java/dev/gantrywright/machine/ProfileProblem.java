package dev.gantrywright.machine;

/** A profile or board sheet that cannot be read, with the place in the file. */
public final class ProfileProblem extends Exception {
  private static final long serialVersionUID = 1L;

  private final String file;
  private final int line;
  private final int column;
  private final String key;

  /**
   * @param line from 1; 0 where the whole file is meant
   * @param key path of the value, empty where none is at fault
   * @param text what is wrong and what to do
   */
  public ProfileProblem(String file, int line, int column, String key, String text) {
    super(place(file, line, column, key) + ": " + text);
    this.file = file;
    this.line = line;
    this.column = column;
    this.key = key;
  }

  private static String place(String file, int line, int column, String key) {
    StringBuilder place = new StringBuilder(file);
    if (line > 0) {
      place.append(", line ").append(line).append(", column ").append(column);
    }
    if (!key.isEmpty()) {
      place.append(", ").append(key);
    }
    return place.toString();
  }

  public String file() {
    return file;
  }

  public int line() {
    return line;
  }

  public int column() {
    return column;
  }

  public String key() {
    return key;
  }
}
