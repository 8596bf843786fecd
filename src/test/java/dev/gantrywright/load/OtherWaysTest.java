package dev.gantrywright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.load.LoadOutcome.State;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Boards that show themselves as a drive, and commands of the user's own. */
class OtherWaysTest {
  @Test
  void uf2DriveIsKnownByItsDescription() throws IOException {
    FaultyCard card = new FaultyCard();
    assertThat(Uf2Drive.on(card)).isEmpty();
    card.files.put(
        "info_uf2.txt",
        "UF2 Bootloader v1.1.3 SFA\r\nModel: Shearwater\r\nBoard-ID: SAMD51P20A-Shearwater-v0\r\n"
            .getBytes(java.nio.charset.StandardCharsets.US_ASCII));
    assertThat(Uf2Drive.on(card))
        .hasValue(
            new Uf2Drive("UF2 Bootloader v1.1.3 SFA", "Shearwater", "SAMD51P20A-Shearwater-v0"));
  }

  @Test
  void aDriveThatGoesAwayTookTheFile() throws Exception {
    AtomicInteger asked = new AtomicInteger();
    Uf2Copy copy =
        new Uf2Copy(new FaultyCard(), () -> asked.incrementAndGet() < 3, Duration.ofSeconds(5));
    assertThat(copy.copy(new byte[512], "A.UF2").state()).isEqualTo(State.LOADED);
  }

  @Test
  void aDriveThatStaysDidNot() throws Exception {
    Uf2Copy copy = new Uf2Copy(new FaultyCard(), () -> true, Duration.ofMillis(1));
    assertThat(copy.copy(new byte[512], "A.UF2").state()).isEqualTo(State.NOT_LOADED);
  }

  @Test
  void anErrorWhileTheDriveGoesAwayIsItsSign() throws Exception {
    FaultyCard dropping =
        new FaultyCard() {
          @Override
          public void write(String name, byte[] bytes) throws IOException {
            throw new IOException("No such device");
          }
        };
    assertThat(
            new Uf2Copy(dropping, () -> false, Duration.ofSeconds(1))
                .copy(new byte[5], "A.UF2")
                .state())
        .isEqualTo(State.LOADED);
    assertThatThrownBy(
            () ->
                new Uf2Copy(dropping, () -> true, Duration.ofMillis(1)).copy(new byte[5], "A.UF2"))
        .isInstanceOf(LoadProblem.class)
        .hasMessageContaining("No such device");
  }

  @Test
  void commandGetsTheFileAsOneWord() {
    FlashCommand c = FlashCommand.of(List.of("flash", "-w", "{file}"), Path.of("a b.hex"));
    assertThat(c.words()).containsExactly("flash", "-w", "a b.hex");
    assertThat(c.wholeChipErase()).isEmpty();
    assertThat(c.confirmation("Petrel 81")).isEmpty();
    assertThatThrownBy(() -> FlashCommand.of(List.of("flash"), Path.of("a")))
        .hasMessageContaining("{file}");
    assertThatThrownBy(() -> FlashCommand.of(List.of(" "), Path.of("a")))
        .hasMessageContaining("empty");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "--erase",
        "-e",
        "erase",
        "--mass-erase",
        "chip_erase",
        "--erase-all",
        "eraseall",
        "init; erase 0 0 last; reset",
        "monitor mass_erase 0",
        "--unlock"
      })
  void wholeChipEraseAsksForTheSentence(String word) {
    FlashCommand c = FlashCommand.of(List.of("flash", word, "{file}"), Path.of("a.hex"));
    assertThat(c.wholeChipErase()).hasValue(word);
    TypedConfirmation typed = c.confirmation("Petrel 81").orElseThrow();
    assertThat(typed.lost()).contains("bootloader", "stored setting", "calibration");
    assertThat(typed.typed("yes")).isFalse();
    assertThat(typed.typed(null)).isFalse();
    assertThat(typed.typed("  Erase everything on  Petrel 81 ")).isTrue();
    assertThat(c.cautions().get(0).hazard()).contains("bootloader");
  }

  @Test
  void aFileThatIsCalledEraseIsNoErase() {
    assertThat(FlashCommand.of(List.of("flash", "{file}"), Path.of("erase")).wholeChipErase())
        .isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Caution.Act.class)
  void everyActHasItsCautions(Caution.Act act) {
    assertThat(Caution.before(act)).isNotEmpty();
    assertThat(Caution.before(act))
        .allSatisfy(
            c -> {
              assertThat(c.signal()).isIn("DANGER", "WARNING", "CAUTION", "NOTICE");
              assertThat(c.hazard()).endsWith(".");
              assertThat(c.avoid()).endsWith(".");
              assertThat(c.line()).doesNotContain("  ");
            });
  }

  @Test
  void mainsWorkIsLeftToLicensedPersons() {
    assertThat(Caution.before(Caution.Act.CARD).get(0).who()).contains("licensed");
  }

  @Test
  void aDescriptionWithoutEndIsReadToItsLimit() throws Exception {
    FaultyCard card = new FaultyCard();
    String head = "UF2 Bootloader v1.1.3\nModel: Shearwater\n";
    card.files.put(
        "INFO_UF2.TXT",
        (head + "x".repeat(10_000_000) + "\nBoard-ID: too-late\n")
            .getBytes(java.nio.charset.StandardCharsets.UTF_8));
    assertThat(Uf2Drive.on(card)).contains(new Uf2Drive("UF2 Bootloader v1.1.3", "Shearwater", ""));
  }
}
