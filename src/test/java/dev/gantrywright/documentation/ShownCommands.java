package dev.gantrywright.documentation;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.board.Tool;
import dev.gantrywright.cli.Cli;
import dev.gantrywright.cli.CommandRun;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine;

/**
 * Runs the commands that a page shows, in their order, in a workshop of its own: {@code
 * demo-profiles} and {@code ~} stand for folders in it. A command of Gantrywright runs in this
 * process, a plain file command or {@code make} in a shell. A comment {@code # exit status N}
 * behind a command says how it ends; without one it ends with 0.
 */
final class ShownCommands {
  static final String START = "java -jar target/gantrywright.jar ";

  private static final Pattern STATUS = Pattern.compile("\\s+# exit status (\\d)\\b.*$");
  private static final Pattern SHELL =
      Pattern.compile("^(cp|mv|mkdir|sed|make|\\./|cd ~/\\S+ &&).*");
  private static final Pattern WORD = Pattern.compile("'([^']*)'|\"([^\"]*)\"|(\\S+)");

  private final Path folder;
  private final Path home;

  ShownCommands(Path folder) {
    this.folder = folder;
    this.home = folder.resolve("home");
    try {
      Files.createDirectories(home);
      DemoWorkshop.unpack(folder.resolve("demo-profiles"));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  /** Whether a block's line is one that is run. */
  static boolean runs(String line) {
    return line.startsWith(START) || SHELL.matcher(line).matches();
  }

  /** Long commands are broken with a backslash, as a shell takes them. */
  static List<String> whole(List<String> lines) {
    return String.join("\n", lines)
        .replaceAll("\\\\\n\\s*", "")
        .lines()
        .map(line -> line.replaceFirst("^\\$ ", "").strip())
        .filter(line -> !line.isEmpty())
        .toList();
  }

  /** Runs one command and returns what it printed, with the folders called as on the page. */
  String run(String line) {
    Matcher told = STATUS.matcher(line);
    int status = told.find() ? Integer.parseInt(told.group(1)) : 0;
    String command = told.replaceFirst("");
    String printed;
    if (command.startsWith(START)) {
      CommandRun run = CommandRun.of(words(command.substring(START.length())));
      printed = run.out() + run.err();
      assertThat(run.status()).as("exit status of: %s%n%s", command, printed).isEqualTo(status);
    } else {
      Tool.Output run = Tool.run(folder, "sh", "-c", command.replace("~/", home + "/"));
      printed = run.out();
      assertThat(run.exit()).as("exit status of: %s%n%s", command, printed).isEqualTo(status);
    }
    return printed.replace(home.toString(), "~").replace(folder + "/", "");
  }

  private String[] words(String command) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(command);
    while (word.find()) {
      String text = Stream.of(1, 2, 3).map(word::group).filter(g -> g != null).findFirst().get();
      words.add(placed(text));
    }
    // Keeps the user's own folder out of it, and a history as a user has it.
    add(words, "--records", folder.resolve("records").toString());
    add(words, "--history", "on");
    return words.toArray(String[]::new);
  }

  private static void add(List<String> words, String option, String value) {
    CommandLine verb = Cli.commandLine().getSubcommands().get(words.get(0));
    if (verb != null
        && verb.getCommandSpec().findOption(option) != null
        && !words.contains(option)) {
      words.addAll(1, List.of(option, value));
    }
  }

  private String placed(String word) {
    if (word.startsWith("~/")) {
      return home.resolve(word.substring(2)).toString();
    }
    return word.startsWith("demo-profiles") ? folder.resolve(word).toString() : word;
  }

  /** Holds a shown output to the real one: its lines in order; … stands for anything left out. */
  static void assertShown(List<String> shown, String real) {
    List<String> left = real.lines().map(ShownCommands::tight).collect(Collectors.toList());
    for (String line : shown) {
      if (tight(line).isEmpty() || tight(line).equals("…")) {
        continue;
      }
      Pattern wanted =
          Pattern.compile(
              Stream.of(tight(line).split("…", -1))
                  .map(Pattern::quote)
                  .collect(Collectors.joining(".*")));
      int at = 0;
      while (at < left.size() && !wanted.matcher(left.get(at)).matches()) {
        at++;
      }
      assertThat(at < left.size())
          .as("the page shows a line that is not printed there: %s%n%nprinted:%n%s", line, real)
          .isTrue();
      left = left.subList(at + 1, left.size());
    }
  }

  private static String tight(String line) {
    return line.strip().replaceAll("\\s+", " ");
  }
}
