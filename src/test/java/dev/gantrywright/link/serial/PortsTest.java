package dev.gantrywright.link.serial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
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
  void aPortIsRememberedByWhatIsPluggedIn() throws LinkException {
    List<PortDescription> now = new ArrayList<>(List.of(port("/dev/ttyACM0", "usb:0483:5740:7F")));
    PortList list = () -> now;
    String kept = PortChoice.remember(list, "/dev/ttyACM0").orElseThrow();
    assertThat(kept).isEqualTo("usb:0483:5740:7F");
    now.clear();
    now.add(port("/dev/ttyACM0", "usb:0483:5740:11"));
    now.add(port("/dev/ttyACM1", "usb:0483:5740:7F"));
    assertThat(PortChoice.recall(list, kept)).contains(new PortAddress.Serial("/dev/ttyACM1"));
    assertThat(PortChoice.recall(list, "0483:5740:7F"))
        .contains(new PortAddress.Serial("/dev/ttyACM1"));
    assertThat(list.require(UsbIdentity.parse(kept).orElseThrow())).isEqualTo("/dev/ttyACM1");
    now.clear();
    assertThat(PortChoice.recall(list, kept)).isEmpty();
    assertThat(PortChoice.recall(list, null)).isEmpty();
    assertThatThrownBy(() -> list.require(UsbIdentity.parse(kept).orElseThrow()))
        .hasMessageContaining("is not plugged in");
  }

  @Test
  void pluggingIsFollowed() throws Exception {
    AtomicReference<List<PortDescription>> now =
        new AtomicReference<>(List.of(port("a", "usb:0403:6001:1")));
    BlockingQueue<String> events = new LinkedBlockingQueue<>();
    ScheduledExecutorService executor = Executors.newSingleThreadScheduledExecutor();
    try (PortFollower follower =
        PortFollower.start(
            now::get,
            Duration.ofMillis(5),
            executor,
            new PortFollower.Listener() {
              @Override
              public void plugged(PortDescription port) {
                events.add("+" + port.name());
              }

              @Override
              public void unplugged(PortDescription port) {
                events.add("-" + port.name());
              }
            })) {
      assertThat(follower).isNotNull();
      assertThat(events.poll(5, TimeUnit.SECONDS)).isEqualTo("+a");
      // Another device under the same name.
      now.set(List.of(port("a", "usb:0403:6001:2"), port("b", "")));
      assertThat(events.poll(5, TimeUnit.SECONDS)).isEqualTo("-a");
      assertThat(events.poll(5, TimeUnit.SECONDS)).isEqualTo("+a");
      assertThat(events.poll(5, TimeUnit.SECONDS)).isEqualTo("+b");
      now.set(List.of());
      assertThat(events.poll(5, TimeUnit.SECONDS)).isEqualTo("-a");
      assertThat(events.poll(5, TimeUnit.SECONDS)).isEqualTo("-b");
    } finally {
      executor.shutdownNow();
    }
  }

  @Test
  void theSystemsPortsCanBeListed() {
    assertThat(PortList.system().ports()).allSatisfy(p -> assertThat(p.name()).isNotBlank());
  }
}
