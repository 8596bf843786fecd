package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.concurrent.CountDownLatch;
import org.junit.jupiter.api.Test;

class EarlyTest {
  @Test
  void theWorkIsDoneOnceWhileTheCallerGoesOn() {
    CountDownLatch go = new CountDownLatch(1);
    Early<String> early =
        Early.of(
            "early",
            () -> {
              await(go);
              return new String("facts");
            });
    go.countDown();
    assertThat(early.get()).isEqualTo("facts").isSameAs(early.get());
  }

  @Test
  void whatTheWorkThrowsIsThrownWhereItIsWanted() {
    Early<String> bad =
        Early.of(
            "early",
            () -> {
              throw new IllegalStateException("mcus.json: lacks part");
            });
    assertThatThrownBy(bad::get)
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("mcus.json: lacks part");
  }

  private static void await(CountDownLatch latch) {
    try {
      latch.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }
}
