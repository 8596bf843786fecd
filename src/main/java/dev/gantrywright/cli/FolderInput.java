package dev.gantrywright.cli;

import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.FolderException;
import dev.gantrywright.header.Progress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.CommandSpec;

/** Reads the firmware folder that a verb was given. */
final class FolderInput {
  private FolderInput() {}

  /**
   * Refuses a path that is given and is no folder.
   *
   * @param what is wanted, for the message
   */
  static void need(Path folder, String what) {
    if (folder != null && !Files.isDirectory(folder)) {
      throw new UsageProblem(
          folder
              + (Files.exists(folder) ? ": is a file; give " : ": there is no such folder; give ")
              + what);
    }
  }

  /**
   * The folder under the given defines.
   *
   * @param spec of the verb, on whose error stream a long reading shows how far it is
   * @param defines {@code NAME} or {@code NAME=VALUE}; a bare name counts as 1, as compilers do
   */
  static FirmwareFolder read(CommandSpec spec, Path folder, List<String> defines) {
    return read(spec, folder, defines, Progress.none());
  }

  /**
   * The same, for a run that can be ended in order.
   *
   * @param progress told of each step; what it throws ends the reading
   */
  static FirmwareFolder read(
      CommandSpec spec, Path folder, List<String> defines, Progress progress) {
    Map<String, String> predefined = new LinkedHashMap<>();
    for (String define : defines) {
      int equals = define.indexOf('=');
      String name = equals < 0 ? define : define.substring(0, equals);
      if (!name.matches("[A-Za-z_]\\w*")) {
        throw new UsageProblem(
            "--define: '" + define + "' names no macro; write NAME or NAME=VALUE");
      }
      predefined.put(name, equals < 0 ? "1" : define.substring(equals + 1));
    }
    try (FolderProgress shown = new FolderProgress(Printed.err(spec), folder, progress)) {
      return FirmwareFolder.read(folder, predefined, shown);
    } catch (FolderException unreadable) {
      throw new UsageProblem(unreadable.getMessage(), unreadable);
    }
  }
}
