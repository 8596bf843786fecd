package dev.gantrywright.app;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.machine.Heater;
import dev.gantrywright.machine.PrinterProfile;
import dev.gantrywright.machine.ProfileStore;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** Ranges of sensors as in the catalogue, where each row names its source. */
class HeatCeilingTest {
  private static Heater heater(String facts) throws Exception {
    PrinterProfile printer =
        ProfileStore.parse(
            "x",
            ("{\"format\": 1, \"heaters\": {\"bed\": {" + facts + "}}}")
                .getBytes(StandardCharsets.UTF_8));
    return printer.heaters().get("bed");
  }

  @Test
  void theLowestOfMaximumRatingAndSensorHolds() throws Exception {
    assertThat(HeatCeiling.of(heater("\"maximum\": 120, \"rated\": 110, \"sensor\": \"pt100\"")))
        .isEqualTo(new HeatCeiling(110, "its maker rates it for no more"));
    assertThat(HeatCeiling.of(heater("\"maximum\": 275, \"sensor\": \"ntc-100k-3950\"")).celsius())
        .isEqualTo(275);
  }

  /** EPCOS B57540G, February 2009: climatic category 55/250/56. */
  @Test
  void withoutAMaximumTheSensorsOwnRangeHolds() throws Exception {
    HeatCeiling glass = HeatCeiling.of(heater("\"sensor\": \"b57540g-100k\""));
    assertThat(glass.celsius()).isEqualTo(250);
    assertThat(glass.why()).contains("b57540g-100k", "is made for no more");
    assertThat(HeatCeiling.of(heater("\"maximum\": 400, \"sensor\": \"b57540g-100k\"")).celsius())
        .isEqualTo(250);
  }

  /** Vishay NTCLE100E3, 125 °C (memory): the lowest upper end in the catalogue. */
  @Test
  void withNothingKnownItIsWhatEverySensorReads() throws Exception {
    assertThat(HeatCeiling.of(null).celsius()).isEqualTo(125);
    assertThat(HeatCeiling.of(heater("\"sensor\": \"my-own\"")).celsius()).isEqualTo(125);
    assertThat(HeatCeiling.of(null).why()).contains("enter them there");
  }
}
