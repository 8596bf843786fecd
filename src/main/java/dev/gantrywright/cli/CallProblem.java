package dev.gantrywright.cli;

import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is wrong with a call, in one sentence of our own. */
final class CallProblem {
  private CallProblem() {}

  static String text(ParameterException problem) {
    if (problem instanceof UnmatchedArgumentException unmatched) {
      return unmatched(unmatched);
    }
    if (problem instanceof MissingParameterException missing && !missing.getMissing().isEmpty()) {
      return missing(missing);
    }
    return problem.getMessage().replace("is not a double", "is not a number");
  }

  private static String unmatched(UnmatchedArgumentException problem) {
    String word = problem.getUnmatched().get(0);
    boolean verb = problem.getCommandLine().getParent() == null;
    if (word.startsWith("-")) {
      return "there is no option '" + word + "'" + meant(problem.getSuggestions());
    }
    return verb
        ? "there is no verb '" + word + "'" + meant(problem.getSuggestions())
        : "'" + word + "' is one word too many";
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
