package dev.gantrywright.ui.state;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.app.Opening;
import dev.gantrywright.header.Progress;
import dev.gantrywright.machine.PrinterProfile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderDeskTest {
  @TempDir Path home;
  private final Deque<Runnable> pauses = new ArrayDeque<>();
  private final Deque<Runnable> readings = new ArrayDeque<>();
  private final List<String> read = new ArrayList<>();
  private final List<Integer> listed = new ArrayList<>();
  private IntConsumer beforeEntry = entries -> {};
  private PrinterDesk desk;
  private FolderDesk folder;

  private OpenPrinter inspected;
  private int inspections;

  /** Nothing is found: these tests are about the folder alone, and what the rules see of it. */
  private final class Silent implements Inspector, Inspection {
    @Override
    public List<MarginNote> inspect(OpenPrinter printer) {
      inspected = printer;
      inspections++;
      return List.of();
    }

    @Override
    public Inspection follow() {
      return this;
    }

    @Override
    public Optional<String> evidence(String key) {
      return Optional.empty();
    }
  }

  @BeforeEach
  void open() throws Exception {
    for (String name : List.of("perch-1", "perch-2")) {
      Files.createDirectory(home.resolve(name));
      Files.writeString(home.resolve(name).resolve("nest.h"), "#define NEST 1\n");
      Files.writeString(home.resolve(name).resolve("twig.h"), "#define TWIG 2\n");
    }
    Path file =
        Files.writeString(
            home.resolve("wren.printer.json"),
            "{\"format\": 1, \"name\": \"Wren\", \"build\": {\"folder\": \"perch-1\"}}");
    desk =
        new PrinterDesk(
            new Opening().open(file),
            new Silent(),
            Clock.systemUTC(),
            this::reading,
            pauses::add,
            readings::add,
            Runnable::run);
    folder = desk.folder();
    readings.forEach(Runnable::run);
    readings.clear();
  }

  @AfterEach
  void close() {
    desk.close();
  }

  private OpenPrinter reading(Path file, PrinterProfile profile, Progress progress) {
    read.add(profile.build().folder());
    Progress slow =
        new Progress() {
          @Override
          public void listed(int entries) {
            listed.add(entries);
            beforeEntry.accept(entries);
            progress.listed(entries);
          }

          @Override
          public void read(int done, int total, String path) {
            progress.read(done, total, path);
          }
        };
    return new Opening().open(file, profile, null, slow);
  }

  private void name(String value) {
    assertThat(desk.values().edit("build.folder", value)).isEmpty();
  }

  private void pause() {
    while (!pauses.isEmpty()) {
      pauses.poll().run();
    }
  }

  private void work() {
    while (!readings.isEmpty()) {
      readings.poll().run();
    }
  }

  private String shown() {
    var open = desk.opened().get().folder();
    return open == null ? "none" : open.root().getFileName().toString();
  }

  @Test
  void aNameThatIsBeingTypedIsReadOnceItStands() {
    name("p");
    name("perch-");
    name("perch-2");
    assertThat(folder.state().get())
        .isEqualTo(new FolderState(FolderState.Kind.WAITING, "perch-2", "perch-1", 0, ""));
    pause();
    assertThat(folder.state().get().kind()).isEqualTo(FolderState.Kind.READING);
    assertThat(shown()).as("until it is read").isEqualTo("perch-1");
    work();
    assertThat(read).containsExactly("perch-2");
    assertThat(shown()).isEqualTo("perch-2");
    assertThat(folder.state().get().current()).isTrue();
    assertThat(desk.opened().get().unreadFolder()).isNull();
  }

  @Test
  void whileAnotherFolderIsReadNothingIsPlannedForTheFormer() {
    assertThat(desk.planned().get().revision()).isNotNegative();
    name("perch-2");
    pause();
    Runnable reads = readings.pollLast();
    work();
    reads.run();
    assertThat(desk.planned().get().revision()).isNegative();
    work();
    assertThat(desk.planned().get().revision()).isEqualTo(desk.values().revision());
  }

  @Test
  void theRulesSeeNoFolderUntilTheOneThatIsNamedIsRead() {
    assertThat(inspected.folder()).isNotNull();
    inspections = 0;
    name("perch-2");
    work();
    assertThat(inspected.folder()).isNull();
    assertThat(inspected.unreadFolder()).as("no finding yet").isNull();
    assertThat(desk.judged().get().whole()).isFalse();
    assertThat(RouteState.of(desk, Stage.CHECK).words()).isEqualTo("reading the folder");
    assertThat(RouteState.of(desk, Stage.WRITE).words()).isEqualTo("reading the folder");
    assertThat(inspections).isOne();
    pause();
    readings.pollLast().run();
    assertThat(RouteState.of(desk, Stage.CHECK).words())
        .as("read, not checked")
        .isEqualTo("checking");
    work();
    assertThat(inspected.folder().root()).endsWith(Path.of("perch-2"));
    assertThat(desk.judged().get().whole()).isTrue();
    assertThat(RouteState.of(desk, Stage.CHECK).words()).isEqualTo("everything fits");
    assertThat(inspections).isEqualTo(2);
  }

  @Test
  void undoneBeforeItIsReadTheFormerFolderIsCheckedAgain() {
    name("perch-2");
    work();
    desk.values().undo();
    assertThat(RouteState.of(desk, Stage.CHECK).words()).isEqualTo("checking");
    work();
    assertThat(inspected.folder().root()).endsWith(Path.of("perch-1"));
    assertThat(RouteState.of(desk, Stage.CHECK).words()).isEqualTo("everything fits");
  }

  @Test
  void aReadingThatIsCancelledIsSaidToTheRulesUntilItBeginsAnew() {
    name("perch-2");
    pause();
    folder.cancel();
    work();
    assertThat(inspected.folder()).isNull();
    assertThat(inspected.unreadFolder().stated()).isEqualTo("perch-2");
    assertThat(inspected.unreadFolder().why()).startsWith("perch-2 has not been read");
    assertThat(desk.judged().get().whole()).isTrue();
    assertThat(RouteState.of(desk, Stage.WRITE).words()).isEqualTo("folder not read");
    folder.read();
    Runnable reads = readings.pollLast();
    work();
    assertThat(inspected.unreadFolder()).isNull();
    assertThat(desk.judged().get().whole()).isFalse();
    reads.run();
    work();
    assertThat(inspected.folder().root()).endsWith(Path.of("perch-2"));
  }

  @Test
  void aFolderThatIsNotThereIsOneLineAndUndoBringsTheFormerBack() {
    name("gone");
    pause();
    work();
    assertThat(shown()).isEqualTo("none");
    assertThat(desk.opened().get().unreadFolder().why()).contains("there is no such folder");
    assertThat(folder.state().get().current()).isTrue();
    desk.values().undo();
    pause();
    work();
    assertThat(shown()).isEqualTo("perch-1");
    assertThat(desk.opened().get().unreadFolder()).isNull();
    assertThat(desk.opened().get().problems()).isEmpty();
  }

  @Test
  void aReadingThatIsCancelledLeavesTheFormerFolder() {
    name("perch-2");
    pause();
    folder.cancel();
    work();
    assertThat(shown()).isEqualTo("perch-1");
    assertThat(folder.state().get())
        .isEqualTo(new FolderState(FolderState.Kind.STOPPED, "perch-2", "perch-1", 0, ""));
    folder.read();
    work();
    assertThat(shown()).isEqualTo("perch-2");
  }

  @Test
  void whatIsOvertakenIsDropped() {
    name("perch-2");
    pause();
    Runnable slow = readings.pollLast();
    name("gone");
    pause();
    work();
    slow.run();
    assertThat(shown()).isEqualTo("none");
    assertThat(folder.state().get().named()).isEqualTo("gone");
  }

  @Test
  void undoneBeforeItIsReadTheFormerStandsAndNothingIsRead() {
    name("perch-2");
    desk.values().undo();
    assertThat(folder.state().get().current()).isTrue();
    pause();
    work();
    assertThat(read).isEmpty();
    assertThat(shown()).isEqualTo("perch-1");
  }

  /** The folder is slow: its listing stands at its second entry until the user has cancelled. */
  @Test
  void aListingThatIsHeldUpEndsWhenItIsCancelled() {
    List<FolderState> states = new ArrayList<>();
    folder.state().listen(states::add);
    name("perch-2");
    pause();
    beforeEntry =
        entries -> {
          if (entries == 2) {
            assertThat(folder.state().get().share()).isNegative();
            folder.cancel();
          }
        };
    work();
    assertThat(listed).as("no entry after that").last().isEqualTo(2);
    assertThat(states)
        .contains(new FolderState(FolderState.Kind.READING, "perch-2", "perch-1", -1, "1 entry"));
    assertThat(states).last().extracting(FolderState::kind).isEqualTo(FolderState.Kind.STOPPED);
    assertThat(shown()).isEqualTo("perch-1");
    beforeEntry = entries -> {};
    folder.read();
    work();
    assertThat(shown()).isEqualTo("perch-2");
  }

  @Test
  void aListingEndsWhenThePrinterIsClosedOrAnotherFolderIsNamed() {
    name("perch-2");
    pause();
    beforeEntry = entries -> name("gone");
    work();
    assertThat(listed).containsExactly(1);
    listed.clear();
    name("perch-2");
    pause();
    beforeEntry = entries -> desk.close();
    work();
    assertThat(listed).containsExactly(1);
  }

  @Test
  void tellsHowFarItIs() {
    List<Double> shares = new ArrayList<>();
    folder.state().listen(state -> shares.add(state.share()));
    name("perch-2");
    pause();
    work();
    assertThat(shares).contains(0.5, 1.0);
  }

  @Test
  void anotherBoardSheetIsReadAndTheFolderStays() throws Exception {
    Files.copy(Path.of("demo-profiles/fulmar-m4.board.json"), home.resolve("fulmar-m4.board.json"));
    var before = desk.opened().get().folder();
    assertThat(desk.values().edit("board.sheet", "fulmar-m4.board.json")).isEmpty();
    assertThat(RouteState.of(desk, Stage.CHECK).words()).isEqualTo("checking");
    pause();
    work();
    assertThat(desk.sheet().orElseThrow().name()).isEqualTo("Fulmar M4");
    assertThat(desk.opened().get().folder()).isSameAs(before);
    assertThat(inspected.sheet()).isNotNull();
    assertThat(inspected.folder()).isSameAs(before);
    // The sheet is not that of the profile any more, as soon as another one is named.
    assertThat(desk.values().edit("board.sheet", "other.board.json")).isEmpty();
    work();
    assertThat(inspected.sheet()).isNull();
    assertThat(inspected.folder()).isSameAs(before);
  }
}
