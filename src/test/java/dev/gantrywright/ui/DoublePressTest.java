package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.api.Test;

class DoublePressTest {
  private final Deque<Runnable> later = new ArrayDeque<>();
  private long now = 5_000_000_000L;
  private final DoublePress key = new DoublePress(() -> now, later::add);

  /** What was to be done later is done, so long after it was asked for. */
  private void after(long nanos) {
    now += nanos;
    later.remove().run();
  }

  @Test
  void theSecondOfTwoPressesIsADoublePress() {
    assertThat(key.pressed()).isFalse();
    assertThat(key.pressed()).isTrue();
    assertThat(key.pressed()).as("three presses are not two double ones").isFalse();
  }

  @Test
  void aPressIsForgottenWhenTheTimeIsOver() {
    key.pressed();
    after(DoublePress.WITHIN_NANOS);
    assertThat(key.pressed()).isFalse();
  }

  /** Both were pressed at once; the window was busy for three seconds before it took the second. */
  @Test
  void aPressThatWaitedBehindABusyWindowIsNotLost() {
    key.pressed();
    after(3_000_000_000L);
    assertThat(key.pressed()).isTrue();
  }

  @Test
  void aWindowThatIsIdleAgainForgetsToo() {
    key.pressed();
    after(3_000_000_000L);
    after(DoublePress.WITHIN_NANOS + DoublePress.LATE_NANOS);
    assertThat(key.pressed()).isFalse();
  }

  /** The end of an earlier double press forgets nothing that was pressed since. */
  @Test
  void eachPressHasItsOwnTime() {
    key.pressed();
    key.pressed();
    key.pressed();
    after(DoublePress.WITHIN_NANOS);
    assertThat(key.pressed()).isTrue();
  }
}
