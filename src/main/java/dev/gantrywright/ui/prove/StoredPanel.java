package dev.gantrywright.ui.prove;

import dev.gantrywright.link.Dialect;
import dev.gantrywright.prove.ProofReport;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Stored settings that differ: why, the exact lines to send, and the way back to the build. */
final class StoredPanel extends Section {
  private final PrinterDesk desk;
  private final VBox lines = new VBox(2);
  private final Label why = Pieces.paragraph("");
  private final HBox caution = caution("prove.warning", "stored.caution");
  private final Button arm;
  private final Button send;
  private final Button reset;
  private final Label outcome = Pieces.paragraph("", "strong");
  private List<String> toSend = List.of();

  StoredPanel(PrinterDesk desk) {
    super("stored.title", "stored.about");
    this.desk = desk;
    arm = Pieces.button("stored-arm", Texts.of("line.arm"), "act-second", this::arm);
    send = Pieces.button("stored-send", Texts.of("stored.send"), "act", () -> send(toSend));
    reset =
        Pieces.button(
            "stored-reset", Texts.of("stored.reset"), "act-second", () -> send(backToBuild()));
    outcome.setId("stored-outcome");
    lines.setId("stored-lines");
    getChildren().addAll(why, lines, caution, Pieces.row(12, arm, send, reset), outcome);
    show(this, false);
  }

  void proof(Optional<ProofReport> report) {
    toSend = report.map(ProofReport::linesToSend).orElse(List.of());
    show(this, !toSend.isEmpty());
    why.setText(report.map(ProofReport::explanation).orElse(""));
    lines.getChildren().clear();
    toSend.forEach(line -> lines.getChildren().add(Pieces.label(line, "mono", "code")));
    armed();
  }

  /** The line was armed or disarmed. */
  void armed() {
    boolean on = desk.link().armed().get();
    arm.setText(Texts.of(on ? "line.disarm" : "line.arm"));
    send.setDisable(!on);
    reset.setDisable(!on || backToBuild().isEmpty());
  }

  private List<String> backToBuild() {
    return desk.link()
        .dialect()
        .filter(d -> !d.restoreBuild().isBlank() && !d.save().isBlank())
        .map(StoredPanel::resetLines)
        .orElse(List.of());
  }

  private static List<String> resetLines(Dialect dialect) {
    return List.of(dialect.restoreBuild(), dialect.save());
  }

  private void arm() {
    desk.link().arm(!desk.link().armed().get());
  }

  private void send(List<String> commands) {
    outcome.setText(Texts.of("stored.sending"));
    desk.link()
        .sendAll(
            commands,
            trouble -> {
              // What had to be sent is sent: nothing else shall go by on the same permission.
              desk.link().arm(false);
              outcome.setText(
                  trouble.isEmpty() ? Texts.of("stored.sent") : Texts.of("stored.failed", trouble));
              if (trouble.isEmpty()) {
                desk.link().prove(desk.profile(), desk.printer().file());
              }
            });
  }
}
