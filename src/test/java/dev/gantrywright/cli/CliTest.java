package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

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

  @Test
  void helpNamesTheExitStatus() {
    CommandRun run = CommandRun.of("--help");
    assertThat(run.status()).isZero();
    assertThat(run.out()).contains("Exit status: 0 fine");
  }
}
