package dev.gantrywright.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.gantrywright.board.Tool;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Real commands in real folders. */
class BuildRunTest {
  @TempDir Path folder;

  /** Keeps what it hears. */
  private static final class Heard implements BuildListener {
    final List<String> lines = Collections.synchronizedList(new ArrayList<>());
    final List<Double> progress = Collections.synchronizedList(new ArrayList<>());
    final List<String> retries = Collections.synchronizedList(new ArrayList<>());
    final CountDownLatch firstLine = new CountDownLatch(1);

    @Override
    public void line(String text) {
      lines.add(text);
      firstLine.countDown();
    }

    @Override
    public void progress(double done) {
      progress.add(done);
    }

    @Override
    public void secondTry(String reason) {
      retries.add(reason);
    }
  }

  private final Heard heard = new Heard();

  @BeforeEach
  void needsAShell() {
    Tool.need("sh");
  }

  private BuildRun build(ArtefactPattern pattern, String target, String... words) {
    BuildCommand command = BuildCommand.of(List.of(words), folder, Map.of("EXTRA", "yes"), target);
    return new BuildRun(command, pattern, heard, Clock.systemUTC());
  }

  private BuildRun script(String text) {
    return build(ArtefactPattern.none(), null, "sh", "-c", text);
  }

  @Test
  void runsInTheFolderWithItsEnvironmentAndFindsTheImage() {
    BuildResult r =
        build(
                ArtefactPattern.of("out/*.bin"),
                "fulmar_m4",
                "sh",
                "-c",
                "mkdir out; echo \"$EXTRA $0 $LC_ALL\"; echo x > out/a.bin; echo y > out/b.elf",
                "{target}")
            .run();
    assertThat(r.outcome()).isEqualTo(BuildResult.Outcome.BUILT);
    assertThat(r.artefact()).hasValue(folder.resolve("out/a.bin"));
    assertThat(heard.lines).containsExactly("yes fulmar_m4 C");
    assertThat(r.took()).isPositive();
  }

  @Test
  void aTargetIsNeverPartOfTheCommand() {
    Shell sh = new Shell(List.of("sh", "-c"), false);
    String evil = "x\"; touch pwned; echo '$(touch pwned)' `touch pwned` \\";
    BuildCommand line = BuildCommand.shell(sh, "printf '%s' {target}", folder, Map.of(), evil);
    BuildResult r = new BuildRun(line, ArtefactPattern.none(), heard, Clock.systemUTC()).run();
    assertThat(r.exit()).isZero();
    assertThat(heard.lines).containsExactly(evil);
    assertThat(build(ArtefactPattern.none(), evil, "printf", "%s", "{target}").run().exit())
        .isZero();
    assertThat(heard.lines).containsExactly(evil, evil);
    assertThat(folder.resolve("pwned")).doesNotExist();
  }

  @Test
  void failureKeepsStatusDiagnosticsAndTheLastLines() {
    BuildResult r = script("echo 'a.c:3:1: error: no good'; exit 7").run();
    assertThat(r.outcome()).isEqualTo(BuildResult.Outcome.FAILED);
    assertThat(r.exit()).isEqualTo(7);
    assertThat(r.errors()).isEqualTo(1);
    assertThat(r.attempts()).isEqualTo(1);
    assertThat(r.lastLines()).hasSize(1);
  }

  @Test
  void missingProgramFolderAndImageAreOneClearLine() {
    assertThat(
            build(ArtefactPattern.none(), null, "no-such-compiler").run().problem().orElseThrow())
        .startsWith("cannot start no-such-compiler:")
        .doesNotContain("\n");
    assertThat(build(ArtefactPattern.of("*.bin"), null, "true").run().problem().orElseThrow())
        .contains("no file matches *.bin");
    BuildCommand lost = BuildCommand.of(List.of("true"), folder.resolve("gone"), Map.of(), null);
    assertThat(
            new BuildRun(lost, ArtefactPattern.none(), heard, Clock.systemUTC())
                .run()
                .problem()
                .orElseThrow())
        .startsWith("no such folder to build in:");
    assertThatThrownBy(() -> build(ArtefactPattern.none(), null, "make", "T={target}"))
        .hasMessageContaining("names no build target");
    assertThatThrownBy(() -> ArtefactPattern.of("../*.bin")).hasMessageContaining("relative");
  }

  @Test
  void aTransientFailureIsTriedOnceMoreAndSaid() {
    String text =
        "test -f tried && { echo built; exit 0; };"
            + " touch tried; echo 'curl: (6) Could not resolve host: x.example'; exit 1";
    BuildResult r = script(text).run();
    assertThat(r.outcome()).isEqualTo(BuildResult.Outcome.BUILT);
    assertThat(r.attempts()).isEqualTo(2);
    assertThat(heard.retries).singleElement().asString().startsWith("the network was away");
    assertThat(script("echo Connection timed out; exit 1").run().attempts()).isEqualTo(2);
  }

  @Test
  void anErrorInTheSourcesIsNotTriedAgain() {
    BuildResult r = script("echo 'a.c:3:1: error: no'; echo 'connection timed out'; exit 1").run();
    assertThat(r.attempts()).isEqualTo(1);
    assertThat(heard.retries).isEmpty();
  }

  @Test
  void progressComesFromTheOutputAndNeverGoesBack() {
    script("echo '[ 10%] a'; echo '[3/4] b'; echo '[ 50%] c'; echo '[4/4] d'; echo '[1/0] e'")
        .run();
    assertThat(heard.progress).containsExactly(0.1, 0.75, 1.0);
  }

  @Test
  void linesOfAnySortComeThrough() {
    script("printf 'one\\r\\ntwo\\rthree\\n\\033[31mred\\033[0m\\n\\377\\n'; printf 'last'").run();
    assertThat(heard.lines).containsExactly("one", "two", "three", "red", "\uFFFD", "last");
    heard.lines.clear();
    script("head -c 100000 /dev/zero | tr '\\0' x").run();
    assertThat(heard.lines).hasSizeGreaterThan(10).allMatch(l -> l.length() <= 8192);
    assertThat(String.join("", heard.lines)).hasSize(100000);
  }

  @Test
  void cancelEndsTheWholeTreeAlsoWhatLostItsParent() throws Exception {
    String text =
        "sh -c 'sh -c \"trap : TERM; echo $$ > orphan.pid; while :; do sleep 1; done\" & exit 0';"
            + " sleep 300 & echo $! > child.pid; sh -c 'sleep 301; true';";
    BuildRun run = script("echo up; " + text);
    CompletableFuture<BuildResult> result = CompletableFuture.supplyAsync(run::run);
    assertThat(heard.firstLine.await(10, TimeUnit.SECONDS)).isTrue();
    long orphan = pid("orphan.pid");
    long child = pid("child.pid");
    run.cancel();
    BuildResult r = result.get(20, TimeUnit.SECONDS);
    assertThat(r.outcome()).isEqualTo(BuildResult.Outcome.CANCELLED);
    for (long pid : new long[] {orphan, child}) {
      assertThat(ProcessHandle.of(pid).map(ProcessHandle::isAlive).orElse(false))
          .as("process %d", pid)
          .isFalse();
    }
    run.cancel();
  }

  @Test
  void aHelperThatHoldsTheOutputOpenIsNotWaitedFor() throws Exception {
    BuildResult r = script("sleep 300 & echo $! > helper.pid; echo built").run();
    ProcessHandle helper = ProcessHandle.of(pid("helper.pid")).orElseThrow();
    try {
      assertThat(helper.isAlive()).isTrue();
      assertThat(r.outcome()).isEqualTo(BuildResult.Outcome.BUILT);
      assertThat(heard.lines).containsExactly("built");
    } finally {
      helper.destroyForcibly();
    }
  }

  @Test
  void cancelBeforeTheStartStartsNothing() {
    BuildRun run = script("touch ran");
    run.cancel();
    assertThat(run.run().outcome()).isEqualTo(BuildResult.Outcome.CANCELLED);
    assertThat(folder.resolve("ran")).doesNotExist();
  }

  private long pid(String file) throws Exception {
    Path path = folder.resolve(file);
    for (int i = 0; i < 500; i++) {
      if (Files.exists(path) && !Files.readString(path).isBlank()) {
        return Long.parseLong(Files.readString(path).strip());
      }
      Thread.sleep(20);
    }
    throw new AssertionError(file + " was not written");
  }
}
