package dev.gantrywright.link.serial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.UsbIdentity;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.Executors;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import org.junit.jupiter.api.Test;

class PortsTest {
  private static PortDescription port(String name, String usb) {
    return new PortDescription(name, "", UsbIdentity.parse(usb), "", Optional.empty(), "");
  }

  @Test
  void everyRowOfTheTableHasASourceAndIsFound() {
    UsbChips chips = UsbChips.standard();
    assertThat(chips.rows()).hasSizeGreaterThan(15);
    for (UsbChips.Row row : chips.rows()) {
      assertThat(row.source()).as(row.what()).isNotBlank();
      int product = row.product() < 0 ? 0xFFFE : row.product();
      assertThat(chips.find(new UsbIdentity(row.vendor(), product, ""))).contains(row);
    }
    assertThat(chips.rows()).doesNotHaveDuplicates();
    assertThat(chips.find(new UsbIdentity(0xFFFF, 1, ""))).isEmpty();
  }

  @Test
  void theProductDecidesBeforeTheVendor() {
    UsbChips chips = UsbChips.standard();
    assertThat(chips.find(new UsbIdentity(0x0483, 0x5740, "")).orElseThrow().what())
        .isEqualTo("native USB of an STM32");
    assertThat(chips.find(new UsbIdentity(0x10C4, 0xEA60, "")).orElseThrow().what())
        .startsWith("UART bridge CP2102");
    assertThat(chips.find(new UsbIdentity(0x0483, 0x1, "")).orElseThrow().what()).contains("of ST");
  }

  @Test
  void aDeviceIsFoundUnderWhateverNameItHasNow() throws LinkException {
    UsbIdentity kept = UsbIdentity.parse("usb:0483:5740:7F").orElseThrow();
    List<PortDescription> now = new ArrayList<>(List.of(port("/dev/ttyACM0", "usb:0483:5740:11")));
    PortList list = () -> now;
    assertThat(list.find(kept)).isEmpty();
    now.add(port("/dev/ttyACM1", "usb:0483:5740:7F"));
    assertThat(list.require(kept)).isEqualTo("/dev/ttyACM1");
    now.clear();
    assertThatThrownBy(() -> list.require(kept)).hasMessageContaining("is not plugged in");
  }

  @Test
  void pluggingIsFollowed() throws Exception {
    AtomicReference<List<PortDescription>> ports =
        new AtomicReference<>(List.of(port("a", "usb:0403:6001:1")));
    BlockingQueue<String> events = new LinkedBlockingQueue<>();
    ScheduledExecutorService executor = Executors.newSingleThreadScheduledExecutor();
    try (PortFollower follower =
        PortFollower.start(
            ports::get,
            Duration.ofMillis(5),
            executor,
            (now, plugged, unplugged) ->
                events.add(names(now) + " +" + names(plugged) + " -" + names(unplugged)))) {
      assertThat(follower).isNotNull();
      assertThat(events.poll(20, TimeUnit.SECONDS)).isEqualTo("[a] +[a] -[]");
      // Another device under the same name.
      ports.set(List.of(port("a", "usb:0403:6001:2"), port("b", "")));
      assertThat(events.poll(20, TimeUnit.SECONDS)).isEqualTo("[a, b] +[a, b] -[a]");
      // Another program takes a port: nothing is plugged, but the list is another.
      PortDescription held =
          new PortDescription("b", "", Optional.empty(), "", Optional.of("minder"), "");
      ports.set(List.of(port("a", "usb:0403:6001:2"), held));
      assertThat(events.poll(20, TimeUnit.SECONDS)).isEqualTo("[a, b] +[] -[]");
      ports.set(List.of());
      assertThat(events.poll(20, TimeUnit.SECONDS)).isEqualTo("[] +[] -[a, b]");
    } finally {
      executor.shutdownNow();
    }
  }

  private static List<String> names(List<PortDescription> ports) {
    return ports.stream().map(PortDescription::name).toList();
  }

  @Test
  void theSystemsPortsCanBeListed() {
    assertThat(PortList.system().ports()).allSatisfy(p -> assertThat(p.name()).isNotBlank());
  }
}
