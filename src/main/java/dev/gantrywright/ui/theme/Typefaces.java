package dev.gantrywright.ui.theme;

import java.io.IOException;
import java.io.InputStream;
import java.lang.invoke.MethodHandles;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import javafx.scene.text.Font;

/** Loads the bundled B612 and B612 Mono (SIL Open Font License, text beside the files). */
public final class Typefaces {
  /** What the start page is set in. */
  private static final List<String> FIRST = List.of("B612-Regular.otf", "B612-Bold.otf");

  private static final List<String> OTHERS =
      List.of("B612-Italic.otf", "B612Mono-Regular.otf", "B612Mono-Bold.otf");

  private static CompletableFuture<Void> first;

  private Typefaces() {}

  /** Makes the typefaces known to the toolkit; on a system that cannot, its own sans serves. */
  public static void load() {
    first(Runnable::run);
    others();
  }

  /**
   * Those of the first frame, loaded once and beside other work. Asked for on the toolkit's thread,
   * which waits for them before it sets any text.
   */
  public static synchronized CompletableFuture<Void> first(Executor background) {
    if (first == null) {
      try {
        // Font and its helper each begin with the other: two threads must not begin with either.
        MethodHandles.publicLookup().ensureInitialized(Font.class);
      } catch (IllegalAccessException hidden) {
        throw new IllegalStateException(hidden);
      }
      first = CompletableFuture.runAsync(() -> load(FIRST), background);
    }
    return first;
  }

  /** Those that code, the line and quotations are set in; any thread may load them. */
  public static void others() {
    load(OTHERS);
  }

  private static void load(List<String> files) {
    for (String file : files) {
      try (InputStream in =
          Typefaces.class.getResourceAsStream("/dev/gantrywright/ui/fonts/" + file)) {
        Font.loadFont(in, 14);
      } catch (IOException unreadable) {
        return;
      }
    }
  }
}
