package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;

class LatestTest {
  private final Deque<Runnable> background = new ArrayDeque<>();
  private final List<String> done = new ArrayList<>();
  private final List<String> failed = new ArrayList<>();
  private final List<Integer> computed = new ArrayList<>();

  private final Latest<Integer, String> latest =
      new Latest<>(
          background::add,
          Runnable::run,
          input -> {
            computed.add(input);
            if (input < 0) {
              throw new IllegalArgumentException("negative");
            }
            return "result " + input;
          },
          (input, result) -> done.add(result),
          (input, problem) -> failed.add(problem.getMessage()));

  @Test
  void handsOverTheResult() {
    latest.put(1);
    assertThat(latest.busy().get()).isTrue();
    background.remove().run();
    assertThat(done).containsExactly("result 1");
    assertThat(latest.busy().get()).isFalse();
  }

  @Test
  void dropsTheResultOfAnInputThatWasOvertaken() {
    latest.put(1);
    latest.put(2);
    background.remove().run();
    assertThat(done).isEmpty();
    background.remove().run();
    assertThat(done).containsExactly("result 2");
  }

  @Test
  void computesOnlyTheNewestOfThoseThatWait() {
    latest.put(1);
    latest.put(2);
    latest.put(3);
    latest.put(4);
    while (!background.isEmpty()) {
      background.remove().run();
    }
    assertThat(computed).containsExactly(1, 4);
    assertThat(done).containsExactly("result 4");
  }

  @Test
  void staysBusyUntilTheNewestIsThere() {
    latest.put(1);
    latest.put(2);
    background.remove().run();
    assertThat(latest.busy().get()).isTrue();
    background.remove().run();
    assertThat(latest.busy().get()).isFalse();
  }

  @Test
  void aFailureIsReportedAndTheNextInputRuns() {
    latest.put(-1);
    background.remove().run();
    assertThat(failed).containsExactly("negative");
    latest.put(5);
    background.remove().run();
    assertThat(done).containsExactly("result 5");
  }

  @Test
  void forgettingDropsWhatIsUnderWay() {
    latest.put(1);
    latest.forget();
    background.remove().run();
    assertThat(done).isEmpty();
    assertThat(latest.busy().get()).isFalse();
    latest.put(2);
    background.remove().run();
    assertThat(done).containsExactly("result 2");
  }
}
