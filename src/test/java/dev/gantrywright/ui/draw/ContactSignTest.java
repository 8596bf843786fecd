package dev.gantrywright.ui.draw;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.Contact;
import dev.gantrywright.ui.state.ContactState;
import java.util.List;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is drawn of a contact: two leads, two terminals, and the blade as its position is known. */
class ContactSignTest {
  private static final double LEFT = 9;
  private static final double RIGHT = ContactSign.LENGTH - 9;

  private final Sketch sketch = new Sketch();

  private void draw(Contact contact, Boolean closed) {
    ContactSign.across(sketch, 0, 0, contact, closed, "ink");
  }

  private List<Line> lines() {
    return sketch.getChildren().stream()
        .filter(Line.class::isInstance)
        .map(Line.class::cast)
        .toList();
  }

  /** The one line between the terminals. */
  private Line blade() {
    List<Line> blades =
        lines().stream().filter(line -> line.getStartX() == LEFT && line.getEndX() > LEFT).toList();
    assertThat(blades).hasSize(1);
    return blades.get(0);
  }

  private boolean hooked() {
    return lines().stream().anyMatch(line -> line.getStartX() == RIGHT && line.getEndX() == RIGHT);
  }

  @Test
  void aPositionThatIsNotKnownIsDashedAndLifted() {
    draw(Contact.NO, null);
    assertThat(blade().getStyleClass()).contains("ink", "dashed").doesNotContain("blade");
    assertThat(blade().getEndY()).isNegative();
  }

  @Test
  void aClosedContactIsDrawnThroughAndAnOpenOneIsLifted() {
    draw(Contact.NO, true);
    assertThat(blade().getEndY()).isZero();
    assertThat(blade().getEndX()).isEqualTo(RIGHT);
    assertThat(blade().getStyleClass()).contains("blade").doesNotContain("dashed");
    sketch.clear();
    draw(Contact.NO, false);
    assertThat(blade().getEndY()).isNegative();
    assertThat(blade().getStyleClass()).contains("blade").doesNotContain("dashed");
  }

  @Test
  void theHookOfABreakContactStandsWhileItMayConduct() {
    draw(Contact.NC, true);
    assertThat(hooked()).isTrue();
    sketch.clear();
    draw(Contact.NC, null);
    assertThat(hooked()).isTrue();
    assertThat(blade().getStyleClass()).contains("dashed");
    sketch.clear();
    draw(Contact.NC, false);
    assertThat(hooked()).isFalse();
    sketch.clear();
    draw(Contact.NO, true);
    assertThat(hooked()).isFalse();
  }

  @Test
  void leadsRunFromEndToEndAndTheTerminalsStandBetween() {
    draw(null, null);
    assertThat(lines()).hasSize(3);
    assertThat(lines()).anyMatch(line -> line.getStartX() == 0 && line.getEndX() == LEFT);
    assertThat(lines())
        .anyMatch(line -> line.getStartX() == RIGHT && line.getEndX() == ContactSign.LENGTH);
    assertThat(sketch.getChildren().stream().filter(Circle.class::isInstance)).hasSize(2);
  }

  @ParameterizedTest
  @CsvSource({
    "NO, OPEN, false",
    "NO, TRIGGERED, true",
    "NC, OPEN, true",
    "NC, TRIGGERED, false",
    "NO, UNKNOWN, ",
    "NC, UNKNOWN, ",
    ", OPEN, "
  })
  void conductsAsItsKindAndTheStateSay(Contact contact, ContactState state, Boolean conducts) {
    assertThat(ContactSign.conducts(contact, state)).isEqualTo(conducts);
  }
}
