package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.Tool;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The pictures of the documentation show the program as it is. */
class DocPicturesTest {
  private static final Path FOLDER = Path.of("docs/pictures");

  /** Fonts are drawn a little differently from machine to machine, pixels. */
  private static final int NEAR = 6;

  @BeforeEach
  void tools() throws Exception {
    // One picture is of a build.
    Tool.need("make", "arm-none-eabi-gcc");
    OpenWindow.toolkit();
  }

  @Test
  void whatCanBeReadInThemIsWhatTheWindowShows() throws Exception {
    DocPictures now = new DocPictures(FOLDER);
    now.take();
    Map<String, List<String>> kept = DocPictures.kept(FOLDER);
    List<String> stale = new ArrayList<>();
    for (String name : DocPictures.names()) {
      List<String> then = kept.getOrDefault(name, List.of("# " + name + " never"));
      byte[] image = Files.readAllBytes(FOLDER.resolve(name + ".png"));
      if (!then.get(0).equals("# " + name + " " + DocPictures.digest(image))) {
        stale.add(name + ".png is not the picture that contents.txt was written with");
      }
      List<String> gone = new ArrayList<>(then.subList(1, then.size()));
      List<String> come = new ArrayList<>();
      for (String line : now.read().get(name)) {
        if (!takeNear(gone, line)) {
          come.add(line);
        }
      }
      if (!gone.isEmpty() || !come.isEmpty()) {
        stale.add(name + ".png; only in the picture: " + gone + "; only in the window: " + come);
      }
    }
    assertThat(stale)
        .as("pictures that no longer show the program; take them anew with: bash .ci/pictures")
        .isEmpty();
  }

  /** Takes the line that reads the same and stands nearest. */
  private static boolean takeNear(List<String> lines, String wanted) {
    for (String line : lines) {
      if (near(line, wanted)) {
        return lines.remove(line);
      }
    }
    return false;
  }

  private static boolean near(String one, String other) {
    String[] a = one.split(" ", 3);
    String[] b = other.split(" ", 3);
    if (a.length < 3 || b.length < 3) {
      return one.equals(other);
    }
    return a[2].equals(b[2])
        && Math.abs(Integer.parseInt(a[0]) - Integer.parseInt(b[0])) <= NEAR
        && Math.abs(Integer.parseInt(a[1]) - Integer.parseInt(b[1])) <= NEAR;
  }
}
