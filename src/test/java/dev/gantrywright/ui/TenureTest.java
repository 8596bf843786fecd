package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.ui.state.PrinterDesk;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TenureTest {
  @TempDir Path data;

  /** Each edit brings a plan; a collection at each would stop the hand at every key. */
  @Test
  void thereIsOneCollectionForAnOpenedPrinterAndNoneForItsEdits() throws Exception {
    List<Runnable> later = new CopyOnWriteArrayList<>();
    try (OpenWindow open = new OpenWindow(data)) {
      open.run(() -> open.window().whenOpened(desk -> Tenure.after(desk, later::add)));
      PrinterDesk desk = open.heron();
      open.until(() -> later.size() == 1);
      open.click("#part-axes-x");
      open.type("#edit-axes-x-stepsPerMm", "80");
      open.settle();
      assertThat(desk.profile().axes().get("x").stepsPerMm()).isEqualTo(80);
      assertThat(later).hasSize(1);
      open.heron();
      open.until(() -> later.size() == 2);
    }
  }
}
