package dev.gantrywright.ui;

import dev.gantrywright.app.Opening;
import dev.gantrywright.app.Places;
import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.Mcu;
import dev.gantrywright.link.serial.PortList;
import dev.gantrywright.names.Learner;
import dev.gantrywright.names.McuNames;
import dev.gantrywright.rules.book.StandardBook;
import dev.gantrywright.ui.state.FolderDesk;
import dev.gantrywright.ui.state.HabitStore;
import dev.gantrywright.ui.state.RecoveryStore;
import dev.gantrywright.ui.state.RuleInspector;
import java.nio.file.Path;
import java.time.Clock;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;

/**
 * What the window needs from outside, so that tests can give it something else.
 *
 * @param background runs what may take time
 * @param view hands over to the toolkit's thread
 * @param facts the catalogue, read when it is first asked for
 * @param workshop the folder of the demo printers
 * @param records where histories and replaced images are kept
 * @param reading reads the firmware folder that a profile names anew
 * @param folders opens a folder in the system's own window
 * @param ports the serial ports of this computer
 */
public record Surroundings(
    Clock clock,
    ExecutorService background,
    Executor view,
    Supplier<Catalog> facts,
    RuleInspector inspector,
    HabitStore habits,
    RecoveryStore recovery,
    Path workshop,
    Path records,
    FolderDesk.Reading reading,
    Consumer<Path> folders,
    PortList ports) {
  /** The same with other ways to read folders, and to open them in the system's window. */
  Surroundings folders(FolderDesk.Reading reader, Consumer<Path> opener) {
    return new Surroundings(
        clock,
        background,
        view,
        facts,
        inspector,
        habits,
        recovery,
        workshop,
        records,
        reader,
        opener,
        ports);
  }

  /** The same with other serial ports. */
  Surroundings ports(PortList other) {
    return new Surroundings(
        clock,
        background,
        view,
        facts,
        inspector,
        habits,
        recovery,
        workshop,
        records,
        reading,
        folders,
        other);
  }

  /** Facts about parts. */
  public Catalog catalog() {
    return facts.get();
  }

  /** Learns names, and knows the catalogue's microcontrollers. */
  Learner learner() {
    return new Learner(new McuNames(catalog().mcus().stream().map(Mcu::part).toList()));
  }

  /** Those of the user who runs the program. */
  public static Surroundings ofThisUser() {
    Places places = Places.ofThisUser();
    return in(places.data(), places.workshop());
  }

  /** With everything kept in one folder. */
  public static Surroundings in(Path data, Path workshop) {
    Supplier<Catalog> catalog = new Later<>(Catalog::shipped);
    ExecutorService background =
        Executors.newCachedThreadPool(
            task -> {
              Thread thread = new Thread(task, "background");
              thread.setDaemon(true);
              return thread;
            });
    Supplier<PortList> system = new Later<>(PortList::system);
    return new Surroundings(
        Clock.systemDefaultZone(),
        background,
        Platform::runLater,
        catalog,
        new RuleInspector(new Later<>(StandardBook::open), catalog),
        new HabitStore(data.resolve("window.json")).early(background),
        new RecoveryStore(data.resolve("recovery")),
        workshop,
        data.resolve("records"),
        (file, profile, progress) -> new Opening().open(file, profile, null, progress),
        ShownFolder::open,
        () -> system.get().ports());
  }
}
