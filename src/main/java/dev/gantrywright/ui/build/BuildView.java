package dev.gantrywright.ui.build;

import dev.gantrywright.app.BuildJob;
import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.image.MemoryPicture;
import dev.gantrywright.machine.BuildSettings;
import dev.gantrywright.ui.draw.FlashMap;
import dev.gantrywright.ui.quantity.HomePath;
import dev.gantrywright.ui.state.BuildDesk;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.state.WordList;
import dev.gantrywright.ui.theme.Beside;
import dev.gantrywright.ui.theme.Pieces;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The Build stage: the command, its target, and what the image has room for. */
public final class BuildView extends Beside implements Subscription {
  private final PrinterDesk desk;
  private final Catalog catalog;
  private final BuildDesk build;
  private final Supplier<Path> folder;
  private final GridPane facts = new GridPane();
  private final FlashMap map = new FlashMap();
  private final Label command = Pieces.paragraph("", "mono");
  private final Label state = Pieces.paragraph("", "quiet");
  private final Button describe;
  private final Subscriptions subscriptions = new Subscriptions();

  /**
   * @param folder the patched folder, in which the build runs
   */
  public BuildView(PrinterDesk desk, Catalog catalog, BuildDesk build, Supplier<Path> folder) {
    super(400, 0);
    this.desk = desk;
    this.catalog = catalog;
    this.build = build;
    this.folder = folder;
    describe =
        Pieces.button(
            "build-to-part", Texts.of("write.toBuild"), "act-second", () -> desk.goTo("build"));
    BuildRunBox run = new BuildRunBox(desk, build, folder);
    EarlierBuilds earlier = new EarlierBuilds();
    facts.setHgap(24);
    facts.setVgap(8);
    VBox left =
        new VBox(
            12,
            Pieces.heading(
                Pieces.label(Texts.of("stage.build"), "title"),
                Pieces.label(Texts.of("build.about"), "quiet")),
            facts,
            command,
            state,
            describe,
            run,
            earlier);
    command.getStyleClass().add("command-line");
    left.getStyleClass().add("form");
    VBox right = new VBox(8, Pieces.label(Texts.of("build.memory"), "quiet"), map);
    right.getStyleClass().add("detail");
    right.getStyleClass().add("margin-pane");
    VBox.setVgrow(map, Priority.ALWAYS);
    VBox.setVgrow(run, Priority.ALWAYS);
    put(left, right);
    subscriptions.add(
        desk.values()
            .history()
            .observe(
                history -> {
                  show();
                  run.ready();
                }));
    subscriptions.add(
        desk.opened()
            .listen(
                opened -> {
                  show();
                  run.ready();
                }));
    subscriptions.add(build.earlier().observe(earlier::show));
    subscriptions.add(build.cleaning().observe(run::cleaning));
    build.look(desk.printer());
    subscriptions.add(
        build
            .state()
            .observe(
                state -> {
                  run.show(state);
                  show();
                }));
  }

  private void show() {
    BuildSettings settings = desk.profile().build();
    facts.getChildren().clear();
    Path patched = folder.get();
    fact(0, "build.folder", patched == null ? Texts.of("build.noFolder") : HomePath.shown(patched));
    fact(1, "build.target", or(desk.profile().board().target()));
    fact(2, "build.artefact", or(settings.artefact()));
    boolean given = !settings.command().isEmpty();
    command.setText(given ? words(settings) : "");
    command.setVisible(given);
    command.setManaged(given);
    state.setText(Texts.of(given ? "build.ready" : "build.noCommand"));
    describe.setVisible(!given);
    describe.setManaged(!given);
    Optional<Mcu> mcu = Optional.ofNullable(desk.profile().board().mcu()).flatMap(catalog::mcu);
    Long offset = desk.sheet().map(sheet -> sheet.loader().offset()).orElse(null);
    map.show(mcu, offset == null ? 0 : offset, settings.image(), pictured());
  }

  private Optional<MemoryPicture> pictured() {
    return build
        .state()
        .get()
        .done()
        .flatMap(BuildJob.Done::verdict)
        .map(verdict -> verdict.picture());
  }

  private String words(BuildSettings build) {
    String target = desk.profile().board().target();
    return WordList.typed(build.command())
        .replace("{target}", target == null ? "{target}" : target);
  }

  private void fact(int row, String key, String value) {
    Label name = Pieces.label(Texts.of(key), "field-label");
    name.setMinWidth(USE_PREF_SIZE);
    facts.addRow(row, name, Pieces.paragraph(value));
  }

  private static String or(String text) {
    return text == null ? "–" : text;
  }

  @Override
  public void close() {
    subscriptions.close();
  }
}
