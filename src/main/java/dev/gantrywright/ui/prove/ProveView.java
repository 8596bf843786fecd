package dev.gantrywright.ui.prove;

import dev.gantrywright.app.PortMemory;
import dev.gantrywright.machine.Endstop;
import dev.gantrywright.ui.describe.MarginSheet;
import dev.gantrywright.ui.describe.NoteCard;
import dev.gantrywright.ui.state.Endstops;
import dev.gantrywright.ui.state.Expectation;
import dev.gantrywright.ui.state.LinkDesk;
import dev.gantrywright.ui.state.LinkStatus;
import dev.gantrywright.ui.state.Live;
import dev.gantrywright.ui.state.PortsDesk;
import dev.gantrywright.ui.state.PrinterDesk;
import dev.gantrywright.ui.state.Subscription;
import dev.gantrywright.ui.state.Subscriptions;
import dev.gantrywright.ui.state.Texts;
import dev.gantrywright.ui.theme.Pieces;
import dev.gantrywright.ui.theme.SheetScroll;
import dev.gantrywright.ui.theme.Tones;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The Prove stage: live endstop states, expected against seen, and the proof. */
public final class ProveView extends SheetScroll implements Subscription {
  private final PrinterDesk desk;
  private final Supplier<Tones> tones;
  private final ConnectionBar bar;
  private final VBox rowsBox = new VBox();
  private final Map<String, EndstopRow> rows = new LinkedHashMap<>();
  private final TraceBox trace;
  private final ProofList proof = new ProofList();
  private final NamesPanel names;
  private final StoredPanel stored;
  private final TouchPanel touch;
  private final FaultsPanel faults;
  private final TravelPanel travel;
  private final HeaterPanel heater;
  private final Button prove;
  private final VBox form;
  private final MarginSheet sheet;
  private final Subscriptions subscriptions = new Subscriptions();

  /**
   * @param tones of the theme in use
   * @param ports closed with this view
   */
  public ProveView(PrinterDesk desk, Supplier<Tones> tones, PortsDesk ports) {
    this.desk = desk;
    this.tones = tones;
    bar = new ConnectionBar(desk, ports);
    names = new NamesPanel(desk);
    stored = new StoredPanel(desk);
    touch = new TouchPanel(desk);
    faults = new FaultsPanel(desk);
    travel = new TravelPanel(desk);
    heater = new HeaterPanel(desk);
    // As high as what it holds: the sheet's least height is none, and what is below must be
    // reached.
    setFitToHeight(false);
    setHbarPolicy(ScrollBarPolicy.NEVER);
    trace =
        new TraceBox(
            desk.look(), () -> desk.printer().file(), () -> desk.link().live().get().hertz());
    prove =
        Pieces.button(
            "prove-now",
            Texts.of("prove.now"),
            "act",
            () -> desk.link().prove(desk.profile(), desk.printer().file()));
    Label caution = Pieces.label(Texts.of("help.caution"), "caution-word");
    caution.setMinWidth(javafx.scene.layout.Region.USE_PREF_SIZE);
    form =
        new VBox(
            10,
            Pieces.heading(
                Pieces.label(Texts.of("stage.prove"), "title"),
                Pieces.label(Texts.of("prove.about"), "quiet")),
            bar,
            Pieces.row(10, caution, Pieces.paragraph(Texts.of("prove.caution"), "small")),
            rowsBox,
            trace,
            Pieces.row(12, prove),
            proof,
            names,
            stored,
            touch,
            faults,
            travel,
            heater);
    form.getStyleClass().add("form");
    sheet =
        new MarginSheet(
            form,
            path -> rows.get(path.substring(path.lastIndexOf('.') + 1)),
            new NoteCard.Acts(desk::apply, note -> layoutMargin()));
    setContent(sheet);
    observe();
  }

  /** Adds what stands below the proof; it is closed with this view. */
  public <T extends javafx.scene.Node & Subscription> void below(T end) {
    form.getChildren().add(end);
    subscriptions.add(end);
  }

  private void layoutMargin() {
    sheet.requestLayout();
  }

  private void observe() {
    LinkDesk link = desk.link();
    subscriptions.add(desk.values().history().observe(history -> rebuild()));
    subscriptions.add(link.status().observe(status -> standing()));
    subscriptions.add(link.live().observe(live -> refresh()));
    subscriptions.add(link.touched().listen(touched -> refresh()));
    subscriptions.add(
        link.proof()
            .observe(
                report -> {
                  proof.show(report);
                  names.proof(report);
                  stored.proof(report);
                  sheet.requestLayout();
                }));
    subscriptions.add(
        link.armed()
            .listen(
                armed -> {
                  stored.armed();
                  heater.standing();
                }));
    subscriptions.add(link.usbPort().listen(this::keepPort));
    subscriptions.add(link.proving().observe(busy -> proving(busy)));
  }

  /** The port that was opened is this printer's from now on, under whatever name. */
  private void keepPort(Optional<String> identity) {
    String kept = desk.profile().link().usb();
    identity
        .filter(found -> !found.equals(kept))
        .ifPresent(found -> desk.values().edit(PortMemory.PATH, found));
  }

  private void proving(boolean busy) {
    prove.setText(Texts.of(busy ? "prove.busy" : "prove.now"));
    prove.setDisable(busy || desk.link().status().get().kind() != LinkStatus.Kind.UP);
  }

  private void standing() {
    bar.show();
    touch.standing();
    faults.standing();
    heater.standing();
    proving(desk.link().proving().get());
    retone();
    refresh();
  }

  /** Takes the tones of the theme again. */
  public void retone() {
    trace.show(desk.link().status().get().held(), tones.get());
  }

  private void rebuild() {
    List<String> fitted = Endstops.fitted(desk.profile());
    if (!fitted.equals(List.copyOf(rows.keySet()))) {
      rows.clear();
      fitted.forEach(end -> rows.put(end, new EndstopRow(end, desk.link()::touch)));
      rowsBox.getChildren().setAll(rows.values());
    }
    bar.show();
    travel.profile();
    refresh();
  }

  private void refresh() {
    Live live = desk.link().live().get();
    rows.forEach(
        (end, row) -> {
          Endstop endstop = desk.profile().endstops().get(end);
          row.show(
              endstop.contact(),
              Expectation.expected(desk.link(), end),
              live.of(end),
              live.fresh());
          row.touched(desk.link().touched().get().contains(end));
        });
    List<String> wrong = Expectation.disagreeing(desk.profile(), desk.link());
    trace.wrong(bits(wrong));
    sheet.show(
        wrong.stream().map(end -> Expectation.note(desk.profile(), desk.link(), end)).toList());
  }

  private int bits(List<String> wrong) {
    int bits = 0;
    List<String> ends = desk.link().trace().ends();
    for (String end : wrong) {
      int at = ends.indexOf(end);
      bits |= at < 0 ? 0 : 1 << at;
    }
    return bits;
  }

  @Override
  public void close() {
    trace.close();
    bar.close();
    subscriptions.close();
  }
}
