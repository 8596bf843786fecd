package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class InOrderTest {
  private static final List<Integer> ITEMS = IntStream.range(0, 5000).boxed().toList();

  @Test
  void answersComeInTheOrderOfTheItems() {
    List<Integer> taken = new ArrayList<>();
    assertThat(new InOrder(3).run(ITEMS, item -> item * 2, taken::add)).isTrue();
    assertThat(taken).isEqualTo(ITEMS.stream().map(item -> item * 2).toList());
  }

  @Test
  void onlyAWindowIsHeldHoweverLongTheListIs() {
    AtomicInteger begun = new AtomicInteger();
    int[] taken = new int[1];
    int[] most = new int[1];
    new InOrder(2)
        .run(
            ITEMS,
            item -> {
              begun.incrementAndGet();
              return item;
            },
            item -> {
              most[0] = Math.max(most[0], begun.get() - taken[0]);
              taken[0]++;
              return true;
            });
    assertThat(taken[0]).isEqualTo(ITEMS.size());
    assertThat(most[0]).isLessThanOrEqualTo(2 * 4 * 16);
  }

  @Test
  void stoppingLeavesTheRestUndone() {
    AtomicInteger begun = new AtomicInteger();
    List<Integer> taken = new ArrayList<>();
    boolean whole =
        new InOrder(2)
            .run(
                ITEMS,
                item -> {
                  begun.incrementAndGet();
                  return item;
                },
                item -> taken.add(item) && taken.size() < 5);
    assertThat(whole).isFalse();
    assertThat(taken).containsExactly(0, 1, 2, 3, 4);
    assertThat(begun.get()).isLessThanOrEqualTo(2 * 4 * 16);
  }

  @Test
  void anInterruptStopsTheRunAndStands() {
    Thread.currentThread().interrupt();
    assertThat(new InOrder(2).run(ITEMS, item -> item, item -> true)).isFalse();
    assertThat(Thread.interrupted()).isTrue();
  }

  @Test
  void aFaultOfTheWorkReachesTheCaller() {
    assertThatThrownBy(
            () ->
                new InOrder(2)
                    .run(
                        ITEMS,
                        item -> {
                          if (item == 40) {
                            throw new IllegalStateException("item 40");
                          }
                          return item;
                        },
                        item -> true))
        .isInstanceOf(IllegalStateException.class)
        .hasMessage("item 40");
  }

  @Test
  void nothingToDoIsDone() {
    assertThat(new InOrder(2).run(List.of(), item -> item, item -> false)).isTrue();
  }
}
