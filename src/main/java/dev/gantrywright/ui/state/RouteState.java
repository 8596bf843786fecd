package dev.gantrywright.ui.state;

import dev.gantrywright.patch.PatchPlan;
import java.util.List;
import java.util.Optional;

/** What each station of the route shows. */
public final class RouteState {
  private RouteState() {}

  public static StationState of(PrinterDesk desk, Stage stage) {
    return switch (stage) {
      case DESCRIBE -> describe(desk);
      case CHECK -> check(desk);
      case WRITE -> write(desk.planned().get().plan(), desk);
      case BUILD -> build(desk);
      case LOAD -> load(desk);
      case PROVE -> prove(desk.link(), desk);
    };
  }

  private static StationState describe(PrinterDesk desk) {
    return desk.values().history().get().isSaved()
        ? StationState.settled(Texts.of("route.saved"))
        : StationState.open(Texts.of("route.unsaved"));
  }

  private static StationState check(PrinterDesk desk) {
    List<MarginNote> notes = desk.notes();
    if (desk.judged().get().revision() < 0) {
      return StationState.open(Texts.of("route.checking"));
    }
    if (notes.isEmpty()) {
      return StationState.settled(Texts.of("route.fits"));
    }
    Gravity worst = notes.get(0).gravity();
    StationState.Sign sign = StationState.Sign.valueOf(worst.name());
    return new StationState(sign, MarginNotes.count(notes, worst), MarginNotes.counted(notes));
  }

  private static StationState write(Optional<PatchPlan> plan, PrinterDesk desk) {
    if (plan.isEmpty()) {
      return StationState.open(
          Texts.of(desk.opened().get().folder() == null ? "route.noFolder" : "route.noNames"));
    }
    int lines = plan.get().lines().size();
    int refused = plan.get().refusals().size();
    if (refused > 0) {
      return new StationState(
          StationState.Sign.WARNING, refused, Texts.of("route.refused", lines, refused));
    }
    return lines == 0
        ? StationState.settled(Texts.of("route.written"))
        : StationState.open(Texts.of("route.lines", lines));
  }

  private static StationState build(PrinterDesk desk) {
    return desk.profile().build().command().isEmpty()
        ? StationState.open(Texts.of("route.noCommand"))
        : StationState.open(Texts.of("route.notBuilt"));
  }

  private static StationState load(PrinterDesk desk) {
    return StationState.open(
        desk.sheet()
            .map(sheet -> sheet.loader().medium())
            .map(medium -> Texts.of("route.by." + medium.word()))
            .orElse("–"));
  }

  private static StationState prove(LinkDesk link, PrinterDesk desk) {
    if (link.status().get().kind() != LinkStatus.Kind.UP) {
      return StationState.open(Texts.of("route.notConnected"));
    }
    List<String> wrong = Expectation.disagreeing(desk.profile(), link);
    if (!wrong.isEmpty()) {
      String words =
          wrong.size() == 1
              ? Texts.of("route.disagrees", PlaceNames.endstop(wrong.get(0)))
              : Texts.of("route.disagree", wrong.size());
      return new StationState(StationState.Sign.WARNING, 0, words);
    }
    return link.live().get().fresh()
        ? StationState.settled(Texts.of("route.agrees"))
        : StationState.open(Texts.of("route.waiting"));
  }
}
