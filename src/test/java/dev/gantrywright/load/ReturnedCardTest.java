package dev.gantrywright.load;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.load.LoadOutcome.State;
import java.io.IOException;
import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Every state in which a card can come back. */
class ReturnedCardTest {
  private static final byte[] OURS = {1, 2, 3};
  private static final byte[] OLD = {9, 9};

  private final FaultyCard card = new FaultyCard();

  private static PendingLoad pending(LoaderSign sign, String to, byte[] before) {
    return new PendingLoad(
        "FULMAR.IMG",
        Hashes.of(OURS),
        Instant.EPOCH,
        sign,
        Optional.ofNullable(to),
        Optional.ofNullable(before).map(Hashes::of));
  }

  private State state(PendingLoad p) throws IOException {
    return ReturnedCard.look(card, p).state();
  }

  @Test
  void renamedWithOurBytesIsLoaded() throws IOException {
    card.files.put("FULMAR.OLD", OURS);
    assertThat(state(pending(LoaderSign.RENAMED, "FULMAR.OLD", null))).isEqualTo(State.LOADED);
    assertThat(state(pending(LoaderSign.RENAMED, null, null))).isEqualTo(State.LOADED);
    assertThat(state(pending(LoaderSign.RENAMED, "FULMAR.OLD", OURS)))
        .as("the same image once more")
        .isEqualTo(State.LOADED);
  }

  @Test
  void anOldSignProvesNothing() throws IOException {
    card.files.put("FULMAR.OLD", OLD);
    LoadOutcome o = ReturnedCard.look(card, pending(LoaderSign.RENAMED, "FULMAR.OLD", OLD));
    assertThat(o.state()).isEqualTo(State.UNSURE);
    assertThat(o.text()).contains("earlier load");
    assertThat(state(pending(LoaderSign.RENAMED, "FULMAR.OLD", null))).isEqualTo(State.UNSURE);
  }

  @Test
  void stillThereIsNotLoaded() throws IOException {
    card.files.put("FULMAR.IMG", OURS);
    card.files.put("FULMAR.OLD", OURS);
    assertThat(state(pending(LoaderSign.RENAMED, "FULMAR.OLD", OURS))).isEqualTo(State.NOT_LOADED);
    assertThat(state(pending(LoaderSign.GONE, null, null))).isEqualTo(State.NOT_LOADED);
    assertThat(state(pending(LoaderSign.NONE, null, null))).isEqualTo(State.UNSURE);
    card.files.put("FULMAR.IMG", OLD);
    assertThat(state(pending(LoaderSign.GONE, null, null))).isEqualTo(State.NOT_LOADED);
  }

  @Test
  void goneMeansWhatTheSheetSays() throws IOException {
    assertThat(state(pending(LoaderSign.GONE, null, null))).isEqualTo(State.LOADED);
    assertThat(state(pending(LoaderSign.NONE, null, null))).isEqualTo(State.UNSURE);
    assertThat(state(pending(LoaderSign.RENAMED, "FULMAR.OLD", null))).isEqualTo(State.UNSURE);
    assertThat(state(pending(LoaderSign.RENAMED, null, null))).isEqualTo(State.UNSURE);
  }

  @Test
  void whatComesNextIsSaid() {
    assertThat(pending(LoaderSign.RENAMED, "FULMAR.OLD", null).next())
        .contains("renames it to FULMAR.OLD");
    assertThat(pending(LoaderSign.GONE, null, null).next()).contains("removes it");
    assertThat(pending(LoaderSign.NONE, null, null).next()).contains("no sign");
  }
}
