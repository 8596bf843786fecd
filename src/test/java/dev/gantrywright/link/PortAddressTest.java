package dev.gantrywright.link;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PortAddressTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "/dev/ttyUSB0",
        "COM7",
        "practice:",
        "tcp://bench2:2001",
        "tcp://[::1]:2001",
        "rfc2217://bench2.local:2217",
        "usb:0483:5740:00FF12",
        "usb:10c4:ea60"
      })
  void readsWhatItWrites(String text) throws LinkException {
    assertThat(PortAddress.parse(text)).hasToString(text);
  }

  @Test
  void tellsTheKindsApart() throws LinkException {
    assertThat(PortAddress.parse("COM7")).isEqualTo(new PortAddress.Serial("COM7"));
    assertThat(PortAddress.parse("TCP://h:1")).isEqualTo(new PortAddress.Tcp("h", 1));
    assertThat(PortAddress.parse("rfc2217://[::1]:9")).isEqualTo(new PortAddress.Rfc2217("::1", 9));
    assertThat(PortAddress.parse("Practice:")).isEqualTo(new PortAddress.Practice(""));
    assertThat(PortAddress.parse("usb:0403:6001"))
        .isEqualTo(new PortAddress.Usb(new UsbIdentity(0x403, 0x6001, "")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "  ",
        "tcp://host",
        "tcp://host:0",
        "tcp://host:70000",
        "rfc2217://:5",
        "http://host:80",
        "tcp://ho st:1",
        "usb:12:34"
      })
  void refusesOthersInOneLine(String text) {
    assertThatThrownBy(() -> PortAddress.parse(text))
        .isInstanceOf(LinkException.class)
        .hasMessageContaining("use a port name, practice:")
        .hasMessageNotContaining("\n");
  }

  @Test
  void aDeviceWithoutSerialNumberMatchesAnyOfItsKind() {
    UsbIdentity kind = UsbIdentity.parse("0403:6001").orElseThrow();
    UsbIdentity one = UsbIdentity.parse("usb:0403:6001:A9").orElseThrow();
    assertThat(kind.sameDevice(one)).isTrue();
    assertThat(one.sameDevice(kind)).isFalse();
  }
}
