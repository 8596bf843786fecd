package dev.gantrywright.ui.state;

import dev.gantrywright.link.CommandKind;
import dev.gantrywright.link.LineSession;
import dev.gantrywright.link.Reply;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** What the user says to the machine over the open line, and what came of it. */
final class LineTalk {
  private final Supplier<Optional<LineSession>> line;
  private final Executor view;
  private final Cell<Boolean> armed = new Cell<>(false);
  private final Cell<String> said = new Cell<>("");

  /**
   * @param line the open one; empty while none is
   */
  LineTalk(Supplier<Optional<LineSession>> line, Executor view) {
    this.line = line;
    this.view = view;
  }

  Cell<Boolean> armed() {
    return armed;
  }

  Cell<String> said() {
    return said;
  }

  void stop() {
    line.get()
        .ifPresent(
            session -> {
              said.set(Texts.of("stop.sent"));
              session.stop().thenAccept(outcome -> view.execute(() -> said.set(outcome.advice())));
              armed.set(false);
            });
  }

  void arm(boolean on) {
    line.get()
        .ifPresent(
            session -> {
              if (on) {
                session.arm();
              } else {
                session.disarm();
              }
              armed.set(session.armed());
            });
  }

  Optional<CommandKind> kindOf(String command) {
    return line.get().map(session -> session.kindOf(command));
  }

  void ask(String command) {
    line.get()
        .ifPresentOrElse(
            session ->
                session.ask(command).thenAccept(reply -> view.execute(() -> answered(reply))),
            () -> said.set(Texts.of("line.none")));
  }

  void sendAll(List<String> commands, Consumer<String> done) {
    Optional<LineSession> session = line.get();
    if (session.isEmpty()) {
      done.accept(Texts.of("line.none"));
    } else if (commands.isEmpty()) {
      done.accept("");
    } else {
      session
          .get()
          .ask(commands.get(0))
          .thenAccept(reply -> view.execute(() -> next(reply, commands, done)));
    }
  }

  private void next(Reply reply, List<String> commands, Consumer<String> done) {
    answered(reply);
    if (reply.answered()) {
      sendAll(commands.subList(1, commands.size()), done);
    } else {
      done.accept(reply.command() + ": " + reply.note());
    }
  }

  private void answered(Reply reply) {
    boolean fine = reply.answered();
    said.set(reply.command() + ": " + (fine ? String.join(" · ", reply.lines()) : reply.note()));
  }
}
