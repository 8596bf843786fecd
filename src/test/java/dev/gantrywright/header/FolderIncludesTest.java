package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Which header of a firmware folder an {@code #include} means, its search path unknown. */
class FolderIncludesTest {
  private final Map<String, SourceFile> files = new LinkedHashMap<>();

  private FolderIncludes includes(String... paths) {
    for (String path : paths) {
      files.put(path, SourceFile.of(path, "\n".getBytes(StandardCharsets.UTF_8)));
    }
    return new FolderIncludes(files);
  }

  private String found(
      FolderIncludes includes, String header, boolean angled, String from, boolean next) {
    SourceFile found = includes.find(header, angled, files.get(from), next);
    return found == null ? null : found.path();
  }

  private String quoted(FolderIncludes includes, String header, String from) {
    return found(includes, header, false, from, false);
  }

  @Test
  void quotesLookBesideTheFileFirst() {
    FolderIncludes includes = includes("egg.h", "config/egg.h", "config/nest.h");
    assertThat(quoted(includes, "egg.h", "config/nest.h")).isEqualTo("config/egg.h");
    assertThat(found(includes, "egg.h", true, "config/nest.h", false)).isEqualTo("egg.h");
    assertThat(quoted(includes, "../egg.h", "config/nest.h")).isEqualTo("egg.h");
    assertThat(quoted(includes, "./egg.h", "config/nest.h")).isEqualTo("config/egg.h");
    assertThat(quoted(includes, "..\\egg.h", "config/nest.h")).isEqualTo("egg.h");
    assertThat(quoted(includes, ".//egg.h", "config/nest.h")).isEqualTo("config/egg.h");
  }

  @Test
  void thePathFromTheFoldersRootIsTheNextBest() {
    FolderIncludes includes = includes("src/main.h", "config/egg.h", "src/config/egg.h");
    assertThat(quoted(includes, "config/egg.h", "src/main.h")).isEqualTo("src/config/egg.h");
    assertThat(found(includes, "config/egg.h", true, "src/main.h", false))
        .isEqualTo("config/egg.h");
    assertThat(found(includes, "config/egg.h", true, "src/main.h", true))
        .as("the next one is not the root's")
        .isEqualTo("src/config/egg.h");
  }

  @Test
  void aNameThatOnlyOneFileEndsInIsThatFile() {
    FolderIncludes includes = includes("src/a.h", "lib/x/egg.h", "lib/y/egg.h", "lib/z/yolk.h");
    assertThat(quoted(includes, "yolk.h", "src/a.h")).isEqualTo("lib/z/yolk.h");
    assertThat(quoted(includes, "x/egg.h", "src/a.h")).isEqualTo("lib/x/egg.h");
    assertThat(quoted(includes, "egg.h", "src/a.h")).as("two of that name").isNull();
    assertThat(found(includes, "egg.h", true, "lib/x/egg.h", true)).isEqualTo("lib/y/egg.h");
    assertThat(quoted(includes, "olk.h", "src/a.h")).isNull();
  }

  @Test
  void whatLeavesTheFolderIsNotThere() {
    FolderIncludes includes = includes("egg.h", "src/a.h");
    assertThat(quoted(includes, "../../egg.h", "src/a.h")).isNull();
    assertThat(quoted(includes, "../../../etc/passwd", "src/a.h")).isNull();
    assertThat(found(includes, "../egg.h", true, "src/a.h", false)).isNull();
    assertThat(found(includes, "/egg.h", true, "src/a.h", false)).isEqualTo("egg.h");
  }
}
