package dev.gantrywright.ui.state;

import dev.gantrywright.app.FolderValues;
import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.Opening;
import dev.gantrywright.header.FirmwareFolder;
import dev.gantrywright.header.FolderException;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileProblem;
import dev.gantrywright.machine.ProfileStore;
import dev.gantrywright.machine.ProfileValues;
import dev.gantrywright.names.NameMap;
import dev.gantrywright.names.NameMapException;
import dev.gantrywright.names.NameMapJson;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/** All printers that the user knows, and opening one of them. */
public final class Workshop {
  private final Inspector inspector;
  private final Function<FirmwareFolder, NameMap> learner;
  private final Executor background;
  private final Executor view;
  private final Cell<List<PrinterCard>> printers = new Cell<>(List.of());
  private final Cell<String> trouble = new Cell<>("");
  private final Cell<Boolean> busy = new Cell<>(false);
  private long round;

  /**
   * @param learner learns a folder's names; may take time
   */
  public Workshop(
      Inspector inspector,
      Function<FirmwareFolder, NameMap> learner,
      Executor background,
      Executor view) {
    this.inspector = inspector;
    this.learner = learner;
    this.background = background;
    this.view = view;
  }

  public Cell<List<PrinterCard>> printers() {
    return printers;
  }

  /** Why the last act failed; empty where it did not. */
  public Cell<String> trouble() {
    return trouble;
  }

  public Cell<Boolean> busy() {
    return busy;
  }

  /** Reads these profiles and all that lie in these folders. */
  public void look(List<Path> files, List<Path> folders) {
    long mine = ++round;
    busy.set(true);
    background.execute(
        () -> {
          List<PrinterCard> cards = new ArrayList<>();
          Opening opening = new Opening();
          for (Path file : all(files, folders)) {
            cards.add(card(opening, file));
          }
          view.execute(
              () -> {
                if (mine == round) {
                  printers.set(List.copyOf(cards));
                  busy.set(false);
                }
              });
        });
  }

  private static Set<Path> all(List<Path> files, List<Path> folders) {
    Set<Path> all = new LinkedHashSet<>();
    files.stream().filter(Files::isRegularFile).map(Workshop::plain).forEach(all::add);
    for (Path folder : folders) {
      try (Stream<Path> inside = Files.list(folder)) {
        inside
            .filter(file -> file.getFileName().toString().endsWith(".printer.json"))
            .sorted()
            .map(Workshop::plain)
            .forEach(all::add);
      } catch (IOException gone) {
        // A folder that is no longer there has no printers.
        continue;
      }
    }
    return all;
  }

  private static Path plain(Path file) {
    return file.toAbsolutePath().normalize();
  }

  private PrinterCard card(Opening opening, Path file) {
    try {
      OpenPrinter printer = opening.open(file);
      return PrinterCard.of(printer, inspector.inspect(printer));
    } catch (ProfileProblem unreadable) {
      return PrinterCard.broken(file, unreadable.getMessage());
    }
  }

  /** Opens a printer off the view's thread and hands it over. */
  public void open(Path file, Consumer<OpenPrinter> opened) {
    busy.set(true);
    background.execute(
        () -> {
          try {
            OpenPrinter printer = new Opening().open(plain(file));
            view.execute(
                () -> {
                  busy.set(false);
                  trouble.set("");
                  opened.accept(printer);
                });
          } catch (ProfileProblem unreadable) {
            fail(unreadable.getMessage());
          }
        });
  }

  private void fail(String line) {
    view.execute(
        () -> {
          busy.set(false);
          trouble.set("");
          trouble.set(line);
        });
  }

  /** Copies a printer's profile beside it under a free name, and hands the copy's file over. */
  public void duplicate(PrinterCard card, Consumer<Path> made) {
    background.execute(
        () -> {
          try {
            PrinterProfile profile = card.profile().orElseThrow();
            String name = Texts.of("start.copyOf", card.title());
            Path copy = free(card.file(), name);
            ProfileStore.save(ProfileValues.with(profile, "name", name), copy);
            view.execute(() -> made.accept(copy));
          } catch (IOException | ProfileProblem failed) {
            fail(failed.getMessage());
          }
        });
  }

  /** Writes a first profile for a firmware folder beside it, and hands its file over. */
  public void describe(Path folder, Consumer<Path> made) {
    background.execute(
        () -> {
          try {
            Path file = learned(plain(folder));
            view.execute(() -> made.accept(file));
          } catch (FolderException | NameMapException | IOException | ProfileProblem failed) {
            fail(failed.getMessage());
          }
        });
  }

  /** Learns the folder's names, reads its values back through them, and saves both beside it. */
  private Path learned(Path folder)
      throws FolderException, NameMapException, ProfileProblem, IOException {
    FirmwareFolder read = FirmwareFolder.read(folder);
    NameMap names = learner.apply(read);
    String name = folder.getFileName().toString();
    Path file = free(folder, name);
    Path map = folder.resolveSibling(name + ".names.json");
    if (!Files.exists(map)) {
      NameMapJson.save(names, map);
    }
    PrinterProfile profile =
        ProfileStore.parse(file.toString(), "{\"format\": 1}".getBytes(StandardCharsets.UTF_8));
    profile = ProfileValues.with(profile, "name", name);
    profile = ProfileValues.with(profile, "build.folder", name);
    profile = ProfileValues.with(profile, "build.names", map.getFileName().toString());
    for (Map.Entry<String, JsonNode> value : FolderValues.of(read, names).entrySet()) {
      try {
        profile = ProfileValues.with(profile, value.getKey(), value.getValue());
      } catch (ProfileProblem outside) {
        // A value that the field does not take is left for the user to describe.
        continue;
      }
    }
    ProfileStore.save(profile, file);
    return file;
  }

  private static Path free(Path beside, String name) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    Path place = beside.resolveSibling(plain + ".printer.json");
    for (int i = 2; Files.exists(place); i++) {
      place = beside.resolveSibling(plain + "-" + i + ".printer.json");
    }
    return place;
  }
}
