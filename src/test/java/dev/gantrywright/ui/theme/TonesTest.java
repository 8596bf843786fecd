package dev.gantrywright.ui.theme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class TonesTest {
  private static final List<String> GROUNDS =
      List.of("ground", "surface", "band", "wash", "accentWash", "errorWash", "warningWash");

  /** WCAG 2.2, 1.4.3: 4.5:1 for text. */
  @ParameterizedTest
  @EnumSource(Mode.class)
  void everyTextIsLegibleOnEveryGroundThatItStandsOn(Mode mode) {
    Tones tones = Tones.of(mode);
    List<String> tooFaint = new ArrayList<>();
    for (String ground : GROUNDS) {
      for (String text : List.of("ink", "quiet", "accent", "error", "warning", "note")) {
        if (tones.contrast(text, ground) < 4.5) {
          tooFaint.add(text + " on " + ground + " " + tones.contrast(text, ground));
        }
      }
    }
    for (String[] pair :
        new String[][] {
          {"onAccent", "accent"}, {"onStop", "stop"}, {"ink", "added"}, {"ink", "removed"},
          {"ink", "addedMark"}, {"ink", "removedMark"}, {"quiet", "added"}, {"quiet", "removed"},
        }) {
      if (tones.contrast(pair[0], pair[1]) < 4.5) {
        tooFaint.add(pair[0] + " on " + pair[1] + " " + tones.contrast(pair[0], pair[1]));
      }
    }
    assertThat(tooFaint).isEmpty();
  }

  /** WCAG 2.2, 1.4.11: 3:1 for the edge of a control and for signs. */
  @ParameterizedTest
  @EnumSource(Mode.class)
  void controlEdgesStandOut(Mode mode) {
    Tones tones = Tones.of(mode);
    assertThat(tones.contrast("edge", "surface")).isGreaterThanOrEqualTo(3);
    assertThat(tones.contrast("edge", "ground")).isGreaterThanOrEqualTo(3);
    assertThat(tones.contrast("accent", "surface")).isGreaterThanOrEqualTo(3);
  }

  @Test
  void bothModesNameTheSameTones() {
    assertThat(Tones.of(Mode.LIGHT).names()).isEqualTo(Tones.of(Mode.DARK).names());
  }

  /** The two ends of the scale are given in the definition itself: 21:1. */
  @Test
  void contrastOfBlackOnWhiteIsTwentyOne() {
    assertThat(Tones.luminance(0xffffff)).isCloseTo(1, within(1e-9));
    assertThat(Tones.luminance(0)).isZero();
    assertThat(Tones.of(Mode.LIGHT).contrast("surface", "surface")).isEqualTo(1);
  }

  @Test
  void aToneThatDoesNotExistIsAProgrammersError() {
    assertThatThrownBy(() -> Tones.of(Mode.LIGHT).hex("mauve")).hasMessage("no tone mauve");
  }

  @Test
  void theStylesheetIsADataUrl() {
    assertThat(Tones.of(Mode.DARK).stylesheet()).startsWith("data:text/css;base64,");
  }
}
