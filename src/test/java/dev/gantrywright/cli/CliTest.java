package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

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

  @Test
  void helpNamesTheExitStatus() {
    CommandRun run = CommandRun.of("--help");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("Exit status: 0 fine");
  }
}
