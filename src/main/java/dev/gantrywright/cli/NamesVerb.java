package dev.gantrywright.cli;

import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.IoReason;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.names.Learner;
import dev.gantrywright.names.McuNames;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.NameMapException;
import dev.gantrywright.names.NameMapJson;
import dev.gantrywright.names.ProfileFromFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Learns which macro of a firmware folder carries which profile value. */
@Command(
    name = "names",
    mixinStandardHelpOptions = true,
    description =
        "Learns the name map of a firmware folder: which macro or build setting carries which"
            + " profile value, what it means, and why. What it is not sure of is marked with a"
            + " question mark; it is never written before you confirm it.")
final class NamesVerb implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private TextOrJson format;

  @Parameters(index = "0", paramLabel = "DIR", description = "The firmware folder.")
  private Path folder;

  @Option(names = "--out", paramLabel = "FILE", description = "Save the name map here.")
  private Path out;

  @Option(
      names = "--keep",
      paramLabel = "NAMES",
      description = "An earlier map: what the user set there stays.")
  private Path keep;

  @Option(
      names = "--profile",
      paramLabel = "OUT",
      description = "Save a new profile with every value that the folder holds; never over a file.")
  private Path profile;

  @Option(
      names = "--define",
      paramLabel = "NAME[=VALUE]",
      description = "A name that the build defines for the compiler.")
  private List<String> defines = new ArrayList<>();

  @Override
  public Integer call() {
    FirmwareFolder read = FolderInput.read(spec, folder, defines);
    outside(out);
    outside(profile);
    if (profile != null && Files.exists(profile)) {
      throw new UsageProblem(
          profile + ": is there already and would be lost; give a new name to --profile");
    }
    NameMap map = learner().learn(read, earlier());
    if (out != null) {
      save(map);
    }
    if (profile != null) {
      saveProfile(read, map);
    }
    if (format.json()) {
      Printed.out(spec).print(NameMapJson.text(map));
    } else {
      NamesText.print(map, Printed.out(spec), columns());
    }
    return ExitStatus.FINE;
  }

  /** A terminal's own width; a file takes whole lines, which are easier to search. */
  private int columns() {
    return Terminal.is(Terminal.OUT) ? spec.usageMessage().width() : Integer.MAX_VALUE;
  }

  private void outside(Path made) {
    Path home = folder.toAbsolutePath().normalize();
    if (made != null && made.toAbsolutePath().normalize().startsWith(home)) {
      throw new UsageProblem(made + ": lies inside the firmware folder, which is never written to");
    }
  }

  static Learner learner() {
    return new Learner(new McuNames(Catalog.shipped().mcus().stream().map(Mcu::part).toList()));
  }

  private NameMap earlier() {
    Path file = keep != null ? keep : out != null && Files.exists(out) ? out : null;
    try {
      return file == null ? NameMap.EMPTY : NameMapJson.read(file);
    } catch (NameMapException unreadable) {
      throw new UsageProblem(unreadable.getMessage(), unreadable);
    }
  }

  private void save(NameMap map) {
    try {
      NameMapJson.save(map, out);
    } catch (NameMapException failed) {
      throw new DeviceProblem(failed.getMessage(), failed);
    }
  }

  private void saveProfile(FirmwareFolder read, NameMap map) {
    Path place = folder.toAbsolutePath().normalize();
    try {
      ProfileFromFolder made = ProfileFromFolder.read(read, map, place.getFileName().toString());
      Path home = profile.toAbsolutePath().normalize().getParent();
      var complete =
          ProfileValues.with(made.profile(), "build.folder", home.relativize(place).toString());
      if (out != null) {
        Path names = home.relativize(out.toAbsolutePath().normalize());
        complete = ProfileValues.with(complete, "build.names", names.toString());
      }
      ProfileStore.save(complete, profile);
      made.notes().forEach(Printed.err(spec)::println);
    } catch (ProfileProblem wrong) {
      throw new UsageProblem(wrong.getMessage(), wrong);
    } catch (IOException failed) {
      throw new DeviceProblem(
          profile + ": cannot be written (" + IoReason.of(failed) + "); choose another place",
          failed);
    }
  }
}
