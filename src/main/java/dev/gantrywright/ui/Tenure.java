package dev.gantrywright.ui;

import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Subscription;
import java.lang.ref.Reference;
import java.lang.ref.WeakReference;
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

  private static final int BLOCK = 1 << 16;

  /** Blocks that are held meanwhile: 8 MB, more than anything leaves behind between collections. */
  private static final int HELD = 128;

  /** Collections that use both halves of the room through which what is young goes. */
  private static final int ROUNDS = 2;

  /** Blocks after which a round is given up, 512 MB: another collector may not come by then. */
  private static final int MOST = 8_192;

  private static volatile Object last;

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
                later.execute(Tenure::settle);
              }
            });
  }

  /**
   * Besides, the room through which what is young goes is used once: memory that was never touched
   * makes the two collections after this one three times as long as all later ones.
   */
  static void settle() {
    System.gc();
    byte[][] held = new byte[HELD][];
    for (int i = 0; i < HELD; i++) {
      held[i] = new byte[BLOCK];
    }
    for (int round = 0; round < ROUNDS; round++) {
      WeakReference<Object> untilCollected = new WeakReference<>(new Object());
      for (int i = 0; i < MOST && untilCollected.get() != null; i++) {
        last = new byte[BLOCK];
      }
    }
    Reference.reachabilityFence(held);
    last = null;
  }
}
