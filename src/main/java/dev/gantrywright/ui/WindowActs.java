package dev.gantrywright.ui;

import dev.gantrywright.ui.shell.Command;
import dev.gantrywright.ui.shell.HeaderBar;
import dev.gantrywright.ui.state.PlaceNames;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Stage;
import dev.gantrywright.ui.state.Texts;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;

/** What keys, header and palette do. */
final class WindowActs implements HeaderBar.Acts {
  private static final double ZOOM_STEP = 0.1;

  private final WorkbenchWindow window;
  private final DoublePress escape = new DoublePress();

  WindowActs(WorkbenchWindow window) {
    this.window = window;
  }

  void install(Scene scene) {
    scene.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    scene.addEventFilter(KeyEvent.KEY_TYPED, this::typed);
  }

  private void pressed(KeyEvent key) {
    if (key.getCode() == KeyCode.ESCAPE) {
      escaped(key);
    } else if (key.getCode() == KeyCode.F1) {
      done(key, this::keys);
    } else if (key.isShortcutDown()) {
      shortcut(key);
    }
  }

  private void shortcut(KeyEvent key) {
    switch (key.getCode()) {
      case Z -> done(key, key.isShiftDown() ? this::redo : this::undo);
      case Y -> done(key, this::redo);
      case K -> done(key, this::find);
      case S -> done(key, this::save);
      case O -> done(key, this::chooseProfile);
      case P -> done(key, this::printers);
      case L -> done(key, this::line);
      case J -> done(key, () -> window.desk().ifPresent(desk -> desk.line().pull()));
      case T -> done(key, () -> window.retheme(window.habits().mode().other()));
      case PLUS, EQUALS, ADD -> done(key, () -> zoom(ZOOM_STEP));
      case MINUS, SUBTRACT -> done(key, () -> zoom(-ZOOM_STEP));
      case DIGIT0, NUMPAD0 -> done(key, () -> window.rezoom(1));
      case ENTER ->
          done(key, () -> with(desk -> desk.link().prove(desk.profile(), desk.printer().file())));
      case A -> {
        if (key.isShiftDown()) {
          done(key, () -> with(PrinterDesk::applySafe));
        }
      }
      case DIGIT1, DIGIT2, DIGIT3, DIGIT4, DIGIT5, DIGIT6 ->
          done(
              key,
              () ->
                  with(
                      desk ->
                          desk.stage()
                              .set(
                                  Stage.values()[
                                      key.getCode().ordinal() - KeyCode.DIGIT1.ordinal()])));
      default -> {}
    }
  }

  private void typed(KeyEvent key) {
    boolean writing = window.scene().getFocusOwner() instanceof TextInputControl;
    if (key.getCharacter().equals("?") && !writing) {
      done(key, this::keys);
    }
  }

  private void escaped(KeyEvent key) {
    if (escape.pressed()) {
      done(key, this::stop);
      return;
    }
    if (window.page().shown()) {
      done(key, () -> window.page().close());
      return;
    }
    if (window.keys().shown()) {
      done(key, () -> window.keys().close());
      return;
    }
    boolean down =
        !window.palette().shown() && window.desk().map(DeskView::letLogDown).orElse(false);
    if (down) {
      key.consume();
    }
  }

  private static void done(KeyEvent key, Runnable act) {
    key.consume();
    act.run();
  }

  private void with(Consumer<PrinterDesk> act) {
    window.printer().ifPresent(act);
  }

  private void zoom(double step) {
    window.rezoom(window.habits().zoom() + step);
  }

  private void save() {
    window.desk().ifPresent(desk -> desk.keeper().save());
  }

  /** From the field that has the keyboard to its line in the firmware folder. */
  private void line() {
    Node owner = window.scene().getFocusOwner();
    for (Node node = owner; node != null; node = node.getParent()) {
      if (node.getUserData() instanceof String path && path.indexOf('.') > 0) {
        with(desk -> desk.goToLine(path));
        return;
      }
    }
  }

  @Override
  public void printers() {
    window.showStart();
  }

  @Override
  public void undo() {
    window.desk().ifPresent(DeskView::undo);
  }

  @Override
  public void redo() {
    window.desk().ifPresent(DeskView::redo);
  }

  @Override
  public void find() {
    window.palette().open(commands());
  }

  @Override
  public void keys() {
    window.keys().open();
  }

  @Override
  public void stop() {
    with(desk -> desk.link().stop());
  }

  private List<Command> commands() {
    List<Command> all = new ArrayList<>();
    with(
        desk -> {
          for (Stage stage : Stage.values()) {
            all.add(
                new Command(
                    stage.title(), "Ctrl+" + (stage.ordinal() + 1), () -> desk.stage().set(stage)));
          }
          all.add(new Command(Texts.of("act.save"), "Ctrl+S", this::save));
          all.add(new Command(Texts.of("act.applySafe"), "Ctrl+Shift+A", desk::applySafe));
          all.add(
              new Command(
                  Texts.of("act.prove"),
                  "Ctrl+Enter",
                  () -> desk.link().prove(desk.profile(), desk.printer().file())));
          all.add(
              new Command(
                  Texts.of("act.hold"),
                  "F8",
                  () -> {
                    desk.stage().set(Stage.PROVE);
                    desk.look().holdOrGoOn();
                  }));
          all.add(
              new Command(
                  Texts.of("act.mark"),
                  "F9",
                  () -> {
                    desk.stage().set(Stage.PROVE);
                    desk.look().mark();
                  }));
          all.add(
              new Command(
                  Texts.of("names.title"),
                  Texts.of("part.names"),
                  () -> {
                    desk.part().set(PrinterDesk.NAMES);
                    desk.stage().set(Stage.DESCRIBE);
                  }));
          all.add(new Command(Texts.of("act.copy"), "", () -> CopiedText.profile(desk)));
          desk.parts()
              .forEach(
                  part ->
                      part.groups().stream()
                          .flatMap(group -> group.rows().stream())
                          .forEach(
                              row ->
                                  all.add(
                                      new Command(
                                          PlaceNames.field(row.path()),
                                          part.title(),
                                          () -> desk.goTo(row.path())))));
        });
    all.add(new Command(Texts.of("act.printers"), "Ctrl+P", this::printers));
    all.add(new Command(Texts.of("act.open"), "Ctrl+O", this::chooseProfile));
    all.add(new Command(Texts.of("start.folder"), "", this::chooseFolder));
    all.add(
        new Command(
            Texts.of("act.theme"), "Ctrl+T", () -> window.retheme(window.habits().mode().other())));
    all.add(new Command(Texts.of("act.larger"), "Ctrl+plus", () -> zoom(ZOOM_STEP)));
    all.add(new Command(Texts.of("act.smaller"), "Ctrl+minus", () -> zoom(-ZOOM_STEP)));
    all.add(new Command(Texts.of("keys.title"), "?", this::keys));
    return all;
  }

  void chooseProfile() {
    FileChooser chooser = new FileChooser();
    chooser.setTitle(Texts.of("act.open"));
    chooser
        .getExtensionFilters()
        .add(new FileChooser.ExtensionFilter(Texts.of("act.profiles"), "*.printer.json", "*.json"));
    java.io.File file = chooser.showOpenDialog(window.stage());
    if (file != null) {
      window.open(file.toPath());
    }
  }

  void chooseFolder() {
    DirectoryChooser chooser = new DirectoryChooser();
    chooser.setTitle(Texts.of("start.folder"));
    java.io.File folder = chooser.showDialog(window.stage());
    if (folder != null) {
      dropped(folder.toPath());
    }
  }

  /** A profile opens; a firmware folder gets a profile of its own beside it. */
  void dropped(Path path) {
    if (Files.isDirectory(path)) {
      window.workshop().describe(path, window::open);
    } else {
      window.open(path);
    }
  }
}
