package dev.gantrywright.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.MutuallyExclusiveArgsException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is wrong with a call, in one sentence of our own. */
final class CallProblem {
  private static final Pattern OPTION = Pattern.compile("--[a-z][a-z-]*");

  private CallProblem() {}

  static String text(ParameterException problem) {
    if (problem instanceof UnmatchedArgumentException unmatched) {
      return unmatched(unmatched);
    }
    if (problem instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      return missing(missing);
    }
    if (problem instanceof MutuallyExclusiveArgsException) {
      return together(problem.getMessage());
    }
    return problem.getArgSpec() == null || problem.getValue() == null
        ? problem.getMessage()
        : wrongValue(problem.getArgSpec(), problem.getValue(), problem.getMessage());
  }

  private static String wrongValue(ArgSpec spec, String value, String told) {
    String found = name(spec) + ": '" + value + "' ";
    Class<?> type = spec.typeInfo().getType();
    if (type.isEnum()) {
      return found
          + "is not known; known are "
          + Arrays.stream(type.getEnumConstants())
              .map(Object::toString)
              .collect(Collectors.joining(", "));
    }
    if (Map.class.isAssignableFrom(type)) {
      return found + "is no " + spec.paramLabel();
    }
    if (told.endsWith("is not an int") || told.endsWith("is not a long")) {
      return found + "is not a whole number";
    }
    if (told.endsWith("is not a double")) {
      return found
          + "is not a number"
          + (value.indexOf(',') < 0 ? "" : "; the decimal sign is a point");
    }
    String prefix = String.format(Locale.ROOT, "Invalid value for option '%s': ", name(spec));
    return told.startsWith(prefix)
        ? name(spec) + ": " + told.substring(prefix.length())
        : told.replaceFirst("^Invalid value for (option|positional parameter)[^:]*: ", "");
  }

  private static String together(String told) {
    List<String> options =
        OPTION.matcher(told).results().map(MatchResult::group).distinct().sorted().toList();
    return String.join(" and ", options) + " do not go together; give one of them";
  }

  private static String unmatched(UnmatchedArgumentException problem) {
    String word = problem.getUnmatched().get(0);
    if (word.isEmpty()) {
      return "one of the words is empty; give what belongs there, or leave it out";
    }
    if (word.startsWith("-")) {
      return "there is no option '" + word + "'" + meant(problem.getSuggestions());
    }
    if (problem.getCommandLine().getParent() == null) {
      return "there is no verb '" + word + "'" + meant(problem.getSuggestions());
    }
    Set<String> parts = problem.getCommandLine().getSubcommands().keySet();
    return parts.isEmpty()
        ? "'" + word + "' is one word too many"
        : "there is no calculator '" + word + "'; there are " + String.join(", ", parts);
  }

  private static String meant(List<String> near) {
    return near.isEmpty()
        ? ""
        : near.stream().limit(2).collect(Collectors.joining("' or '", "; did you mean '", "'?"));
  }

  private static String missing(MissingParameterException problem) {
    boolean bare = problem.getMessage().startsWith("Missing required parameter for option");
    List<String> names = problem.getMissing().stream().map(CallProblem::name).toList();
    return bare
        ? names.get(0) + " needs a value"
        : String.join(" and ", names) + (names.size() == 1 ? " is missing" : " are missing");
  }

  private static String name(ArgSpec spec) {
    return spec instanceof OptionSpec option ? option.longestName() : spec.paramLabel();
  }
}
