package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.DemoWorkshop;
import dev.gantrywright.board.Tool;
import dev.gantrywright.machine.ProfileStore;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The verb build on the demo workshop, whose firmware builds to a desk program. */
class BuildVerbTest {
  @TempDir Path folder;
  private Path heron;

  @BeforeEach
  void aWorkshop() throws Exception {
    Tool.need("make", "gcc");
    heron = DemoWorkshop.unpack(folder.resolve("demo"));
    edit("\"target\": \"petrel81\"", "\"target\": \"fulmar_m4\"");
    edit("\"out/*.bin\"", "\"out/rookery\"");
    edit("\"make\",\n", "\"make\",\n      \"desk\",\n");
  }

  private void edit(String from, String to) throws Exception {
    String text = Files.readString(heron);
    assertThat(text).contains(from);
    Files.writeString(heron, text.replace(from, to));
  }

  private CommandRun build(Object... words) {
    List<String> args =
        new ArrayList<>(
            List.of("build", heron.toString(), "--records", folder.resolve("r").toString()));
    for (Object w : words) {
      args.add(w.toString());
    }
    return CommandRun.of(args.toArray(String[]::new));
  }

  @Test
  void writesBuildsAndRefusesTheDeskProgram() throws Exception {
    CommandRun run = build("--format", "json");
    assertThat(run.err()).isEmpty();
    JsonNode d = run.json();
    assertThat(d.path("outcome").asString()).isEqualTo("built");
    assertThat(d.path("errors").asInt()).isZero();
    assertThat(d.path("problem").asString())
        .as("64-bit programs are for computers")
        .contains("32-bit");
    assertThat(run.status()).isEqualTo(1);
    Path patched = Path.of(d.path("folder").asString());
    assertThat(Files.readString(patched.resolve("config/nest.h"))).contains("PERCH_FULMAR_M4");
    assertThat(folder.resolve("demo/rookery-2.3/out")).doesNotExist();
  }

  @Test
  void buildsAndAcceptsTheBoardsImage() throws Exception {
    Tool.need("arm-none-eabi-gcc");
    edit("      \"desk\",\n", "");
    edit("\"out/rookery\"", "\"out/*.bin\"");
    CommandRun run = build("--format", "json");
    assertThat(run.json().path("outcome").asString()).as(run.out()).isEqualTo("built");
    assertThat(run.json().path("warnings").asInt()).isZero();
    assertThat(run.status()).as(run.out()).isEqualTo(ExitStatus.FINE);
    assertThat(Files.readString(heron)).doesNotContain("\"image\"");
    assertThat(build("--keep", "--format", "json").status()).isEqualTo(ExitStatus.FINE);
    long bytes = run.json().path("image").path("bytes").asLong();
    assertThat(bytes).isPositive();
    assertThat(ProfileStore.read(heron).build().image().bytes()).isEqualTo(bytes);
    assertThat(ProfileStore.read(heron).build().image().address()).isEqualTo(0x08008000L);
  }

  @Test
  void anErrorIsTiedToItsProfileField() throws Exception {
    edit("\"target\": \"fulmar_m4\"", "\"target\": \"petrel81\"");
    CommandRun run = build();
    assertThat(run.status()).isEqualTo(1);
    assertThat(run.out())
        .contains(
            "failed in",
            "target petrel81 is for board",
            "PERCH_PETREL_81 1002",
            "is board.constant",
            "is board.target");
  }

  @Test
  void cleaningSaysWhatItDeletesAndLeavesTheRest() throws Exception {
    build();
    CommandRun said = build("--clean");
    assertThat(said.status()).isZero();
    assertThat(said.out()).contains("deletes 1 files", "out/rookery", "nothing deleted");
    JsonNode done = build("--clean", "--delete", "--format", "json").json();
    assertThat(done.path("deleted").asInt()).isEqualTo(1);
    Path patched = Path.of(done.path("folder").asString());
    assertThat(patched.resolve("config/nest.h")).exists();
    assertThat(patched.resolve("out")).doesNotExist();
  }

  @Test
  void badUsageIsOneLine() throws Exception {
    CommandRun own = build("--in", folder.resolve("demo/rookery-2.3"));
    assertThat(own.status()).isEqualTo(2);
    assertThat(own.err()).contains("never written to");
    CommandRun gone = build("--in", folder.resolve("gone"));
    assertThat(gone.status()).isEqualTo(2);
    edit("\"make\",\n      \"desk\",\n      \"TARGET={target}\"", "\"no-such-tool\"");
    CommandRun tool = build();
    assertThat(tool.status()).isEqualTo(3);
    assertThat(tool.err()).contains("cannot start no-such-tool");
    for (CommandRun run : List.of(own, gone, tool)) {
      assertThat(run.err().strip()).doesNotContain("\n");
    }
  }
}
