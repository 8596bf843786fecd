package dev.gantrywright.ui;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import dev.gantrywright.link.PortAddress;
import dev.gantrywright.ui.state.Gravity;
import dev.gantrywright.ui.state.Judged;
import dev.gantrywright.ui.state.MarginNote;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.Stage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * States that a workshop seldom sees: very long names, very many findings, long work, a heat-up.
 */
final class RareStates {
  private static final String LONG_NAME =
      "The second machine of the Harbour Street Workshop, by the window, with the long gantry";
  private static final String LONG_BOARD =
      "Fulmar M4 revision C with the four-socket daughter board and the screened endstop plugs";

  private final StatePictures at;

  RareStates(StatePictures at) {
    this.at = at;
  }

  /** A printer and a board whose names no header has room for. */
  void longNames() throws Exception {
    at.open(true);
    Path heron = at.data.resolve("printers/heron.printer.json");
    Path board = at.data.resolve("printers/fulmar-m4.board.json");
    replace(heron, "\"Heron\"", "\"" + LONG_NAME + "\"");
    replace(board, "\"Fulmar M4\"", "\"" + LONG_BOARD + "\"");
    replace(board, "\"STOP4\"", "\"ENDSTOP FOUR LEFT\"");
    StatePictures.run(() -> at.window.showStart());
    StatePictures.pause(1200);
    at.shot("long-names-start");
    at.openPrinter(heron);
    at.shot("long-names");
    StatePictures.run(() -> at.desk().part().set("board"));
    at.shot("long-names-board");
    StatePictures.run(
        () -> at.desk().link().connect(at.desk().profile(), new PortAddress.Practice(""), 20));
    StatePictures.until(() -> at.desk().link().live().get().fresh());
    at.shot("long-names-connected");
    at.close();
  }

  private static void replace(Path file, String from, String to) throws Exception {
    Files.writeString(file, Files.readString(file).replace(from, to));
  }

  /** Forty findings at one part, two and more at a field. */
  void manyFindings() throws Exception {
    at.open(true);
    at.openPrinter(at.data.resolve("printers/heron.printer.json"));
    StatePictures.run(() -> at.desk().part().set("axes.x"));
    List<String> paths =
        at.desk().partInHand().orElseThrow().groups().stream()
            .flatMap(group -> group.rows().stream())
            .map(row -> row.path())
            .toList();
    List<MarginNote> forty = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      String path = paths.get(i % paths.size());
      forty.add(
          new MarginNote(
              "GW-M" + (100 + i),
              "made-up-" + i,
              "Motion",
              Gravity.values()[i * Gravity.values().length / 40],
              path,
              PlaceNames.field(path),
              "Found "
                  + (i + 1)
                  + ", where what stands beside it gives another value, by a factor that a wrong"
                  + " jumper would make.",
              "pitch × teeth",
              List.of(new MarginNote.Fix("Use 80", MarginNote.Safety.REVIEW, now -> now))));
    }
    StatePictures.run(
        () -> at.desk().judged().set(new Judged(at.desk().values().revision(), forty, true)));
    at.shot("forty-findings");
    StatePictures.run(() -> at.desk().stage().set(Stage.CHECK));
    at.shot("forty-findings-check");
    at.close();
  }

  /** A folder of tens of thousands of settings: learning and writing take a while. */
  void longFolder() throws Exception {
    at.open(true);
    Path config = at.data.resolve("printers/rookery-2.3/config");
    for (int file = 0; file < 60; file++) {
      StringBuilder text = new StringBuilder();
      for (int i = 0; i < 2000; i++) {
        text.append("#define FEATHER_" + file + "_" + i + "   " + i * 3 + "  // mm\n");
      }
      Files.write(config.resolve("plumage" + file + ".h"), text.toString().getBytes(ISO_8859_1));
    }
    at.openPrinter(at.data.resolve("printers/heron.printer.json"));
    StatePictures.run(() -> at.desk().values().edit("build.folder", "./rookery-2.3"));
    StatePictures.run(() -> at.desk().part().set("build"));
    StatePictures.until(() -> at.window.scene().lookup("#folder-strip").isVisible());
    at.shotNow("folder-reading");
    StatePictures.run(() -> at.press("#folder-cancel"));
    at.shot("folder-stopped");
    StatePictures.run(() -> at.desk().values().undo());
    StatePictures.run(() -> at.desk().part().set("names"));
    StatePictures.until(() -> at.window.scene().lookup("#names-learn") != null);
    StatePictures.until(() -> !at.window.scene().lookup("#names-learn").isDisabled());
    StatePictures.run(() -> at.press("#names-learn"));
    StatePictures.pause(700);
    at.shotNow("names-learning");
    StatePictures.until(() -> !at.window.scene().lookup("#names-learn").isDisabled());
    StatePictures.run(() -> at.desk().stage().set(Stage.WRITE));
    StatePictures.until(() -> at.window.scene().lookup("#export") != null);
    StatePictures.until(() -> !at.window.scene().lookup("#export").isDisabled());
    StatePictures.run(() -> at.press("#export"));
    StatePictures.pause(150);
    at.shotNow("write-busy-long");
    at.close();
  }

  /** A heat-up on the practice board: before, under way, and in the record afterwards. */
  void heatUp() throws Exception {
    at.open(true);
    at.openPrinter(at.data.resolve("printers/heron.printer.json"));
    StatePictures.run(() -> at.desk().stage().set(Stage.PROVE));
    StatePictures.run(
        () -> at.desk().link().connect(at.desk().profile(), new PortAddress.Practice(""), 20));
    StatePictures.until(() -> at.desk().link().live().get().fresh());
    StatePictures.run(() -> at.press("#heater-arm"));
    StatePictures.until(() -> at.desk().link().armed().get());
    StatePictures.run(() -> ((TextField) at.window.scene().lookup("#heater-limit")).setText("29"));
    StatePictures.run(() -> at.press("#heater-begin"));
    StatePictures.pause(3000);
    StatePictures.run(() -> reveal("#heater-standing"));
    at.shot("heat-up");
    StatePictures.until(() -> !at.desk().link().armed().get());
    StatePictures.pause(1500);
    StatePictures.run(() -> reveal("#heater-standing"));
    at.shot("heat-up-done");
    StatePictures.run(() -> reveal("#record-pdf"));
    at.shot("heat-up-record");
    at.close();
  }

  /** The serial log: what comes, a search in it, kept beside the profile, and scrolled back. */
  void log() throws Exception {
    at.open(true);
    at.openPrinter(at.data.resolve("printers/heron.printer.json"));
    StatePictures.run(() -> at.desk().stage().set(Stage.PROVE));
    StatePictures.run(
        () -> at.desk().link().connect(at.desk().profile(), new PortAddress.Practice(""), 20));
    StatePictures.until(() -> at.desk().link().live().get().fresh());
    StatePictures.run(() -> at.press("#line-open"));
    StatePictures.until(() -> at.desk().link().logged() > 60);
    at.shot("log");
    StatePictures.run(() -> at.press("#line-save"));
    StatePictures.until(
        () -> ((Labeled) at.window.scene().lookup("#line-note")).getText().contains(".log"));
    StatePictures.run(
        () -> ((TextField) at.window.scene().lookup("#line-search")).setText("z_min"));
    at.shot("log-kept");
    StatePictures.run(
        () -> {
          ListView<?> list = (ListView<?>) at.window.scene().lookup("#line-log");
          list.requestFocus();
          list.fireEvent(
              new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.HOME, false, false, false, false));
        });
    at.shot("log-back");
    at.close();
  }

  /** Scrolls until the node stands near the top. */
  private void reveal(String id) {
    Node node = at.window.scene().lookup(id);
    for (Node up = node.getParent(); up != null; up = up.getParent()) {
      if (up instanceof ScrollPane pane && pane.getContent() != null) {
        double whole = pane.getContent().getLayoutBounds().getHeight();
        double seen = pane.getViewportBounds().getHeight();
        double y =
            pane.getContent().sceneToLocal(node.localToScene(node.getLayoutBounds())).getMinY();
        if (whole > seen) {
          pane.setVvalue(Math.max(0, Math.min(1, (y - 80) / (whole - seen))));
        }
      }
    }
  }
}
