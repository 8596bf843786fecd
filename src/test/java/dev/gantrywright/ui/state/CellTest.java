package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CellTest {
  private final List<String> seen = new ArrayList<>();

  @Test
  void observingTellsTheValueNowAndEveryChange() {
    Cell<String> cell = new Cell<>("a");
    cell.observe(seen::add);
    cell.set("b");
    cell.update(value -> value + "c");
    assertThat(seen).containsExactly("a", "b", "bc");
  }

  @Test
  void listeningTellsChangesOnly() {
    Cell<String> cell = new Cell<>("a");
    cell.listen(seen::add);
    cell.set("b");
    assertThat(seen).containsExactly("b");
  }

  @Test
  void theSameValueIsNoChange() {
    Cell<String> cell = new Cell<>("a");
    cell.listen(seen::add);
    cell.set("a");
    assertThat(seen).isEmpty();
  }

  @Test
  void aClosedSubscriptionHearsNothing() {
    Cell<String> cell = new Cell<>("a");
    Subscriptions all = new Subscriptions();
    all.add(cell.listen(seen::add));
    all.add(cell.listen(seen::add));
    all.close();
    cell.set("b");
    assertThat(seen).isEmpty();
    assertThat(cell.observed()).isZero();
  }

  @Test
  void anObserverMayCloseAnotherWhileItIsTold() {
    Cell<String> cell = new Cell<>("a");
    Subscriptions second = new Subscriptions();
    cell.listen(value -> second.close());
    second.add(cell.listen(seen::add));
    cell.set("b");
    assertThat(seen).isEmpty();
  }
}
