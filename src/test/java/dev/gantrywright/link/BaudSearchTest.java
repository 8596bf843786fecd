package dev.gantrywright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.link.BaudSearch.Heard;
import dev.gantrywright.link.practice.Fault;
import dev.gantrywright.link.practice.Wire;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

class BaudSearchTest {
  private static List<Heard> search(int boardBaud, List<Integer> rates, Fault... faults)
      throws Exception {
    try (Peer peer =
        Peer.of(Peer.Kind.RFC2217, PracticeMachines.board(faults), new Wire(boardBaud, false))) {
      return new BaudSearch(
              peer.connector(), SerialSettings.at(9_600), DialectFile.standard(), System::nanoTime)
          .run(rates, Duration.ofSeconds(3), baud -> true);
    }
  }

  @Test
  void findsTheRateThatAnswers() throws Exception {
    List<Heard> heard = search(250_000, List.of(57_600, 250_000, 9_600));
    assertThat(BaudSearch.found(heard)).contains(250_000);
    assertThat(heard).hasSize(2);
    assertThat(heard.get(0).answered()).isFalse();
    assertThat(heard.get(1).textShare()).isEqualTo(1.0);
  }

  @Test
  void aSearchThatIsGivenUpEndsAtOnce() throws Exception {
    List<Integer> asked = new java.util.ArrayList<>();
    try (Peer peer =
        Peer.of(Peer.Kind.RFC2217, PracticeMachines.board(), new Wire(250_000, false))) {
      List<Heard> heard =
          new BaudSearch(
                  peer.connector(),
                  SerialSettings.at(9_600),
                  DialectFile.standard(),
                  System::nanoTime)
              .run(
                  List.of(57_600, 9_600, 250_000),
                  Duration.ofHours(1),
                  baud -> {
                    asked.add(baud);
                    return asked.size() < 4;
                  });
      assertThat(BaudSearch.found(heard)).isEmpty();
    }
    assertThat(asked).isNotEmpty().doesNotContain(250_000);
  }

  @Test
  void findsNoneWhereNothingAnswers() throws Exception {
    List<Heard> heard = search(250_000, List.of(115_200, 9_600));
    assertThat(BaudSearch.found(heard)).isEmpty();
    assertThat(heard).extracting(Heard::baud).containsExactly(115_200, 9_600);
  }

  @Test
  void beginsWithTheRateThatIsDescribed() {
    assertThat(BaudSearch.usualFrom(9_600)).startsWith(9_600).hasSameSizeAs(BaudSearch.USUAL);
    assertThat(BaudSearch.usualFrom(31_250)).startsWith(31_250).containsAll(BaudSearch.USUAL);
  }

  @Test
  void aSilentBoardIsNoError() throws Exception {
    List<Heard> heard = search(9_600, List.of(9_600), new Fault.Silence(0, 1e6));
    assertThat(heard).containsExactly(new Heard(9_600, false, 0));
  }

  @Test
  void asksNothingThatMoves() {
    Dialect dangerous = DialectFile.with(java.util.Map.of("identityQuery", "G28"));
    assertThatThrownBy(
            () ->
                new BaudSearch(
                    settings -> {
                      throw new AssertionError("opened");
                    },
                    SerialSettings.at(9_600),
                    dangerous,
                    System::nanoTime))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("link.identityQuery");
  }
}
