package dev.gantrywright.ui;

import dev.gantrywright.app.MeasuredImage;
import dev.gantrywright.machine.BuiltImage;
import dev.gantrywright.ui.build.BuildView;
import dev.gantrywright.ui.check.CheckView;
import dev.gantrywright.ui.describe.CatalogPickers;
import dev.gantrywright.ui.describe.DescribeView;
import dev.gantrywright.ui.load.LoadView;
import dev.gantrywright.ui.names.DescribeStage;
import dev.gantrywright.ui.names.NamesDesk;
import dev.gantrywright.ui.names.NamesView;
import dev.gantrywright.ui.prove.ProveView;
import dev.gantrywright.ui.record.RecordBox;
import dev.gantrywright.ui.record.RecordDesk;
import dev.gantrywright.ui.state.BuildDesk;
import dev.gantrywright.ui.state.ExportDesk;
import dev.gantrywright.ui.state.LoadDesk;
import dev.gantrywright.ui.state.MarginNote;
import dev.gantrywright.ui.state.Past;
import dev.gantrywright.ui.state.PatchedPlace;
import dev.gantrywright.ui.state.PortsDesk;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Stage;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Tones;
import dev.gantrywright.ui.write.WriteView;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.Node;

/** Makes the stages of one open printer, each when it is first looked at, and what they work on. */
final class DeskStages {
  private final PrinterDesk desk;
  private final Surroundings around;
  private final NamesDesk names;
  private final Supplier<Tones> tones;
  private final Consumer<Path> show;
  private final ExportDesk export;
  private final BuildDesk build;
  private final LoadDesk load;
  private final RecordDesk record;

  /**
   * @param tones of the theme in use
   * @param show opens a folder in the system's own window
   */
  DeskStages(
      PrinterDesk desk,
      NamesDesk names,
      Surroundings around,
      Supplier<Tones> tones,
      Consumer<Path> show) {
    this.desk = desk;
    this.around = around;
    this.names = names;
    this.tones = tones;
    this.show = show;
    export =
        new ExportDesk(
            around.background(),
            around.view(),
            (plan, manifest, target) ->
                Past.keep(
                    desk.printer(),
                    around.clock(),
                    past -> past.exported(desk.printer(), plan, manifest, target)));
    build =
        new BuildDesk(
            around.records(), around.clock(), around.background(), around.view(), this::measured);
    load =
        new LoadDesk(
            desk::printer,
            this::patched,
            around.records(),
            around.clock(),
            around.background(),
            around.view());
    record = new RecordDesk(desk, around.clock(), around.background(), around.view());
  }

  /** What makes the view of each stage. */
  Map<Stage, Supplier<? extends Node>> makers() {
    Map<Stage, Supplier<? extends Node>> makers = new EnumMap<>(Stage.class);
    makers.put(Stage.DESCRIBE, this::describe);
    makers.put(Stage.CHECK, () -> new CheckView(desk, this::waive));
    makers.put(Stage.WRITE, () -> new WriteView(desk, export, show));
    makers.put(Stage.BUILD, () -> new BuildView(desk, around.catalog(), build, this::patched));
    makers.put(Stage.LOAD, () -> new LoadView(desk, load, build));
    makers.put(Stage.PROVE, this::prove);
    return makers;
  }

  BuildDesk build() {
    return build;
  }

  LoadDesk load() {
    return load;
  }

  RecordDesk record() {
    return record;
  }

  private DescribeStage describe() {
    return new DescribeStage(
        desk,
        new DescribeView(desk, new CatalogPickers(around.catalog(), desk::sheet)),
        () -> new NamesView(desk, names));
  }

  /** The Prove stage, with the record at its end. */
  private ProveView prove() {
    ProveView prove = new ProveView(desk, tones, new PortsDesk(around.ports(), around.view()));
    prove.below(new RecordBox(record, show));
    return prove;
  }

  private void waive(MarginNote note, String reason) {
    desk.waive(note, reason, LocalDate.now(around.clock()).toString());
  }

  /** Keeps in the profile what the last image takes, so that the rules can speak of it. */
  private void measured(BuiltImage image) {
    if (!MeasuredImage.into(desk.profile(), image).equals(desk.profile())) {
      desk.values().change(Texts.of("build.measured"), "", now -> MeasuredImage.into(now, image));
    }
  }

  /** The patched folder: where it was written last, else where it would be proposed to go. */
  private Path patched() {
    Path written = export.state().get().target();
    return written != null ? written : PatchedPlace.of(desk.opened().get());
  }
}
