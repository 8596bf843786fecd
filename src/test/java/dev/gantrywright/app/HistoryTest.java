package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class HistoryTest {
  private static final Instant NOON = Instant.parse("2026-01-01T12:00:00Z");

  @Test
  void startsCleanWithNothingToUndo() {
    History<String> history = History.of("a");
    assertThat(history.present()).isEqualTo("a");
    assertThat(history.isSaved()).isTrue();
    assertThat(history.undoLabel()).isEmpty();
    assertThat(history.redoLabel()).isEmpty();
    assertThat(history.undo()).isSameAs(history);
    assertThat(history.redo()).isSameAs(history);
  }

  @Test
  void namesWhatUndoTakesBackAndRedoDoesAgain() {
    History<String> history = History.of("a").edit("a to b", "", "b", NOON);
    assertThat(history.undoLabel()).contains("a to b");
    History<String> back = history.undo();
    assertThat(back.present()).isEqualTo("a");
    assertThat(back.redoLabel()).contains("a to b");
    assertThat(back.redo().present()).isEqualTo("b");
  }

  @Test
  void typingInOneFieldIsOneStep() {
    History<String> history =
        History.of("")
            .edit("speed 1", "speed", "1", NOON)
            .edit("speed 12", "speed", "12", NOON.plusMillis(300))
            .edit("speed 120", "speed", "120", NOON.plusMillis(600));
    assertThat(history.undoLabel()).contains("speed 120");
    assertThat(history.undo().present()).isEmpty();
  }

  @Test
  void aPauseAnotherFieldAndAnEmptyKeyEachStartANewStep() {
    History<String> one = History.of("").edit("1", "speed", "1", NOON);
    Instant late = NOON.plus(History.MERGE_WINDOW).plusMillis(1);
    assertThat(one.edit("2", "speed", "2", late).undo().present()).isEqualTo("1");
    assertThat(one.edit("2", "lead", "2", NOON).undo().present()).isEqualTo("1");
    History<String> unkeyed = History.of("").edit("1", "", "1", NOON);
    assertThat(unkeyed.edit("2", "", "2", NOON).undo().present()).isEqualTo("1");
  }

  @Test
  void savingEndsAMergeSoThatTheSavedPointStaysReachable() {
    History<String> saved = History.of("").edit("1", "speed", "1", NOON).markSaved();
    History<String> later = saved.edit("12", "speed", "12", NOON.plusMillis(10));
    assertThat(later.isSaved()).isFalse();
    assertThat(later.undo().isSaved()).isTrue();
    assertThat(later.undo().present()).isEqualTo("1");
  }

  @Test
  void aNewEditForgetsWhatCouldBeRedone() {
    History<String> history = History.of("a").edit("b", "", "b", NOON).undo();
    assertThat(history.edit("c", "", "c", NOON).redoLabel()).isEmpty();
  }

  @Test
  void anEditThatChangesNothingIsNone() {
    History<String> history = History.of("a");
    assertThat(history.edit("nothing", "", "a", NOON)).isSameAs(history);
  }

  @Test
  void listsItsStepsNewestFirst() {
    History<String> history =
        History.of("a").edit("to b", "", "b", NOON).edit("to c", "", "c", NOON);
    assertThat(history.pastLabels()).containsExactly("to c", "to b");
    assertThat(history.undo().pastLabels()).containsExactly("to b");
    assertThat(history.undo().undo().pastLabels()).isEmpty();
  }

  /** Undoing everything and redoing everything comes back to the same document. */
  @Property(tries = 200)
  void undoAndRedoAreInverse(@ForAll @Size(max = 30) List<@IntRange(max = 9) Integer> edits) {
    History<Integer> history = History.of(-1);
    List<Integer> reached = new ArrayList<>(List.of(-1));
    for (int value : edits) {
      history = history.edit("to " + value, "", value, NOON);
      if (reached.get(reached.size() - 1) != value) {
        reached.add(value);
      }
    }
    int end = history.present();
    for (int i = reached.size() - 2; i >= 0; i--) {
      history = history.undo();
      assertThat(history.present()).isEqualTo(reached.get(i));
    }
    for (int i = 1; i < reached.size(); i++) {
      history = history.redo();
    }
    assertThat(history.present()).isEqualTo(end);
  }

  /** Every change moves the revision on, so that a stale result is never taken for a fresh one. */
  @Property(tries = 200)
  void revisionNeverRepeats(@ForAll @Size(max = 40) List<@IntRange(max = 2) Integer> acts) {
    History<Integer> history = History.of(0);
    int value = 0;
    for (int act : acts) {
      History<Integer> next =
          switch (act) {
            case 0 -> history.edit("edit", "", ++value, NOON);
            case 1 -> history.undo();
            default -> history.redo();
          };
      if (next != history) {
        assertThat(next.revision()).isGreaterThan(history.revision());
      }
      history = next;
    }
  }
}
