package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

class JoinedListTest {
  @Test
  void everyElementByItsIndexWithEmptyListsBetween() {
    List<Integer> joined =
        new JoinedList<>(
            List.of(List.of(), List.of(1, 2), List.of(), List.of(), List.of(3), List.of()));
    assertThat(joined).containsExactly(1, 2, 3).hasSize(3);
    for (int i = 0; i < 3; i++) {
      assertThat(joined.get(i)).isEqualTo(i + 1);
    }
    assertThatThrownBy(() -> joined.get(3)).isInstanceOf(IndexOutOfBoundsException.class);
    assertThatThrownBy(() -> joined.get(-1)).isInstanceOf(IndexOutOfBoundsException.class);
    assertThat(new JoinedList<>(List.<List<Integer>>of())).isEmpty();
  }
}
