package dev.gantrywright.app.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.header.FirmwareFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FleetCarryCancelTest {
  @TempDir Path folder;

  /** Asked before the first printer and then at each entry of its folder's listing. */
  @Test
  void aListingThatIsCancelledCarriesNothing() throws Exception {
    Path workshop = DemoWorkshop.unpack(folder.resolve("workshop")).getParent();
    FirmwareFolder release = FirmwareFolder.read(workshop.resolve("rookery-2.3"));
    AtomicInteger asked = new AtomicInteger();
    List<FleetCarry.Row> rows =
        new FleetCarry(release)
            .run(
                Fleet.in(workshop),
                folder.resolve("carried"),
                null,
                done -> {},
                () -> asked.incrementAndGet() > 4);
    assertThat(rows).hasSize(3).allMatch(row -> row.problem().equals(FleetCarry.CANCELLED));
    assertThat(asked).as("no entry after the fourth").hasValue(5 + 2);
    assertThat(folder.resolve("carried")).doesNotExist();
  }

  @Test
  void whatIsCancelledLeavesNothingHalfWritten() throws Exception {
    Path workshop = DemoWorkshop.unpack(folder.resolve("workshop")).getParent();
    Path out = folder.resolve("carried");
    FirmwareFolder release = FirmwareFolder.read(workshop.resolve("rookery-2.3"));
    // Heard before each file: somewhere within the second printer's folder the user has enough.
    Fleet fleet = Fleet.in(workshop);
    List<Integer> done = new ArrayList<>();
    AtomicInteger asked = new AtomicInteger();
    List<FleetCarry.Row> rows =
        new FleetCarry(release)
            .run(
                fleet,
                out,
                null,
                done::add,
                () -> done.size() == 1 && asked.incrementAndGet() > 3 || done.size() > 1);

    assertThat(done).containsExactly(1, 2, 3);
    assertThat(rows.get(0).problem()).isEmpty();
    assertThat(rows.get(1).problem()).contains("cancelled; the patched folder was not written");
    assertThat(rows.get(2).problem()).isEqualTo("not carried: cancelled");
    try (Stream<Path> left = Files.list(out)) {
      assertThat(left).containsExactly(rows.get(0).out().orElseThrow().getParent());
    }
  }
}
