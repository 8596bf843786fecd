package dev.gantrywright.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * The arguments of {@code macros} in the form that build scripts give, parsed without the library
 * for command lines: starting that takes longer than listing a hundred headers.
 */
record MacrosArguments(
    List<Path> files, List<String> defines, List<Path> include, boolean systemHeaders) {

  /** The arguments behind the verb, or null where the full parser must look at them. */
  static MacrosArguments parse(String[] args, int from) {
    List<Path> files = new ArrayList<>();
    List<String> defines = new ArrayList<>();
    List<Path> include = new ArrayList<>();
    boolean system = true;
    try {
      for (int i = from; i < args.length; i++) {
        String arg = args[i];
        if (arg.equals("--no-system-headers")) {
          system = false;
        } else if ((arg.equals("--define") || arg.equals("--include")) && i + 1 < args.length) {
          String value = args[++i];
          if (value.startsWith("-")) {
            return null;
          }
          if (arg.equals("--define")) {
            defines.add(value);
          } else {
            include.add(Path.of(value));
          }
        } else if (arg.startsWith("--define=")) {
          defines.add(arg.substring("--define=".length()));
        } else if (arg.startsWith("--include=")) {
          include.add(Path.of(arg.substring("--include=".length())));
        } else if (arg.startsWith("-") || arg.startsWith("@") || arg.startsWith("\"")) {
          return null;
        } else {
          files.add(Path.of(arg));
        }
      }
    } catch (InvalidPathException e) {
      return null;
    }
    return files.isEmpty() ? null : new MacrosArguments(files, defines, include, system);
  }
}
