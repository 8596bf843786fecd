package dev.gantrywright.ui.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class HomePathTest {
  private final Path home = Path.of(System.getProperty("user.home")).toAbsolutePath().normalize();

  @Test
  void aPathBelowHomeBeginsWithATilde() {
    Path below = home.resolve("printers").resolve("rookery-2.3");
    assertThat(HomePath.shown(below)).startsWith("~").endsWith("rookery-2.3");
    assertThat(HomePath.read(HomePath.shown(below))).isEqualTo(below);
  }

  @Test
  void otherPathsStayAsTheyAre() {
    Path other = home.getRoot().resolve("media").resolve("card");
    assertThat(HomePath.shown(other)).isEqualTo(other.toString());
    assertThat(HomePath.read(" " + other + " ")).isEqualTo(other);
    assertThat(HomePath.shown(home)).isEqualTo(home.toString());
    assertThat(HomePath.read("~")).isEqualTo(home);
  }
}
