package dev.gantrywright.patch;

import dev.gantrywright.header.FirmwareFolder;
import java.nio.file.Path;
import java.util.List;

/** Exports two plans in turn over each other, a dot for each, for ever: a process to be killed. */
public final class ExportInALoop {
  private ExportInALoop() {}

  static List<HandChange> changes(int turn) {
    return List.of(HandChange.set("LINE_RATE=" + (turn % 2 == 0 ? 250000 : 500000)));
  }

  public static void main(String[] args) throws Exception {
    FirmwareFolder folder = FirmwareFolder.read(Path.of(args[0]));
    for (int i = 0; ; i++) {
      PatchPlan plan = PatchPlan.of(changes(i), folder);
      Export.write(plan, Path.of(args[1]), true, ExportProgress.none(), () -> false);
      System.out.write('.');
      System.out.flush();
    }
  }
}
