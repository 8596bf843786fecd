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
        ? StationState.settled("route.saved")
        : StationState.open("route.unsaved");
  }

  private static StationState check(PrinterDesk desk) {
    List<MarginNote> notes = desk.notes();
    if (desk.folder().state().get().folderAhead()) {
      return StationState.open("route.reading");
    }
    if (!desk.folder().whole() || !desk.judged().get().whole()) {
      return StationState.open("route.checking");
    }
    if (notes.isEmpty()) {
      return StationState.settled("route.fits");
    }
    Gravity worst = notes.get(0).gravity();
    StationState.Sign sign = StationState.Sign.valueOf(worst.name());
    int count = MarginNotes.count(notes, worst);
    return new StationState(
        sign, count, MarginNotes.counted(notes), Texts.of("count." + worst.word(), count));
  }

  private static StationState write(Optional<PatchPlan> plan, PrinterDesk desk) {
    FolderState folder = desk.folder().state().get();
    if (!folder.current() && folder.another()) {
      return StationState.open(
          folder.folderAhead()
              ? "route.reading"
              : folder.reads() ? "route.checking" : "route.unread");
    }
    if (desk.planned().get().revision() < 0 && desk.opened().get().names() != null) {
      return StationState.open("route.checking");
    }
    if (plan.isEmpty()) {
      return StationState.open(
          desk.opened().get().folder() == null ? "route.noFolder" : "route.noNames");
    }
    int lines = plan.get().lines().size();
    int refused = plan.get().refusals().size();
    if (refused > 0) {
      return StationState.of(StationState.Sign.WARNING, refused, "route.refused", lines, refused);
    }
    return lines == 0
        ? StationState.settled("route.written")
        : StationState.open("route.lines", lines);
  }

  private static StationState build(PrinterDesk desk) {
    return desk.profile().build().command().isEmpty()
        ? StationState.open("route.noCommand")
        : StationState.open("route.notBuilt");
  }

  private static StationState load(PrinterDesk desk) {
    return desk.sheet()
        .map(sheet -> sheet.loader().medium())
        .map(medium -> StationState.open("route.by." + medium.word()))
        .orElseGet(() -> StationState.openAs("–"));
  }

  private static StationState prove(LinkDesk link, PrinterDesk desk) {
    if (link.status().get().kind() != LinkStatus.Kind.UP) {
      return StationState.open("route.notConnected");
    }
    List<String> wrong = Expectation.disagreeing(desk.profile(), link);
    if (!wrong.isEmpty()) {
      return wrong.size() == 1
          ? StationState.of(
              StationState.Sign.WARNING, 0, "route.disagrees", PlaceNames.endstop(wrong.get(0)))
          : StationState.of(StationState.Sign.WARNING, 0, "route.disagree", wrong.size());
    }
    return link.live().get().fresh()
        ? StationState.settled("route.agrees")
        : StationState.open("route.waiting");
  }
}
