package dev.gantrywright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.TestFirmware;
import dev.gantrywright.board.Tool;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The verb load as a user types it, with the demo board. */
class LoadVerbTest {
  private static final Path SHEET = Path.of("demo-profiles/fulmar-m4.board.json");

  @TempDir Path folder;
  private Path card;
  private Path bin;

  @BeforeEach
  void anImageAndACard() throws Exception {
    TestFirmware.elf(folder.resolve("out"));
    bin = folder.resolve("out/fulmar-m4.bin");
    card = Files.createDirectory(folder.resolve("card"));
  }

  private CommandRun load(Object... words) {
    List<String> args =
        new ArrayList<>(List.of("load", "--records", folder.resolve("r").toString()));
    for (Object w : words) {
      args.add(w.toString());
    }
    return CommandRun.of(args.toArray(String[]::new));
  }

  @Test
  void copiesUnderTheNameOfTheSheetAndReadsTheCardThatReturns() throws Exception {
    CommandRun run = load(bin, "--to", card, "--board", SHEET);
    assertThat(run.status()).as(run.err() + run.out()).isZero();
    assertThat(card.resolve("FULMAR.IMG")).hasSameBinaryContentAs(bin);
    assertThat(run.out())
        .contains("mains voltage", "proven: read back", "renames it to FULMAR.OLD");
    CommandRun still = load("--returned", "--to", card, "--board", SHEET);
    assertThat(still.status()).isEqualTo(1);
    assertThat(still.out()).startsWith("not loaded: FULMAR.IMG is still there");
    Files.move(card.resolve("FULMAR.IMG"), card.resolve("FULMAR.OLD"));
    CommandRun taken = load("--returned", "--to", card, "--board", SHEET, "--format", "json");
    assertThat(taken.status()).isZero();
    assertThat(taken.json().path("state").asString()).isEqualTo("loaded");
  }

  @Test
  void plainCopyNeedsNoBoard() throws Exception {
    CommandRun run = load(bin, "--to", card, "--as", "ROOK.BIN", "--format", "json");
    assertThat(run.status()).as(run.err()).isZero();
    assertThat(run.json().path("loaded").asBoolean()).isTrue();
    assertThat(run.json().path("sha256").asString()).hasSize(64);
    assertThat(card.resolve("ROOK.BIN")).hasSameBinaryContentAs(bin);
    assertThat(
            load(bin, "--to", card, "--as", "ROOK.BIN", "--format", "json")
                .json()
                .path("alreadyThere")
                .asBoolean())
        .isTrue();
  }

  @Test
  void aWrongImageIsRefusedUntilAReasonIsGiven() {
    Path elf = folder.resolve("out/fulmar-m4.elf");
    CommandRun refused = load(elf, "--to", card, "--board", SHEET);
    assertThat(refused.status()).isEqualTo(1);
    assertThat(refused.out()).contains("load refused:", "--because REASON");
    assertThat(card).isEmptyDirectory();
    CommandRun name = load(bin, "--to", card, "--board", SHEET, "--as", "OTHER.IMG");
    assertThat(name.status()).isEqualTo(1);
    assertThat(name.out()).contains("looks for FULMAR.IMG");
    CommandRun forced = load(elf, "--to", card, "--board", SHEET, "--because", "reader test");
    assertThat(forced.status()).as(forced.err()).isZero();
  }

  @Test
  void badUsageIsOneLine() {
    for (CommandRun run :
        new CommandRun[] {
          load(),
          load(bin),
          load(bin, "--to", folder.resolve("gone")),
          load(bin, "--to", card, "--as", "a/b"),
          load("--returned", "--to", card),
          load(bin, "--by", "--", "flash")
        }) {
      assertThat(run.status()).as(run.out() + run.err()).isEqualTo(2);
      assertThat(run.err().strip()).doesNotContain("\n").isNotEmpty();
    }
  }

  @Test
  void aCommandOfOnesOwnIsFollowed() throws Exception {
    Tool.need("cp");
    CommandRun run = load(bin, "--by", "--", "cp", "{file}", card.resolve("flash.bin"));
    assertThat(run.status()).as(run.err() + run.out()).isZero();
    assertThat(card.resolve("flash.bin")).hasSameBinaryContentAs(bin);
    assertThat(run.out()).contains("WARNING:", "the command ended well");
    assertThat(load(bin, "--by", "--", "false", "{file}").status()).isEqualTo(3);
  }

  @Test
  void theCommandOfTheProfileServesWhereNoneIsTyped() throws Exception {
    Path profile = folder.resolve("wagtail.printer.json");
    Files.copy(SHEET, folder.resolve("board.board.json"));
    Files.writeString(
        profile,
        """
        {"format": 1, "name": "Wagtail", "board": {"sheet": "board.board.json"},
         "build": {"flash": ["cp", "{file}", "%s"]}}
        """
            .formatted(folder.resolve("taken.bin").toString().replace("\\", "/")));
    CommandRun run = load(bin, "--by", "--for", profile);
    assertThat(run.status()).as(run.err() + run.out()).isZero();
    assertThat(folder.resolve("taken.bin")).hasSameBinaryContentAs(bin);
    Files.write(bin, new byte[200]);
    CommandRun judged = load(bin, "--by", "--for", profile);
    assertThat(judged.status()).as("the profile's board judges the image").isEqualTo(1);
    assertThat(judged.out()).contains("load refused");
  }

  @Test
  void wholeChipEraseNeedsItsSentence() {
    Tool.need("echo");
    CommandRun refused =
        load(bin, "--board", SHEET, "--by", "--", "echo", "--mass-erase", "{file}");
    assertThat(refused.status()).isEqualTo(1);
    assertThat(refused.out()).contains("bootloader", "erase everything on Fulmar M4");
    CommandRun typed =
        load(
            bin,
            "--board",
            SHEET,
            "--confirm",
            "erase everything on Fulmar M4",
            "--by",
            "--",
            "echo",
            "--mass-erase",
            "{file}");
    assertThat(typed.status()).as(typed.out()).isZero();
  }

  @Test
  void whatWasReplacedIsListedAndCanGoBack() throws Exception {
    Path first = Files.write(folder.resolve("first.bin"), new byte[] {1, 2, 3});
    Path second = Files.write(folder.resolve("second.bin"), new byte[] {4, 5});
    assertThat(load("--kept").out()).contains("no image was replaced");
    load(first, "--to", card, "--as", "A.BIN");
    load(second, "--to", card, "--as", "A.BIN");
    String kept = load("--kept", "--format", "json").json().path("kept").path(0).asString();
    assertThat(Path.of(kept)).hasSameBinaryContentAs(first);
    assertThat(load(kept, "--to", card, "--as", "A.BIN").status()).isZero();
    assertThat(card.resolve("A.BIN")).hasSameBinaryContentAs(first);
  }

  @Test
  void theImageThatIsAlreadyOnTheBoardIsNoted() {
    load(bin, "--to", card, "--board", SHEET);
    assertThat(load(bin, "--to", card, "--board", SHEET).out())
        .contains("note image-already-loaded");
  }

  @Test
  void drivesAreListed() {
    CommandRun run = load("--drives", "--format", "json");
    assertThat(run.status()).isZero();
    assertThat(run.json().path("drives").isArray()).isTrue();
  }
}
