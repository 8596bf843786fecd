package dev.gantrywright.ui;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.ui.describe.PlanColumn;
import dev.gantrywright.ui.draw.PlanContent;
import dev.gantrywright.ui.names.NamesDesk;
import dev.gantrywright.ui.prove.ProveView;
import dev.gantrywright.ui.record.RecordDesk;
import dev.gantrywright.ui.shell.Bench;
import dev.gantrywright.ui.shell.FolderStrip;
import dev.gantrywright.ui.shell.HeaderBar;
import dev.gantrywright.ui.shell.LinePanel;
import dev.gantrywright.ui.shell.RouteBar;
import dev.gantrywright.ui.state.BuildDesk;
import dev.gantrywright.ui.state.BuildState;
import dev.gantrywright.ui.state.ContactState;
import dev.gantrywright.ui.state.DriverPlace;
import dev.gantrywright.ui.state.Expectation;
import dev.gantrywright.ui.state.Keeper;
import dev.gantrywright.ui.state.LinkStatus;
import dev.gantrywright.ui.state.Outcomes;
import dev.gantrywright.ui.state.PastKeeper;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.RouteState;
import dev.gantrywright.ui.state.Stage;
import dev.gantrywright.ui.state.StationState;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.state.WorkState;
import dev.gantrywright.ui.theme.Tones;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.layout.Region;

/** One open printer on the bench: puts the views together and keeps them told. */
final class DeskView implements Subscription {
  /** Stations that may say something else after an edit; the others wait for what it leads to. */
  private static final Set<Stage> OF_THE_PROFILE =
      EnumSet.of(Stage.DESCRIBE, Stage.BUILD, Stage.LOAD, Stage.PROVE);

  private static final Set<Stage> OF_THE_FOLDER = EnumSet.of(Stage.CHECK, Stage.WRITE);

  /** Nothing typed over a second ago is lost; a write with every key would slow the keys. */
  private static final long PAUSE_MILLISECONDS = 300;

  private final PrinterDesk desk;
  private final Keeper keeper;
  private final HeaderBar header;
  private final RouteBar route;
  private final PlanColumn plan;
  private final LinePanel line;
  private final FolderStrip folder;
  private final Bench bench;
  private final NamesDesk names;
  private final UndoSteps steps;
  private final PastKeeper past;
  private final Outcomes outcomes = new Outcomes();
  private final Subscriptions subscriptions = new Subscriptions();

  /**
   * @param kept edits of an earlier run that never reached the file
   * @param tones of the theme in use
   * @param show opens a folder in the system's own window
   */
  DeskView(
      PrinterDesk desk,
      Optional<PrinterProfile> kept,
      Surroundings around,
      HeaderBar.Acts acts,
      Supplier<Tones> tones,
      Consumer<Path> show) {
    this.desk = desk;
    Executor later =
        CompletableFuture.delayedExecutor(
            PAUSE_MILLISECONDS, TimeUnit.MILLISECONDS, around.background());
    keeper = new Keeper(desk, around.recovery(), around.background(), later, around.view());
    header = new HeaderBar(acts);
    route = new RouteBar(desk.stage()::set);
    plan = new PlanColumn(desk, this::planContent);
    line =
        new LinePanel(
            desk.link(),
            () -> Optional.ofNullable(desk.opened().get().file()),
            around.clock(),
            around.background(),
            around.view());
    names =
        new NamesDesk(
            desk, around.learner()::study, around.clock(), around.background(), around.view());
    desk.namesBy(names::change);
    steps = new UndoSteps(desk, names);
    DeskStages stages = new DeskStages(desk, names, around, tones, show);
    BuildDesk build = stages.build();
    subscriptions.add(
        build
            .state()
            .listen(
                state ->
                    outcome(
                        Stage.BUILD,
                        state.kind() == BuildState.Kind.RUNNING,
                        WorkState.of(state))));
    subscriptions.add(
        stages
            .load()
            .state()
            .listen(state -> outcome(Stage.LOAD, state.busy(), WorkState.of(state))));
    past = new PastKeeper(desk, build, around.clock(), around.background(), around.view());
    subscriptions.add(past.said().listen(header::say));
    RecordDesk record = stages.record();
    subscriptions.add(past.kept().listen(count -> record.look()));
    subscriptions.add(desk.recorded().listen(count -> record.look()));
    folder = new FolderStrip(desk.folder());
    bench = new Bench(header, route, folder, plan, stages.makers(), line);
    observe();
    stations();
    keeper.restore(kept);
  }

  /** What a build or a copy came to stands on its station; an edit makes it stale. */
  private void outcome(Stage stage, boolean busy, StationState state) {
    if (state != null && busy) {
      outcomes.during(stage, state, desk.profile());
    } else if (state != null) {
      outcomes.ended(stage, state, desk.profile());
    }
    station(stage);
  }

  private void observe() {
    subscriptions.add(
        desk.stage()
            .observe(
                stage -> {
                  route.show(stage);
                  bench.show(stage);
                }));
    subscriptions.add(
        desk.values()
            .history()
            .observe(
                history -> {
                  steps.label(header);
                  title();
                  OF_THE_PROFILE.forEach(this::station);
                }));
    subscriptions.add(names.history().listen(history -> steps.label(header)));
    subscriptions.add(desk.look().marks().listen(history -> steps.label(header)));
    subscriptions.add(desk.part().listen(part -> steps.label(header)));
    subscriptions.add(desk.stage().listen(stage -> steps.label(header)));
    subscriptions.add(desk.judged().listen(judged -> station(Stage.CHECK)));
    subscriptions.add(desk.planned().listen(planned -> station(Stage.WRITE)));
    subscriptions.add(
        desk.opened()
            .listen(
                opened -> {
                  title();
                  stations();
                }));
    subscriptions.add(
        desk.folder()
            .state()
            .listen(
                state -> {
                  title();
                  OF_THE_FOLDER.forEach(this::station);
                }));
    subscriptions.add(
        desk.link()
            .status()
            .observe(
                status -> {
                  linked(status);
                  live();
                }));
    subscriptions.add(desk.link().live().listen(live -> live()));
    subscriptions.add(desk.link().touched().listen(touched -> live()));
    subscriptions.add(keeper.said().listen(header::say));
  }

  void undo() {
    steps.undo();
  }

  void redo() {
    steps.redo();
  }

  private void title() {
    OpenPrinter printer = desk.printer();
    StringBuilder about = new StringBuilder();
    desk.sheet().ifPresent(sheet -> about.append(sheet.name()));
    String mcu = printer.profile().board().mcu();
    if (mcu != null) {
      about.append(about.isEmpty() ? "" : " · ").append(mcu);
    }
    if (printer.folder() != null) {
      about
          .append(about.isEmpty() ? "" : " · ")
          .append(printer.folder().root().toAbsolutePath().normalize().getFileName())
          .append(desk.folder().state().get().current() ? "" : Texts.of("folder.former"));
    }
    header.printer(printer.title(), about.toString());
  }

  private void station(Stage stage) {
    route.show(
        stage, outcomes.of(stage, desk.profile()).orElseGet(() -> RouteState.of(desk, stage)));
  }

  private void stations() {
    for (Stage stage : Stage.values()) {
      station(stage);
    }
  }

  private void linked(LinkStatus status) {
    String words =
        switch (status.kind()) {
          case NONE -> Texts.of("link.none");
          case UP -> status.port() + " · " + baud();
          default ->
              status.port()
                  + " · "
                  + Texts.of("link." + status.kind().name().toLowerCase(java.util.Locale.ROOT));
        };
    header.connected(status.held(), words);
  }

  private String baud() {
    Integer baud = desk.profile().serial().baud();
    return baud == null ? "" : dev.gantrywright.ui.quantity.Shown.grouped(baud);
  }

  private void live() {
    route.show(Stage.PROVE, RouteState.of(desk, Stage.PROVE));
    plan.refresh();
  }

  private PlanContent planContent() {
    Map<String, ContactState> seen = desk.link().seen();
    return new PlanContent(
        desk.profile(),
        desk.sheet().map(sheet -> sheet.name()).orElse(""),
        DriverPlace.of(desk.profile(), desk.sheet()),
        desk.part().get(),
        desk.marks(),
        seen,
        new HashSet<>(Expectation.disagreeing(desk.profile(), desk.link())));
  }

  /** Takes the tones of the theme again. */
  void retone() {
    if (bench.inHand() instanceof ProveView prove) {
      prove.retone();
    }
  }

  Region view() {
    return bench;
  }

  PrinterDesk desk() {
    return desk;
  }

  Keeper keeper() {
    return keeper;
  }

  LinePanel line() {
    return line;
  }

  /** Whether there was a log to let down. */
  boolean letLogDown() {
    return bench.letLogDown();
  }

  @Override
  public void close() {
    folder.close();
    keeper.close();
    names.close();
    past.close();
    subscriptions.close();
    plan.close();
    line.close();
    bench.close();
    desk.close();
  }
}
