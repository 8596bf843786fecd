package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which of several headers of one name an {@code #include} takes (C17 6.10.2). */
class SearchPathTest {
  @TempDir private Path dir;

  private Path write(String path, String text) throws IOException {
    Path file = dir.resolve(path);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  private List<String> listing(Path file, String... folders) throws IOException {
    List<Path> include = List.of(folders).stream().map(dir::resolve).toList();
    MacroListing listing = new LiveMacros(List.of(), include).of(file);
    assertThat(listing.problems()).isEmpty();
    return new String(listing.lines(), StandardCharsets.ISO_8859_1).lines().toList();
  }

  @Test
  void quotesLookBesideTheFileFirstAndAngleBracketsDoNot() throws IOException {
    write("src/egg.h", "#define BESIDE 1\n");
    write("lib/egg.h", "#define LIBRARY 1\n");
    assertThat(listing(write("src/a.h", "#include \"egg.h\"\n"), "lib"))
        .containsExactly("#define BESIDE 1");
    assertThat(listing(write("src/b.h", "#include <egg.h>\n"), "lib"))
        .containsExactly("#define LIBRARY 1");
    assertThat(listing(write("other/c.h", "#include \"egg.h\"\n"), "lib"))
        .containsExactly("#define LIBRARY 1");
  }

  @Test
  void theFirstFolderThatHasItWins() throws IOException {
    write("one/egg.h", "#define ONE 1\n");
    write("two/egg.h", "#define TWO 1\n");
    Path file = write("a.h", "#include <egg.h>\n");
    assertThat(listing(file, "none", "one", "two")).containsExactly("#define ONE 1");
    assertThat(listing(file, "two", "one")).containsExactly("#define TWO 1");
  }

  @Test
  void includeNextLooksBehindTheFolderThatHoldsTheFile() throws IOException {
    write("one/egg.h", "#define ONE 1\n#include_next <egg.h>\n");
    write("two/egg.h", "#define TWO 1\n#include_next \"egg.h\"\n");
    write("three/egg.h", "#define THREE 1\n");
    assertThat(listing(write("a.h", "#include <egg.h>\n"), "one", "two", "three"))
        .containsExactly("#define ONE 1", "#define THREE 1", "#define TWO 1");
  }

  @Test
  void anAbsolutePathIsTakenAsItStands() throws IOException {
    Path egg = write("far/egg.h", "#define FAR_AWAY 1\n");
    assertThat(listing(write("a.h", "#include \"" + egg + "\"\n")))
        .containsExactly("#define FAR_AWAY 1");
  }

  @Test
  void aFolderOfThatNameIsNoHeader() throws IOException {
    Files.createDirectories(dir.resolve("one/egg.h"));
    write("two/egg.h", "#define TWO 1\n");
    assertThat(listing(write("a.h", "#include <egg.h>\n"), "one", "two"))
        .containsExactly("#define TWO 1");
  }

  @Test
  void aMacroMayNameTheHeader() throws IOException {
    write("lib/fulmar/perch.h", "#define PERCH 1\n");
    write("perch.h", "#define OURS 1\n");
    String text =
        """
        #define SHEET <fulmar/perch.h>
        #include SHEET
        #define OWN "perch.h"
        #include OWN
        """;
    assertThat(listing(write("a.h", text), "lib")).contains("#define PERCH 1", "#define OURS 1");
  }

  @Test
  void whatIsMissingIsToldWithItsLineAndTheRestIsListed() throws IOException {
    for (String operand : List.of("<egg.h>", "\"egg.h\"", "<>", "\"\"", "<egg.h", "NOTHING", "7")) {
      Path file = write("a.h", "#define A 1\n#include " + operand + "\n#define B 2\n");
      MacroListing listing = new LiveMacros(List.of(), List.of(dir.resolve("lib"))).of(file);
      assertThat(listing.lines()).as(operand).asString().isEqualTo("#define A 1\n#define B 2\n");
      assertThat(listing.problems()).as(operand).hasSize(1);
      assertThat(listing.problems().get(0).line()).isEqualTo(2);
    }
  }
}
