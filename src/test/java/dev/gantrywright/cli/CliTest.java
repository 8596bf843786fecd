package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.OptionSpec;

class CliTest {
  @Test
  void anUnknownVerbIsOneLineAndStatusTwo() {
    CommandRun run = CommandRun.of("juggle");
    assertThat(run.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(run.out()).isEmpty();
    assertThat(run.err().lines()).hasSize(1).first().asString().contains("juggle");
  }

  @Test
  void anUnknownOptionIsOneLineAndStatusTwo() {
    CommandRun run = CommandRun.of("--colour");
    assertThat(run.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(run.err().lines()).hasSize(1).first().asString().contains("--colour");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "chekc x.json | there is no verb 'chekc'; did you mean 'check'",
        "check --formt json | there is no option '--formt'; did you mean '--folder' or '--format'",
        "check --format | --format needs a value",
        "macros | FILE is missing",
        "compute baud --uart avr --clock 16000000 | --baud is missing",
        "names a b | 'b' is one word too many"
      })
  void aWrongCallIsToldInOneSentence(String call, String told) {
    CommandRun run = CommandRun.of(call.split(" "));
    assertThat(run.status()).isEqualTo(ExitStatus.USAGE);
    assertThat(run.err().lines())
        .hasSize(1)
        .first()
        .asString()
        .startsWith(told)
        .contains("--help'");
  }

  /** A paragraph that is cut into lines by hand wraps a second time in a narrow terminal. */
  @Test
  void helpLeavesParagraphsToWrapByThemselves() {
    for (CommandLine verb : Cli.commandLine().getSubcommands().values()) {
      List<String> footer = List.of(verb.getCommandSpec().usageMessage().footer());
      for (int i = 1; i < footer.size(); i++) {
        assertThat(prose(footer.get(i - 1)) && prose(footer.get(i)))
            .as(verb.getCommandName() + ": " + footer.get(i))
            .isFalse();
      }
      for (OptionSpec option : verb.getCommandSpec().options()) {
        assertThat(option.description()).as(option.longestName()).hasSizeLessThan(2);
      }
    }
  }

  private static boolean prose(String line) {
    return !line.isEmpty() && !line.startsWith(" ");
  }

  @Test
  void helpNamesTheExitStatus() {
    CommandRun run = CommandRun.of("--help");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("Exit status: 0 fine");
  }
}
