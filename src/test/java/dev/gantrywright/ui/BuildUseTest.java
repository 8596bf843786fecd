package dev.gantrywright.ui;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.image.CortexProgram;
import dev.gantrywright.ui.state.PrinterDesk;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Build in the patched folder from the window, with a build tool that needs no compiler. */
class BuildUseTest {
  private static final String TOOL =
      """
      import java.nio.file.*;
      public class Tool {
        public static void main(String[] args) throws Exception {
          System.out.println("src/main.c:3:5: warning: unused variable 'rail' [-Wunused-variable]");
          Files.createDirectories(Path.of("out"));
          Files.copy(Path.of(args[0]), Path.of("out/board.bin"),
              StandardCopyOption.REPLACE_EXISTING);
        }
      }
      """;

  @TempDir Path data;
  private OpenWindow open;
  private PrinterDesk desk;
  private Path patched;

  @BeforeEach
  void open() throws Exception {
    Path image = Files.write(data.resolve("made.bin"), CortexProgram.f405(0x8000).raw());
    Path tool = Files.writeString(data.resolve("Tool.java"), TOOL);
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    patched = data.resolve("patched");
    open = new OpenWindow(data);
    desk = open.heron();
    open.run(
        () -> {
          desk.values().edit("board.mcu", "STM32F405RG");
          desk.values().edit("build.command", List.of(java, tool.toString(), image.toString()));
          // The variable that slows or colours the tool's output is none of ours.
          desk.values().edit("build.environment", Map.of("JDK_JAVA_OPTIONS", ""));
        });
    open.settle();
    open.click("#stage-write");
    open.type("#export-target", patched.toString());
    open.click("#export");
    open.until(() -> open.window().scene().lookup("#export-open") != null);
    open.click("#stage-build");
  }

  @AfterEach
  void close() throws Exception {
    if (open != null) {
      open.close();
    }
  }

  private boolean says(String part) {
    return open.window().scene().getRoot().lookupAll(".label").stream()
        .map(node -> ((Labeled) node).getText())
        .anyMatch(text -> text != null && text.contains(part));
  }

  @Test
  void whatTheImageTakesReachesTheProfileAndTheNextStage() throws Exception {
    open.click("#build-start");
    open.until(() -> says("Built in"));
    assertThat(says("unused variable 'rail'")).isTrue();
    assertThat(desk.profile().build().image().bytes()).isEqualTo(4096);
    assertThat(desk.profile().build().image().address()).isEqualTo(0x08008000L);
    open.until(() -> says("Builds so far"));
    open.click("#stage-load");
    open.until(() -> says("nothing speaks against it"));
  }

  @Test
  void theCleanStepNamesWhatItDeletesAndDeletesOnlyThat() throws Exception {
    open.click("#build-start");
    open.until(() -> says("Built in"));
    open.click("#build-clean");
    open.until(() -> says("out/board.bin"));
    assertThat(patched.resolve("out/board.bin")).exists();
    open.click("#clean-delete");
    open.until(() -> Files.notExists(patched.resolve("out")));
    assertThat(patched.resolve("config/nest.h")).exists();
  }
}
