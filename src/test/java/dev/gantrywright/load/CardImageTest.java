package dev.gantrywright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import dev.gantrywright.board.Tool;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Loading onto real FAT file systems, and what a loader leaves there. */
class CardImageTest {
  @TempDir Path folder;
  private final byte[] image = new byte[200_000];

  @BeforeEach
  void needsMtools() {
    Tool.need("mkfs.vfat", "mcopy", "mdir", "mren", "mdel");
    new Random(5).nextBytes(image);
  }

  private VerifiedCopy copy(Card card) {
    return new VerifiedCopy(
        card,
        new KeptImages(folder.resolve("kept"), Clock.systemUTC()),
        Clock.systemUTC(),
        s -> {});
  }

  @ParameterizedTest
  @CsvSource({"2048, 12", "16384, 16", "40960, 32"})
  void theWholeWayOnEveryFat(int kibibytes, int bits) throws Exception {
    MtoolsCard card = MtoolsCard.formatted(folder, kibibytes, bits);
    CopyReport report = copy(card).copy(image, "FULMAR.IMG");
    assertThat(card.list()).singleElement().extracting(Card.Entry::name).isEqualTo("FULMAR.IMG");
    assertThat(ReturnedCard.hashOf(card, "fulmar.img")).hasValue(report.sha256());
    PendingLoad pending =
        new PendingLoad(
            "FULMAR.IMG",
            report.sha256(),
            report.when(),
            LoaderSign.RENAMED,
            Optional.of("FULMAR.OLD"),
            Optional.empty());
    assertThat(ReturnedCard.look(card, pending).state()).isEqualTo(LoadOutcome.State.NOT_LOADED);
    card.rename("FULMAR.IMG", "FULMAR.OLD");
    assertThat(ReturnedCard.look(card, pending).state()).isEqualTo(LoadOutcome.State.LOADED);
  }

  @Test
  void aCardThatIsTooSmallSaysSoAndStaysAsItWas() throws Exception {
    MtoolsCard card = MtoolsCard.formatted(folder, 180, 12);
    card.write("KEEP.TXT", new byte[] {1, 2, 3});
    LoadProblem p =
        catchThrowableOfType(LoadProblem.class, () -> copy(card).copy(image, "FULMAR.IMG"));
    assertThat(p.kind()).isEqualTo(LoadProblem.Kind.SPACE);
    assertThat(card.list()).singleElement().extracting(Card.Entry::name).isEqualTo("KEEP.TXT");
  }

  @Test
  void aSecondImageReplacesTheFirstWhichIsKept() throws Exception {
    MtoolsCard card = MtoolsCard.formatted(folder, 2048, 12);
    copy(card).copy(image, "FULMAR.IMG");
    byte[] next = image.clone();
    next[7] ^= 1;
    CopyReport report = copy(card).copy(next, "FULMAR.IMG");
    assertThat(report.previousKept().orElseThrow()).hasBinaryContent(image);
    assertThat(ReturnedCard.hashOf(card, "FULMAR.IMG")).hasValue(Hashes.of(next));
  }
}
