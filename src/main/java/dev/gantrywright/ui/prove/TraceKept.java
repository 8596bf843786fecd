package dev.gantrywright.ui.prove;

import dev.gantrywright.app.TraceRecord;
import dev.gantrywright.prove.Stretch;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.state.TraceLook;
import dev.gantrywright.ui.state.TraceMark;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import javafx.application.Platform;

/** Keeps the trace as a table beside the profile, off the window's thread. */
final class TraceKept {
  private TraceKept() {}

  /**
   * Writes what the look has: all that is kept, or was when the picture was held.
   *
   * @param profile the profile's file; null where it has none yet
   * @param said told, on the window's thread, where it lies or what went wrong
   */
  static void beside(Path profile, TraceLook look, Consumer<String> said) {
    if (profile == null) {
      said.accept(Texts.of("trace.noFile"));
      return;
    }
    Stretch all = look.all();
    long until = look.held().get().map(TraceLook.Held::at).orElseGet(look::now);
    List<TraceMark> marks = look.list().stream().filter(m -> m.nanos() <= until).toList();
    CompletableFuture.supplyAsync(() -> write(profile, all, marks))
        .thenAccept(words -> Platform.runLater(() -> said.accept(words)));
  }

  private static String write(Path profile, Stretch all, List<TraceMark> marks) {
    try {
      String csv = all.csv(marks.stream().map(TraceMark::kept).toList());
      Path file = TraceRecord.keep(profile, csv);
      long within = marks.stream().filter(m -> m.nanos() >= all.first()).count();
      long seconds = Math.round((all.last() - all.first()) / 1e9);
      return Texts.of("trace.kept", file.getFileName(), seconds, within);
    } catch (IOException failed) {
      return Texts.of("trace.notWritten", profile.toAbsolutePath().getParent(), why(failed));
    }
  }

  private static String why(IOException failed) {
    if (failed instanceof NoSuchFileException) {
      return Texts.of("trace.folderGone");
    }
    return failed instanceof AccessDeniedException
        ? Texts.of("trace.denied")
        : String.valueOf(failed.getMessage());
  }
}
