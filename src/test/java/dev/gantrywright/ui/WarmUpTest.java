package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class WarmUpTest {
  @Test
  void whatIsLoadedAheadIsThere() throws Exception {
    List<String> names = WarmUp.names();
    assertThat(names)
        .doesNotHaveDuplicates()
        .contains(
            "dev.gantrywright.ui.WorkbenchWindow",
            "dev.gantrywright.ui.DeskView",
            "javafx.scene.control.skin.LabelSkin");
    for (String name : names) {
      Class<?> loaded = Class.forName(name, false, WarmUpTest.class.getClassLoader());
      assertThat(loaded.getName()).isEqualTo(name);
    }
  }
}
