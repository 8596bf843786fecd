package dev.gantrywright.names;

import java.util.ArrayList;
import java.util.List;

/** Pairs boards with the build targets whose part they carry. */
final class BoardFits {
  private BoardFits() {}

  static NameMap of(NameMap map, List<BoardConstant> boards, List<BuildTarget> targets) {
    List<BoardConstant> fitted = new ArrayList<>();
    for (BoardConstant board : boards) {
      List<String> names =
          targets.stream()
              .filter(target -> McuNames.fits(board.mcu(), target.mcu()))
              .map(BuildTarget::name)
              .toList();
      fitted.add(
          new BoardConstant(
              board.constant(),
              board.number(),
              board.comment(),
              board.mcu(),
              board.file(),
              board.line(),
              names,
              board.chosen(),
              board.notes()));
    }
    List<BuildTarget> served = new ArrayList<>();
    for (BuildTarget target : targets) {
      List<String> names =
          boards.stream()
              .filter(board -> McuNames.fits(board.mcu(), target.mcu()))
              .map(BoardConstant::constant)
              .toList();
      served.add(
          new BuildTarget(
              target.name(),
              target.section(),
              target.mcu(),
              target.comment(),
              target.file(),
              target.line(),
              names,
              target.chosen(),
              target.notes()));
    }
    return new NameMap(map.fields(), fitted, served, map.more());
  }
}
