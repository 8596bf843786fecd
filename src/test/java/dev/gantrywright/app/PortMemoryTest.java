package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.PortAddress;
import dev.gantrywright.link.UsbIdentity;
import dev.gantrywright.link.serial.PortDescription;
import dev.gantrywright.link.serial.PortList;
import dev.gantrywright.machine.LinkSettings;
import dev.gantrywright.machine.PrinterProfile;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PortMemoryTest {
  private static final UsbIdentity HERON = new UsbIdentity(0x0483, 0x5740, "HERON7");

  private static PortList ports(String name) {
    return () ->
        List.of(
            port("/dev/ttyS0", Optional.empty()),
            port("/dev/other", Optional.of(new UsbIdentity(0x0403, 0x6001, "A9"))),
            port(name, Optional.of(HERON)));
  }

  private static PortDescription port(String name, Optional<UsbIdentity> usb) {
    return new PortDescription(name, "", usb, "", Optional.empty(), "");
  }

  private static LinkSettings keeping(String usb) {
    PrinterProfile profile = PracticeFleet.profile("Heron", "{\"usb\": \"" + usb + "\"}");
    return profile.link();
  }

  @Test
  void thePortIsFoundAgainUnderAnotherName() throws Exception {
    Optional<String> kept =
        PortMemory.toKeep(new PortAddress.Serial("/dev/ttyACM0"), ports("/dev/ttyACM0"));
    assertThat(kept).contains("0483:5740:HERON7");
    PortAddress again = PortMemory.address("usb:", keeping(kept.orElseThrow()));
    assertThat(again).isEqualTo(new PortAddress.Usb(HERON));
    assertThat(ports("/dev/ttyACM3").require(((PortAddress.Usb) again).identity()))
        .isEqualTo("/dev/ttyACM3");
  }

  @Test
  void aPortThatIsNamedByItsKindIsKeptWithItsSerialNumber() throws Exception {
    assertThat(PortMemory.toKeep(PortAddress.parse("usb:0483:5740"), ports("/dev/ttyACM0")))
        .contains("0483:5740:HERON7");
  }

  @Test
  void whatIsNoUsbPortIsNotKept() throws Exception {
    for (String address : List.of("practice:", "tcp://127.0.0.1:1", "/dev/ttyS0", "/dev/gone")) {
      assertThat(PortMemory.toKeep(PortAddress.parse(address), ports("/dev/ttyACM0"))).isEmpty();
    }
  }

  @Test
  void otherAddressesPassAndAMissingOneIsSaid() throws Exception {
    assertThat(PortMemory.address("practice:", keeping("")))
        .isEqualTo(PortAddress.parse("practice:"));
    assertThatThrownBy(() -> PortMemory.address("usb:", keeping("what")))
        .isInstanceOf(LinkException.class)
        .hasMessageContaining("link.usb");
  }
}
