package dev.gantrywright.link.serial;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.board.Tool;
import dev.gantrywright.link.LinkException;
import dev.gantrywright.link.LinkException.Kind;
import dev.gantrywright.link.PracticeMachines;
import dev.gantrywright.link.SerialSettings;
import dev.gantrywright.link.practice.PracticePty;
import dev.gantrywright.link.practice.Wire;
import dev.gantrywright.link.pty.Pty;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PortAccessTest {
  @TempDir Path folder;

  @BeforeEach
  void ptys() {
    Tool.needThat(Pty.available(), "pseudo-terminals");
  }

  private static PracticePty pty() throws IOException {
    return PracticePty.open(PracticeMachines.board(), Wire.ideal(), System::nanoTime, Thread::new);
  }

  @Test
  void aPortThatIsHeldIsBusy() throws Exception {
    try (PracticePty pty = pty();
        SerialTransport first = SerialTransport.open(pty.path(), SerialSettings.at(115_200))) {
      assertThat(first.name()).isEqualTo(pty.path());
      assertThatThrownBy(() -> SerialTransport.open(pty.path(), SerialSettings.at(115_200)))
          .isInstanceOfSatisfying(
              LinkException.class, e -> assertThat(e.kind()).isEqualTo(Kind.BUSY))
          .hasMessageContaining(pty.path())
          .hasMessageContaining("close the other program");
    }
  }

  @Test
  void theHolderIsNamed() throws Exception {
    try (PracticePty pty = pty()) {
      Path sh = Tool.path("sh");
      Process other =
          new ProcessBuilder(sh.toString(), "-c", "exec sleep 30 < " + pty.path()).start();
      try {
        String holder = "";
        for (int i = 0; i < 200 && !holder.startsWith("sleep"); i++) {
          Thread.sleep(10);
          holder = PortHolder.of(pty.path()).orElse("");
        }
        assertThat(holder).isEqualTo("sleep (process " + other.pid() + ")");
      } finally {
        other.destroy();
        other.waitFor();
      }
    }
  }

  @Test
  void aMissingPortAndAPortThatIsNone() throws Exception {
    assertThatThrownBy(
            () -> SerialTransport.open(folder.resolve("none").toString(), SerialSettings.at(9_600)))
        .isInstanceOfSatisfying(
            LinkException.class, e -> assertThat(e.kind()).isEqualTo(Kind.NOT_FOUND));
    Path file = Files.writeString(folder.resolve("file"), "x");
    assertThatThrownBy(() -> SerialTransport.open(file.toString(), SerialSettings.at(9_600)))
        .isInstanceOf(LinkException.class)
        .hasMessageNotContaining("\n");
  }

  @Test
  void aRefusalNamesTheGroup() {
    assertThat(PortAccess.refused("/dev/null", 13))
        .hasMessageContaining("not allowed to open /dev/null")
        .hasMessageContaining("usermod -aG");
    assertThat(PortAccess.refused("/dev/null", 13).kind()).isEqualTo(Kind.NOT_ALLOWED);
    assertThat(PortAccess.refused("/dev/no-such-port", 2).kind()).isEqualTo(Kind.NOT_FOUND);
    assertThat(PortAccess.refused("/dev/null", 2).kind()).isEqualTo(Kind.BUSY);
  }
}
