package dev.gantrywright.names;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The macros that compiler flags define. */
final class BuildFlags {
  /**
   * One {@code -D NAME=VALUE}.
   *
   * @param start offset of the value
   * @param end exclusive
   */
  record Define(String name, int start, int end) {}

  private static final Pattern DEFINE =
      Pattern.compile("(?<=^|\\s|[\"'])-D\\s*([A-Za-z_]\\w*)=(\"[^\"]*\"|'[^']*'|[^\\s\"']*)");

  private BuildFlags() {}

  static List<Define> of(String flags) {
    List<Define> defines = new ArrayList<>();
    if (flags.contains("-D")) {
      Matcher found = DEFINE.matcher(flags);
      while (found.find()) {
        defines.add(new Define(found.group(1), found.start(2), found.end(2)));
      }
    }
    return defines;
  }
}
