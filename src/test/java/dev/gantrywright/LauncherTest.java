package dev.gantrywright;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.Tool;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher hands the command line on as it is, with a virtual machine that prints it. */
class LauncherTest {
  private record Run(int status, String out, String err) {}

  @TempDir private Path dir;
  private Path jar;

  @BeforeEach
  void aCopyWithAnotherVirtualMachine() throws IOException {
    Tool.need("sh");
    Files.createDirectories(dir.resolve("target"));
    Files.copy(Path.of("src/main/launcher/gantrywright"), dir.resolve("target/gantrywright"));
    Files.createDirectories(dir.resolve("jdk/bin"));
    Path java = dir.resolve("jdk/bin/java");
    Files.writeString(
        java,
        """
        #!/bin/sh
        for word in "$@"; do
          echo "<$word>"
          case $word in -XX:ArchiveClassesAtExit=*) echo archive > "${word#*=}" ;; esac
        done
        exit 3
        """);
    assertThat(java.toFile().setExecutable(true)).isTrue();
    jar = Files.createFile(dir.resolve("target/gantrywright.jar"));
  }

  private Run run(String... args) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(List.of("sh", dir + "/target/gantrywright"));
    command.addAll(List.of(args));
    Path out = dir.resolve("out");
    Path err = dir.resolve("err");
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.environment().put("JAVA_HOME", dir.resolve("jdk").toString());
    builder.environment().remove("JAVA_OPTS");
    builder.redirectOutput(out.toFile()).redirectError(err.toFile());
    int status = builder.start().waitFor();
    return new Run(
        status,
        Files.readString(out, StandardCharsets.UTF_8),
        Files.readString(err, StandardCharsets.UTF_8));
  }

  @Test
  void aVerbKeepsItsWordsAndItsExitStatus() throws Exception {
    Run run = run("macros", "a file.h", "--define", "A=\"b c\"");
    assertThat(run.status()).isEqualTo(3);
    assertThat(run.out()).endsWith("<macros>\n<a file.h>\n<--define>\n<A=\"b c\">\n");
    assertThat(run.out()).contains("<-XX:TieredStopAtLevel=1>", "<-XX:+UseSerialGC>");
    assertThat(run.err()).isEmpty();
  }

  @Test
  void theFirstRunLeavesAnArchiveThatTheNextOneUses() throws Exception {
    assertThat(run("macros", "x.h").out()).contains("ArchiveClassesAtExit");
    Path archive = dir.resolve("target/macros.jsa");
    assertThat(archive).exists();
    Files.setLastModifiedTime(archive, later(jar));
    assertThat(run("macros", "x.h").out())
        .contains("<-XX:SharedArchiveFile=")
        .doesNotContain("ArchiveClassesAtExit");
    Files.setLastModifiedTime(jar, later(archive));
    assertThat(run("macros", "x.h").out()).contains("ArchiveClassesAtExit");
  }

  private static FileTime later(Path file) throws IOException {
    return FileTime.fromMillis(Files.getLastModifiedTime(file).toMillis() + 10_000);
  }

  @Test
  void withoutAVerbTheVirtualMachineIsThatOfTheWindow() throws Exception {
    assertThat(run().out())
        .startsWith("<-XX:+UseSerialGC>\n<-Xmn256m>\n<-XX:MetaspaceSize=128m>\n<-jar>\n")
        .doesNotContain("TieredStopAtLevel");
    assertThat(run("--help").out()).contains("<-jar>\n").endsWith("<--help>\n");
  }

  @Test
  void withoutAJarItSaysWhatToDo() throws Exception {
    Files.delete(jar);
    Run run = run("check", "x.printer.json");
    assertThat(run.status()).isEqualTo(2);
    assertThat(run.err().lines()).hasSize(1).first().asString().contains("build it with: mvn");
  }
}
