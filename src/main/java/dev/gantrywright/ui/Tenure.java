package dev.gantrywright.ui;

import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Subscription;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * Has the collector put what an opened printer keeps where later collections need not copy it. Left
 * alone, the second collection after the opening does it, for 0.1 to 0.2 s in the middle of the
 * first typing; after this one, made before anybody types, all are short.
 */
final class Tenure {
  /** By then the printer is drawn, and nobody has found the first field yet. */
  private static final long AFTER_MILLISECONDS = 400;

  private Tenure() {}

  static Executor later(Executor background) {
    return CompletableFuture.delayedExecutor(AFTER_MILLISECONDS, TimeUnit.MILLISECONDS, background);
  }

  /** Once, when the first plan of this printer has come. */
  static Subscription after(PrinterDesk desk, Executor later) {
    AtomicBoolean asked = new AtomicBoolean();
    return desk.planned()
        .listen(
            plan -> {
              if (plan.revision() >= 0 && !asked.getAndSet(true)) {
                later.execute(System::gc);
              }
            });
  }
}
