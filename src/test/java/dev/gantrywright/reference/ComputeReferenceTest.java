package dev.gantrywright.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.gantrywright.cli.CommandRun;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import tools.jackson.databind.JsonNode;

/** Every published check value goes through the command line and its JSON, source beside it. */
class ComputeReferenceTest {

  static Stream<Arguments> rows() {
    return CsvTable.read("reference-values.csv").stream()
        .map(
            row ->
                Arguments.of(
                    row.get("id") + ": " + row.get("call") + " [" + row.get("source") + "]", row));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rows")
  void theCommandLineAnswersThePublishedValue(String name, Map<String, String> row) {
    List<String> call = new ArrayList<>(List.of("compute"));
    call.addAll(Arrays.asList(row.get("call").split(" ")));
    call.addAll(List.of("--format", "json"));
    CommandRun run = CommandRun.of(call.toArray(String[]::new));
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.err()).isEmpty();
    JsonNode value = run.json().path(row.get("key"));
    assertThat(value.isNumber()).as("%s in %s", row.get("key"), run.out()).isTrue();
    assertThat(value.doubleValue())
        .as(name)
        .isCloseTo(
            Double.parseDouble(row.get("expected")),
            within(Double.parseDouble(row.get("tolerance"))));
  }

  @Test
  void theWholeTableIsRead() {
    assertThat(rows().count()).isEqualTo(174);
  }
}
