package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.app.ManyProofs.Board;
import dev.gantrywright.app.ManyProofs.Outcome;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.link.practice.AxisMotion;
import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.prove.Check;
import java.io.IOException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ManyProofsTest {
  private static Board at(String name, int port, String link) {
    return new Board(
        name, PracticeFleet.profile(name, link), new PortAddress.Rfc2217("127.0.0.1", port));
  }

  /** Ten boards that fail, each in its own way, and what the outcome has to say about it. */
  private static Map<Board, String> failing(PracticeFleet fleet, TroubledServers servers)
      throws IOException {
    Map<Board, String> boards = new LinkedHashMap<>();
    boards.put(at("nobody listens", servers.nobody(), "{}"), "cannot be reached");
    boards.put(
        at("refused", servers.serve(TroubledServers::refuses), "{}"), "another client has it");
    boards.put(at("mute", servers.serve(TroubledServers::mute), "{}"), "does not answer");
    boards.put(
        at("noise", servers.serve(TroubledServers.always("\u0080\u00C4\u00FF\u0091\n")), "{}"),
        "baud rate");
    boards.put(
        at("flood", servers.serve(TroubledServers.endless("U".repeat(4000), 1)), "{}"),
        "does not answer");
    boards.put(at("hangs up", servers.serve(TroubledServers.hangsUpAfter(1)), "{}"), "127.0.0.1");
    boards.put(at("busy for ever", servers.serve(TroubledServers.busyAfter(1)), "{}"), "given up");
    boards.put(
        at("dangerous words", servers.nobody(), "{\"endstopQuery\": \"G28\"}"),
        "must be a command that only asks");
    boards.put(fleet.board("stuck", new Fault.Stuck("xMin", true)), "endstops.xMin.inverted");
    boards.put(
        fleet.board("stored", new Fault.Stored("x", AxisMotion.Quantity.STEPS_PER_MM, 82)),
        "axes.x.stepsPerMm");
    return boards;
  }

  private static String says(Outcome outcome) {
    return outcome.report() == null
        ? outcome.trouble()
        : outcome.report().checks().stream()
            .filter(c -> c.verdict() == Check.Verdict.FAIL)
            .map(Check::path)
            .collect(Collectors.joining(" "));
  }

  @Test
  void provesTwoHundredBoardsOfWhichTenFailEachInItsOwnWay() throws Exception {
    try (PracticeFleet fleet = new PracticeFleet();
        TroubledServers servers = new TroubledServers()) {
      Map<Board, String> failing = failing(fleet, servers);
      List<Board> boards = new ArrayList<>(failing.keySet());
      for (int i = boards.size(); i < 200; i++) {
        boards.add(fleet.board("board " + i));
      }
      List<Outcome> heard = new ArrayList<>();
      List<Outcome> outcomes =
          new ManyProofs(64, Duration.ofSeconds(40), Thread::new)
              .run(boards, heard::add, () -> false);
      assertThat(outcomes)
          .hasSize(200)
          .extracting(Outcome::board)
          .containsExactlyElementsOf(boards);
      assertThat(heard).containsExactlyInAnyOrderElementsOf(outcomes);
      assertThat(outcomes.subList(failing.size(), 200))
          .allSatisfy(o -> assertThat(says(o)).isEmpty());
      for (Outcome outcome : outcomes.subList(0, failing.size())) {
        assertThat(outcome.passed()).as(outcome.board().name()).isFalse();
        assertThat(says(outcome))
            .as(outcome.board().name())
            .isNotEmpty()
            .contains(failing.get(outcome.board()))
            .doesNotContain("Exception", "\n");
      }
    }
  }

  @Test
  void neverHasMoreLinesOpenThanAllowed() throws Exception {
    AtomicInteger open = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    try (TroubledServers servers = new TroubledServers()) {
      int port =
          servers.serve(
              (in, out) -> {
                most.accumulateAndGet(open.incrementAndGet(), Math::max);
                try {
                  TroubledServers.mute(in, out);
                } finally {
                  open.decrementAndGet();
                }
              });
      List<Board> boards =
          IntStream.range(0, 9).mapToObj(i -> at("mute " + i, port, "{}")).toList();
      List<Outcome> outcomes =
          new ManyProofs(3, Duration.ofMillis(300), Thread::new).run(boards, o -> {}, () -> false);
      assertThat(outcomes).extracting(Outcome::trouble).allMatch(t -> t.contains("given up"));
      // A line that is given up may take a moment to close while the next one opens.
      assertThat(most.get()).isBetween(1, 6);
    }
  }

  @Test
  void whatIsCancelledSaysSo() throws Exception {
    try (TroubledServers servers = new TroubledServers()) {
      int port = servers.serve(TroubledServers::mute);
      List<Board> boards = IntStream.range(0, 4).mapToObj(i -> at("b" + i, port, "{}")).toList();
      AtomicInteger asked = new AtomicInteger();
      List<Outcome> outcomes =
          new ManyProofs(2, Duration.ofSeconds(60), Thread::new)
              .run(boards, o -> {}, () -> asked.incrementAndGet() > 3);
      assertThat(outcomes)
          .extracting(o -> o.trouble().replaceFirst("^.*:\\d+: ", ""))
          .containsExactly(
              "cancelled", "cancelled", "not asked: cancelled", "not asked: cancelled");
    }
  }

  @Test
  void whatTheMachineTouchesAndMustSayGoesWithTheBoard() throws Exception {
    PortAddress practice = PortAddress.parse("practice:");
    Board parked =
        new Board(
            "parked on x",
            PracticeFleet.profile("Heron", "{}"),
            practice,
            Set.of("xMin"),
            Map.of("for", "another printer"));
    Outcome outcome = ManyProofs.usual().run(List.of(parked), o -> {}, () -> false).get(0);
    assertThat(says(outcome)).contains("endstops.xMin").contains("for");
  }

  @Test
  void refusesToRunWithoutALine() {
    assertThatThrownBy(() -> new ManyProofs(0, Duration.ofSeconds(1), Thread::new))
        .hasMessageContaining("above zero");
  }
}
