package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.state.PrinterDesk;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A window that is killed loses nothing that was typed over a second ago. */
class RestoreUseTest {
  @TempDir Path data;

  @Test
  void whatWasTypedComesBackAfterAKill() throws Exception {
    OpenWindow first = new OpenWindow(data);
    PrinterDesk desk = first.heron();
    first.click("#part-axes-x");
    first.type("#edit-axes-x-stepsPerMm", "81");
    Thread.sleep(TimeUnit.SECONDS.toMillis(1));
    first.kill();
    assertThat(desk.profile().axes().get("x").stepsPerMm()).isEqualTo(81);
    try (OpenWindow second = new OpenWindow(data)) {
      PrinterDesk restored = second.heron();
      assertThat(restored.profile().axes().get("x").stepsPerMm()).isEqualTo(81);
      assertThat(restored.values().history().get().isSaved()).isFalse();
      second.run(() -> restored.values().undo());
      assertThat(restored.profile().axes().get("x").stepsPerMm()).isEqualTo(160);
    }
  }
}
