package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

class SharedPartsTest {
  @Test
  void aPartIsReadOnceHoweverManyThreadsAsk() throws Exception {
    SharedParts<Object> parts = new SharedParts<>(4);
    AtomicInteger readings = new AtomicInteger();
    CyclicBarrier together = new CyclicBarrier(8);
    ExecutorService pool = Executors.newFixedThreadPool(8);
    try {
      Callable<Object> ask =
          () -> {
            together.await();
            return parts.get(
                Path.of("sheet"),
                file -> {
                  readings.incrementAndGet();
                  return new Object();
                });
          };
      List<Future<Object>> answers = new ArrayList<>();
      for (int thread = 0; thread < 8; thread++) {
        answers.add(pool.submit(ask));
      }
      Object first = answers.get(0).get();
      for (Future<Object> answer : answers) {
        assertThat(answer.get()).isSameAs(first);
      }
    } finally {
      pool.shutdownNow();
    }
    assertThat(readings).hasValue(1);
  }

  @Test
  void thePartAskedForLongestAgoGoesFirst() {
    SharedParts<Integer> parts = new SharedParts<>(2);
    AtomicInteger readings = new AtomicInteger();
    for (String name : List.of("a", "b", "a", "c", "a", "b")) {
      parts.get(Path.of(name), file -> readings.incrementAndGet());
    }
    // a, b, c, and b again: a was asked for between.
    assertThat(readings).hasValue(4);
  }

  @Test
  void aFaultOfTheReadingReachesEveryAsker() {
    SharedParts<Integer> parts = new SharedParts<>(2);
    for (int time = 0; time < 2; time++) {
      assertThatThrownBy(
              () ->
                  parts.get(
                      Path.of("a"),
                      file -> {
                        throw new IllegalStateException("broken");
                      }))
          .isInstanceOf(IllegalStateException.class)
          .hasMessage("broken");
    }
  }
}
