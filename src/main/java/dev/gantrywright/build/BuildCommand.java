package dev.gantrywright.build;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A command to run in a folder.
 *
 * @param words the program and its arguments, one word each; never passed through a shell
 * @param folder where it runs
 * @param environment additions to the environment
 */
public record BuildCommand(List<String> words, Path folder, Map<String, String> environment) {
  /** Stands in a command for the build target. */
  public static final String TARGET = "{target}";

  /** The variable that also carries the target, so that a shell line can quote it itself. */
  public static final String TARGET_VARIABLE = "BUILD_TARGET";

  public BuildCommand {
    words = List.copyOf(words);
    environment = Map.copyOf(environment);
    if (words.isEmpty() || words.get(0).isBlank()) {
      throw new IllegalArgumentException("the build command is empty; give a program to run");
    }
  }

  /**
   * A command given as words, as the profile keeps it.
   *
   * @param target put in the place of {@code {target}} in any word, as it is: without a shell no
   *     sign in it can mean anything
   * @throws IllegalArgumentException where the command is empty, or needs a target and has none
   */
  public static BuildCommand of(
      List<String> words, Path folder, Map<String, String> environment, String target) {
    List<String> filled = new ArrayList<>();
    for (String word : words) {
      if (word.contains(TARGET) && (target == null || target.isBlank())) {
        throw new IllegalArgumentException(
            "the build command asks for " + TARGET + ", and the profile names no build target");
      }
      filled.add(target == null ? word : word.replace(TARGET, target));
    }
    return new BuildCommand(filled, folder, withTarget(environment, target));
  }

  /**
   * A line for the user's own shell, as typed.
   *
   * <p>Nothing is pasted into the line: {@code {target}} becomes a reference to a variable, in
   * double quotes, so that a target cannot become part of the command.
   */
  public static BuildCommand shell(
      Shell shell, String line, Path folder, Map<String, String> environment, String target) {
    if (line.isBlank()) {
      throw new IllegalArgumentException("the build command is empty; give a program to run");
    }
    if (line.contains(TARGET) && (target == null || target.isBlank())) {
      throw new IllegalArgumentException(
          "the build command asks for " + TARGET + ", and the profile names no build target");
    }
    List<String> words = new ArrayList<>(shell.words());
    words.add(line.replace(TARGET, shell.reference(TARGET_VARIABLE)));
    return new BuildCommand(words, folder, withTarget(environment, target));
  }

  private static Map<String, String> withTarget(Map<String, String> environment, String target) {
    if (target == null || target.isBlank()) {
      return environment;
    }
    Map<String, String> all = new java.util.HashMap<>(environment);
    all.put(TARGET_VARIABLE, target);
    return all;
  }

  /** The command as one line to show, words with blanks in quotes. */
  public String shown() {
    StringBuilder out = new StringBuilder();
    for (String word : words) {
      boolean plain = word.matches("[A-Za-z0-9_@%+=:,./\\\\-]+");
      out.append(out.isEmpty() ? "" : " ")
          .append(plain ? word : "'" + word.replace("'", "'\\''") + "'");
    }
    return out.toString();
  }
}
