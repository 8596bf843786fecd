package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.DemoWorkshop;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

class HistoryVerbTest {
  @TempDir Path folder;
  private Path heron;
  private Path firmware;

  @BeforeEach
  void unpack() throws Exception {
    heron = DemoWorkshop.unpack(folder.resolve("workshop"));
    firmware = heron.resolveSibling("rookery-2.3");
  }

  private CommandRun run(Object... words) {
    List<String> args = new ArrayList<>();
    for (Object word : words) {
      args.add(word.toString());
    }
    return CommandRun.of(args.toArray(String[]::new));
  }

  private List<String> kinds() {
    JsonNode events = run("history", heron, "--format", "json").json().path("events");
    return StreamSupport.stream(events.spliterator(), false)
        .map(event -> event.path("kind").asString())
        .toList();
  }

  private void change(String from, String to) throws Exception {
    String text = Files.readString(heron);
    assertThat(text).contains(from);
    Files.writeString(heron, text.replace(from, to));
  }

  @Test
  void everyVerbThatDoesSomethingGoesIntoIt() {
    run("patch", firmware, "--profile", heron, "--out", folder.resolve("p"), "--history", "on");
    run("prove", heron, "--history", "on", "--signed", "ida");
    CommandRun measured =
        run(
            "compute calibrate --current 80 --commanded 100 --measured 98.6 --axis x --history on"
                .split(" "),
            heron);

    assertThat(measured.err()).isEmpty();
    assertThat(kinds()).containsExactly("export", "proof", "calibration");
    JsonNode proof = run("history", heron, "--format", "json").json().path("events").get(1);
    assertThat(proof.path("by").asString()).isEqualTo("ida");
    CommandRun told = run("history", heron);
    assertThat(told.status()).isZero();
    assertThat(told.out().lines()).hasSize(3);
    assertThat(told.out())
        .contains("export      rookery-2.3: ", "proof       practice board: ")
        .contains("calibration axes.x.stepsPerMm 80, measured 81.136 ± ");
  }

  private CommandRun run(String[] words, Path profile) {
    List<Object> all = new ArrayList<>(List.of((Object[]) words));
    all.add("--for");
    all.add(profile);
    return run(all.toArray());
  }

  @Test
  void aRunCanBeLeftOutOfIt() {
    run("patch", firmware, "--profile", heron, "--out", folder.resolve("p"), "--history", "off");

    assertThat(heron.resolveSibling("heron.history.jsonl")).doesNotExist();
    assertThat(run("history", heron).out()).startsWith("nothing was kept of this printer yet");
  }

  @Test
  void statesAreComparedAndBroughtBack() throws Exception {
    run("history", heron, "--note", "as delivered");
    change("\"stepsPerMm\": 160", "\"stepsPerMm\": 80");
    run("history", heron, "--note", "steps corrected");

    CommandRun compared = run("history", heron, "--compare", "1,2");
    assertThat(compared.status()).isEqualTo(1);
    assertThat(compared.out())
        .isEqualTo(
            "1 and 2: 1 value differs\n  axes.x.stepsPerMm  160 -> 80 steps/mm\n"
                .replace("\n", System.lineSeparator()));
    assertThat(run("history", heron, "--compare", "2").status()).isZero();
    assertThat(run("history", heron, "--show", "1").out()).contains("\"stepsPerMm\": 160");

    CommandRun back = run("history", heron, "--back-to", "1", "--format", "json");
    assertThat(back.status()).isZero();
    assertThat(back.json().path("differences").get(0).path("right").asInt()).isEqualTo(160);
    assertThat(Files.readString(heron)).contains("\"stepsPerMm\": 160");
    assertThat(kinds()).containsExactly("note", "note", "return");
  }

  @Test
  void twoPrintersAreCompared() {
    CommandRun run =
        run("history", heron, "--against", heron.resolveSibling("sandpiper.printer.json"));

    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out()).contains("  name  ", "Heron -> Sandpiper");
  }

  @Test
  void aTornLineIsReportedAndSetAside() throws Exception {
    run("history", heron, "--note", "one");
    Path file = heron.resolveSibling("heron.history.jsonl");
    Files.writeString(file, "{\"format\":1,\"time\":\"2026-", StandardOpenOption.APPEND);

    CommandRun torn = run("history", heron);
    assertThat(torn.err()).contains("line 2 was cut off while it was written");
    assertThat(torn.out().lines()).hasSize(1);

    CommandRun next = run("history", heron, "--note", "two");
    assertThat(next.err())
        .contains("heron.history.torn: lines that a crash cut off, set aside here: 1");
    assertThat(next.out().lines()).hasSize(2);
  }

  @Test
  void whatIsNotThereIsOneLine() {
    CommandRun noState = run("history", heron, "--compare", "7");
    assertThat(noState.status()).isEqualTo(2);
    assertThat(noState.err().strip().lines()).hasSize(1);
    assertThat(noState.err()).contains("no event '7'; it holds none yet");
    assertThat(run("history", folder.resolve("none.printer.json")).status()).isEqualTo(2);
    assertThat(run("history", heron, "--show", "1", "--note", "x").status()).isEqualTo(2);
  }
}
