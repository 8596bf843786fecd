package dev.gantrywright.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

class HistoryFileTest {
  private static final Instant NOON = Instant.parse("2026-03-02T12:00:00.125Z");

  @TempDir Path folder;
  private HistoryFile history;
  private PrinterProfile heron;

  @BeforeEach
  void open() throws Exception {
    history = HistoryFile.beside(folder.resolve("heron.printer.json"));
    heron = ProfileStore.read(Path.of("demo-profiles/heron.printer.json"));
  }

  @Test
  void standsBesideTheProfileUnderItsName() {
    assertThat(history.file()).isEqualTo(folder.resolve("heron.history.jsonl"));
    assertThat(HistoryFile.beside(Path.of("/x/odd.json")).file())
        .isEqualTo(Path.of("/x/odd.json.history.jsonl"));
  }

  @Test
  void anEventComesBackAsItWas() throws Exception {
    ObjectNode facts = facts("first");

    Event written = history.append(new Draft(NOON, EventKind.EXPORT, "ida", state(80), facts));

    Event read = history.read().events().get(0);
    assertThat(read).isEqualTo(written);
    assertThat(read.number()).isEqualTo(1);
    assertThat(read.id()).hasSize(8);
    assertThat(read.time()).isEqualTo(NOON);
    assertThat(read.by()).isEqualTo("ida");
    assertThat(read.is(EventKind.EXPORT)).isTrue();
    assertThat(read.facts()).isEqualTo(facts);
    assertThat(read.text()).contains(state(80).text());
  }

  @Test
  void aStateIsKeptOnceAndFoundFromEveryEvent() throws Exception {
    history.append(note(80, "one"));
    history.append(note(80, "two"));
    history.append(note(81, "three"));
    Event back = history.append(note(80, "four"));

    Timeline timeline = history.read();
    assertThat(timeline.events().stream().map(event -> event.text().isPresent()))
        .containsExactly(true, false, true, false);
    assertThat(timeline.state(back)).contains(state(80));
    assertThat(timeline.state(back).orElseThrow().profile().axes().get("x").stepsPerMm())
        .isEqualTo(80);
  }

  @Test
  void eventsAreFoundByNumberByIdAndByState() throws Exception {
    Event first = history.append(note(80, "one"));
    Event second = history.append(note(81, "two"));

    Timeline timeline = history.read();
    assertThat(timeline.find("2")).contains(second);
    assertThat(timeline.find(first.id())).contains(first);
    assertThat(timeline.find(second.state().substring(0, 12))).contains(second);
    assertThat(timeline.find("3")).isEmpty();
    assertThat(timeline.last(EventKind.NOTE)).contains(second);
    assertThat(timeline.last(EventKind.LOAD)).isEmpty();
  }

  @Test
  void nothingThereYetIsAnEmptyTimeline() throws Exception {
    assertThat(history.read()).isEqualTo(new Timeline(List.of(), List.of(), 0));
  }

  @Test
  void cutAnywhereInItsLastLineTheFileKeepsEveryEarlierEvent() throws Exception {
    history.append(note(80, "one"));
    int whole = (int) Files.size(history.file());
    history.append(note(80, "two, with °C and a \"quote\""));
    byte[] all = Files.readAllBytes(history.file());

    for (int cut = whole; cut < all.length; cut++) {
      byte[] left = Arrays.copyOf(all, cut);
      Files.write(history.file(), left);
      Files.deleteIfExists(history.torn());
      boolean complete = cut == all.length - 1;

      Timeline before = history.read();
      assertThat(before.events()).as("cut at %d", cut).hasSize(complete ? 2 : 1);
      assertThat(before.unread()).hasSize(complete || cut == whole ? 0 : 1);
      before.unread().forEach(line -> assertThat(line.torn()).isTrue());

      history.append(note(81, "after"));

      Timeline after = history.read();
      assertThat(after.events()).as("cut at %d", cut).hasSize(complete ? 3 : 2);
      assertThat(after.unread()).isEmpty();
      if (complete || cut == whole) {
        assertThat(history.torn()).doesNotExist();
        assertThat(after.setAside()).isZero();
      } else {
        assertThat(Files.readAllBytes(history.torn()))
            .isEqualTo(concat(Arrays.copyOfRange(all, whole, cut), "\n"));
        assertThat(after.setAside()).isEqualTo(1);
      }
    }
  }

  @Test
  void tornLinesGatherBesideIt() throws Exception {
    for (int i = 0; i < 3; i++) {
      history.append(note(80, "whole " + i));
      add("{\"format\":1,\"ti");
    }
    history.append(note(80, "last"));

    assertThat(history.read().events()).hasSize(4);
    assertThat(history.read().setAside()).isEqualTo(3);
    assertThat(Files.readString(history.torn())).isEqualTo("{\"format\":1,\"ti\n".repeat(3));
  }

  @Test
  void whatIsNoEventIsNamedAndPassedOver() throws Exception {
    history.append(note(80, "one"));
    add("<<<<<<< a merge that was not settled\n");
    add("{\"format\":2,\"kind\":\"dance\"}\n");
    add("{\"format\":1,\"time\":\"yesterday\",\"kind\":\"note\",\"state\":\"x\"}\n");
    add("\u0000\u0000\u0000\u0000\n");
    add("\n");
    history.append(note(80, "two"));

    Timeline timeline = history.read();
    assertThat(timeline.events()).hasSize(2);
    assertThat(timeline.unread().stream().map(UnreadLine::shown))
        .containsExactly(
            "line 2 is no whole JSON object; passed over",
            "line 3 has format 2; this version reads 1; passed over",
            "line 4 is no event: its \"time\" is no UTC time such as 2026-01-31T12:00:00Z;"
                + " passed over",
            "line 5 is no whole JSON object; passed over");
  }

  @Test
  void aProfileChangedInTheFileIsNotBelieved() throws Exception {
    history.append(note(80, "one"));
    Files.writeString(
        history.file(), Files.readString(history.file()).replace("bench 2", "bench 3"));

    assertThat(history.read().events()).isEmpty();
    assertThat(history.read().unread().get(0).why()).contains("does not fit its fingerprint");
  }

  @Test
  void lineEndsOfAnotherSystemChangeNothing() throws Exception {
    Event event = history.append(note(80, "one"));
    Files.writeString(history.file(), Files.readString(history.file()).replace("\n", "\r\n"));

    assertThat(history.read().events()).containsExactly(event);
  }

  @Test
  void twoBranchesMergedLineByLineKeepAllEventsAndTheirIds() throws Exception {
    Event shared = history.append(note(80, "shared"));
    byte[] base = Files.readAllBytes(history.file());
    Event ours = history.append(note(81, "ours"));
    byte[] mine = Files.readAllBytes(history.file());
    Files.write(history.file(), base);
    Event theirs = history.append(note(82, "theirs"));
    byte[] other = Files.readAllBytes(history.file());

    Files.write(
        history.file(),
        concat(mine, new String(other, StandardCharsets.UTF_8).substring(base.length)));

    assertThat(history.read().events().stream().map(Event::id))
        .containsExactly(shared.id(), ours.id(), theirs.id());
    assertThat(history.read().state(theirs)).contains(state(82));
  }

  @Test
  void manyWritersLoseNothing() throws Exception {
    ExecutorService hands = Executors.newFixedThreadPool(4);
    try {
      List<Future<Event>> all = new ArrayList<>();
      for (int i = 0; i < 40; i++) {
        int n = i;
        all.add(hands.submit(() -> history.append(note(80 + n % 3, "event " + n))));
      }
      for (Future<Event> one : all) {
        one.get();
      }
    } finally {
      hands.shutdownNow();
    }

    Timeline timeline = history.read();
    assertThat(timeline.events()).hasSize(40);
    assertThat(timeline.unread()).isEmpty();
    assertThat(timeline.events().stream().filter(event -> event.text().isPresent())).hasSize(3);
  }

  @Test
  void aFolderThatIsNotThereIsOneLine() {
    HistoryFile lost = HistoryFile.beside(folder.resolve("gone/heron.printer.json"));

    assertThatThrownBy(() -> lost.append(note(80, "one")))
        .isInstanceOf(IOException.class)
        .hasMessage(lost.file() + ": cannot be written: its folder is not there");
  }

  private void add(String text) throws IOException {
    Files.writeString(history.file(), text, StandardOpenOption.APPEND);
  }

  private static byte[] concat(byte[] bytes, String text) {
    return concat(bytes, text.getBytes(StandardCharsets.UTF_8));
  }

  private static byte[] concat(byte[] bytes, byte[] more) {
    byte[] all = Arrays.copyOf(bytes, bytes.length + more.length);
    System.arraycopy(more, 0, all, bytes.length, more.length);
    return all;
  }

  private Draft note(double steps, String text) throws Exception {
    return new Draft(NOON, EventKind.NOTE, "ida", state(steps), facts(text));
  }

  private ProfileState state(double steps) throws Exception {
    return ProfileState.of(ProfileValues.with(heron, "axes.x.stepsPerMm", steps));
  }

  private static ObjectNode facts(String text) {
    return JsonMapper.shared().createObjectNode().put("text", text);
  }

  @Test
  void aHistoryBeyondTheLimitOrNoFileIsOneLine() throws Exception {
    Files.write(history.file(), new byte[(1 << 20) + 1]);
    HistoryFile bounded = new HistoryFile(history.file(), Integer.MAX_VALUE, 1 << 20);
    assertThatThrownBy(bounded::read)
        .hasMessage(history.file() + ": is larger than 1 MiB; move it away to begin a new one");
    Files.delete(history.file());
    Files.createDirectory(history.file());
    assertThatThrownBy(history::read).hasMessageContaining("is no file, so it is no history");
  }
}
