package dev.gantrywright;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;

class DisplayTest {
  @Test
  void aServerMeansAWindow() {
    assertThat(new Display(Map.of("DISPLAY", ":0"), "Linux", false).missing()).isEmpty();
    assertThat(new Display(Map.of("WAYLAND_DISPLAY", "wayland-0"), "Linux", false).missing())
        .isEmpty();
    assertThat(new Display(Map.of(), "Windows 11", false).missing()).isEmpty();
    assertThat(new Display(Map.of(), "Mac OS X", false).missing()).isEmpty();
  }

  @Test
  void noServerSaysSo() {
    assertThat(new Display(Map.of("DISPLAY", " "), "Linux", false).missing())
        .contains("DISPLAY and WAYLAND_DISPLAY");
    assertThat(new Display(Map.of("DISPLAY", ":0"), "Linux", true).missing())
        .contains("java.awt.headless");
  }
}
