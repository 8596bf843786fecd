package dev.gantrywright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The copy in every order of events; the name never stands for anything but a whole image. */
class VerifiedCopyTest {
  private static final Clock NOON =
      Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private final List<CopyStep> steps = new ArrayList<>();
  private final byte[] image = bytes(1, 70_000);

  private static byte[] bytes(int seed, int size) {
    byte[] out = new byte[size];
    new Random(seed).nextBytes(out);
    return out;
  }

  private VerifiedCopy copy(Card card) {
    return new VerifiedCopy(card, new KeptImages(folder.resolve("kept"), NOON), NOON, steps::add);
  }

  private LoadProblem problem(Card card, String name) {
    LoadProblem p = catchThrowableOfType(LoadProblem.class, () -> copy(card).copy(image, name));
    assertThat(p).isNotNull();
    assertThat(p.getMessage()).doesNotContain("\n");
    return p;
  }

  @Test
  void oneThatIsCalledOffBeforeItsNameLeavesTheCardAsItWas() throws Exception {
    FaultyCard card = new FaultyCard();
    byte[] before = bytes(2, 1_000);
    card.files.put("FULMAR.IMG", before);
    VerifiedCopy copy =
        new VerifiedCopy(
            card, new KeptImages(folder.resolve("kept"), NOON), NOON, steps::add, () -> true);
    LoadProblem cut = catchThrowableOfType(LoadProblem.class, () -> copy.copy(image, "FULMAR.IMG"));
    assertThat(cut.getMessage()).startsWith("load cancelled; ").endsWith(" is as it was");
    assertThat(card.files).containsOnlyKeys("FULMAR.IMG").containsValue(before);
  }

  @Test
  void writesReadsBackNamesAndReadsAgain() throws Exception {
    FaultyCard card = new FaultyCard();
    CopyReport r = copy(card).copy(image, "FULMAR.IMG");
    assertThat(card.calls)
        .containsExactly(
            "write GWCOPY.TMP",
            "forget GWCOPY.TMP",
            "read GWCOPY.TMP",
            "rename GWCOPY.TMP FULMAR.IMG",
            "forget FULMAR.IMG",
            "read FULMAR.IMG");
    assertThat(card.files).containsOnlyKeys("FULMAR.IMG");
    assertThat(r.sha256()).isEqualTo(Hashes.of(image));
    assertThat(r.fromCard()).isTrue();
    assertThat(r.when()).isEqualTo(NOON.instant());
    assertThat(steps).startsWith(CopyStep.LOOK, CopyStep.WRITE).endsWith(CopyStep.DONE);
  }

  @Test
  void realFoldersWorkTheSame() throws Exception {
    Path dir = Files.createDirectory(folder.resolve("card"));
    CopyReport first = copy(new FolderCard(dir)).copy(image, "FULMAR.IMG");
    assertThat(dir.resolve("FULMAR.IMG")).hasBinaryContent(image);
    assertThat(first.alreadyThere()).isFalse();
    byte[] other = bytes(2, 5);
    CopyReport second = copy(new FolderCard(dir)).copy(other, "FULMAR.IMG");
    assertThat(dir.resolve("FULMAR.IMG")).hasBinaryContent(other);
    assertThat(second.previousKept().orElseThrow()).hasBinaryContent(image);
    assertThat(copy(new FolderCard(dir)).copy(other, "FULMAR.IMG").alreadyThere()).isTrue();
    assertThat(dir).isDirectoryNotContaining(p -> p.endsWith(VerifiedCopy.WORKING_NAME));
  }

  @Test
  void aCardThatChangesBitsIsFoundAndLeftWithoutTheFile() {
    FaultyCard card =
        new FaultyCard() {
          @Override
          byte[] onRead(String name, byte[] stored) {
            byte[] out = stored.clone();
            out[out.length / 2] ^= 1;
            return out;
          }
        };
    LoadProblem p = problem(card, "FULMAR.IMG");
    assertThat(p.kind()).isEqualTo(LoadProblem.Kind.DIFFERENT);
    assertThat(p.getMessage()).contains("gave back other bytes");
    assertThat(card.files).isEmpty();
  }

  @Test
  void aFaultAfterTheRenameTakesTheNameAwayAgain() {
    FaultyCard card =
        new FaultyCard() {
          @Override
          byte[] onRead(String name, byte[] stored) {
            return name.equals("FULMAR.IMG") ? new byte[1] : stored;
          }
        };
    assertThat(problem(card, "FULMAR.IMG").kind()).isEqualTo(LoadProblem.Kind.DIFFERENT);
    assertThat(card.files).isEmpty();
  }

  @Test
  void aFullCardKeepsWhatItHad() {
    FaultyCard card = new FaultyCard();
    card.free = image.length;
    card.files.put("FULMAR.IMG", new byte[] {1});
    LoadProblem p = problem(card, "FULMAR.IMG");
    assertThat(p.kind()).isEqualTo(LoadProblem.Kind.SPACE);
    assertThat(p.getMessage()).contains("70,000 bytes free", "135,536");
    assertThat(card.files.get("FULMAR.IMG")).containsExactly(1);
  }

  @Test
  void aWriteThatFailsKeepsTheOldFile() {
    FaultyCard card =
        new FaultyCard() {
          @Override
          public void write(String name, byte[] bytes) throws IOException {
            super.write(name, java.util.Arrays.copyOf(bytes, 100));
            throw new IOException("No space left on device");
          }
        };
    card.files.put("FULMAR.IMG", new byte[] {1});
    LoadProblem p = problem(card, "FULMAR.IMG");
    assertThat(p.kind()).isEqualTo(LoadProblem.Kind.WRITE);
    assertThat(p.getMessage()).contains("No space left on device");
    assertThat(card.files.get("FULMAR.IMG")).containsExactly(1);
  }

  @Test
  void leftoversOfABrokenOffCopyAreRemoved() throws Exception {
    FaultyCard card = new FaultyCard();
    card.files.put(VerifiedCopy.WORKING_NAME, new byte[10]);
    copy(card).copy(image, "FULMAR.IMG");
    assertThat(card.files).containsOnlyKeys("FULMAR.IMG");
  }

  @Test
  void namesThatAreNoNamesAreRefused() {
    for (String name : List.of("", "..", "a/b", "a\\b", VerifiedCopy.WORKING_NAME)) {
      assertThat(problem(new FaultyCard(), name).kind()).isEqualTo(LoadProblem.Kind.NAME);
    }
  }

  @Test
  void keptImagesAreKeptOnceAndTenAtMost() throws Exception {
    KeptImages kept = new KeptImages(folder.resolve("k"), NOON);
    Path one = kept.keep("A.IMG", image);
    assertThat(kept.keep("A.IMG", image)).isEqualTo(one);
    for (int i = 10; i < 25; i++) {
      KeptImages later =
          new KeptImages(folder.resolve("k"), Clock.offset(NOON, java.time.Duration.ofMinutes(i)));
      later.keep("../A IMG", bytes(i, 10));
    }
    assertThat(kept.all()).hasSize(10);
    assertThat(kept.latest().orElseThrow()).hasBinaryContent(bytes(24, 10));
  }
}
