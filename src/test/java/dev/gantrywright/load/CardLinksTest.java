package dev.gantrywright.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Clock;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A card that was prepared by somebody: nothing is written through it, nothing read past it. */
class CardLinksTest {
  @TempDir Path folder;
  private Path dir;
  private Path outside;
  private final byte[] image = {1, 2, 3};

  @BeforeEach
  void card() throws Exception {
    dir = Files.createDirectory(folder.resolve("card"));
    outside = Files.writeString(folder.resolve("outside"), "untouched");
  }

  private CopyReport copy() throws LoadProblem {
    KeptImages kept = new KeptImages(folder.resolve("kept"), Clock.systemUTC());
    return new VerifiedCopy(new FolderCard(dir), kept, Clock.systemUTC(), step -> {})
        .copy(image, "FULMAR.IMG");
  }

  @Test
  void aLinkUnderTheImagesNameIsReplacedAndNotFollowed() throws Exception {
    Files.createSymbolicLink(dir.resolve("FULMAR.IMG"), outside);
    CopyReport report = copy();
    assertThat(report.previousKept()).isEmpty();
    assertThat(outside).hasContent("untouched");
    assertThat(Files.isRegularFile(dir.resolve("FULMAR.IMG"), LinkOption.NOFOLLOW_LINKS)).isTrue();
    assertThat(dir.resolve("FULMAR.IMG")).hasBinaryContent(image);
  }

  @Test
  void aLinkUnderTheWorkingNameIsNotWrittenThrough() throws Exception {
    for (Path goal : new Path[] {outside, folder.resolve("nothing-yet")}) {
      Files.createSymbolicLink(dir.resolve(VerifiedCopy.WORKING_NAME), goal);
      copy();
      assertThat(outside).hasContent("untouched");
      assertThat(folder.resolve("nothing-yet")).doesNotExist();
      Files.delete(dir.resolve("FULMAR.IMG"));
    }
  }

  @Test
  void aFolderUnderTheImagesNameIsOneLine() throws Exception {
    Files.createDirectories(dir.resolve("FULMAR.IMG/inside"));
    assertThatThrownBy(this::copy)
        .isInstanceOf(LoadProblem.class)
        .hasMessageStartingWith("writing to " + dir)
        .message()
        .doesNotContain("\n");
    assertThat(dir.resolve("FULMAR.IMG/inside")).isDirectory();
  }

  @Test
  void aDescriptionThatIsALinkIsNotRead() throws Exception {
    Files.createSymbolicLink(dir.resolve("INFO_UF2.TXT"), outside);
    assertThat(Uf2Drive.on(new FolderCard(dir))).isEmpty();
  }

  @Test
  void aNameThatLeavesTheCardIsNone() {
    KeptImages kept = new KeptImages(folder.resolve("kept"), Clock.systemUTC());
    VerifiedCopy copy = new VerifiedCopy(new FolderCard(dir), kept, Clock.systemUTC(), step -> {});
    for (String name : new String[] {"../x", "..", "a/b", "a\\b", " ", "/x"}) {
      assertThatThrownBy(() -> copy.copy(image, name)).hasMessageContaining("is no file name");
    }
    assertThat(dir).isEmptyDirectory();
  }
}
