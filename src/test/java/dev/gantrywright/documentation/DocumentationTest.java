package dev.gantrywright.documentation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.abort;
import static org.junit.jupiter.api.DynamicContainer.dynamicContainer;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import dev.gantrywright.board.Tool;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicNode;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What the pages say is so: links and anchors lead somewhere, pictures are used and described, and
 * every command that is shown runs and prints what is shown.
 *
 * <p>Words behind the {@code sh} of a block: {@code needs=make,gcc} names programs without which it
 * is skipped; {@code no-run: reason} keeps it from being run, with the reason in the test's name. A
 * block {@code text} right below is held to what was printed; {@code text timing} is not, because
 * it hangs on the clock.
 */
class DocumentationTest {
  private static final Pattern NO_RUN = Pattern.compile("no-run:? *(.*)");
  private static final Pattern NEEDS = Pattern.compile("needs=(\\S+)");

  @TempDir static Path folder;

  static List<Path> pages() {
    return MarkdownPage.all().stream().map(MarkdownPage::file).toList();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void linksLeadSomewhere(Path file) {
    MarkdownPage page = MarkdownPage.read(file);
    List<String> lost = new ArrayList<>();
    for (MarkdownPage.Link link : page.links()) {
      if (URI.create(link.target()).getScheme() != null) {
        continue;
      }
      String[] parts = link.target().split("#", 2);
      Path target = parts[0].isEmpty() ? file : file.resolveSibling(parts[0]).normalize();
      if (!Files.exists(target)) {
        lost.add(file + ":" + link.line() + " there is no " + target);
      } else if (parts.length == 2 && !MarkdownPage.read(target).anchors().contains(parts[1])) {
        lost.add(file + ":" + link.line() + " " + target + " has no heading for #" + parts[1]);
      }
    }
    assertThat(lost).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("pages")
  void picturesAreDescribed(Path file) {
    assertThat(MarkdownPage.read(file).links())
        .filteredOn(MarkdownPage.Link::picture)
        .allSatisfy(
            picture ->
                assertThat(picture.text().strip())
                    .as("alternative text, %s:%d", file, picture.line())
                    .hasSizeGreaterThan(3));
  }

  @Test
  void everyPictureIsShownSomewhere() throws Exception {
    Set<Path> shown = new TreeSet<>();
    for (MarkdownPage page : MarkdownPage.all()) {
      page.links().stream()
          .filter(MarkdownPage.Link::picture)
          .forEach(link -> shown.add(page.file().resolveSibling(link.target()).normalize()));
    }
    try (Stream<Path> pictures = Files.list(Path.of("docs/pictures"))) {
      assertThat(pictures.filter(p -> p.toString().endsWith(".png")).toList()).isSubsetOf(shown);
    }
  }

  /** A page of docs is one or two clicks from the index. */
  @Test
  void theIndexLeadsToEveryPage() {
    Set<Path> reached = new TreeSet<>();
    follow(Path.of("docs/README.md"), reached, 2);
    // Decisions are listed by their folder.
    assertThat(pages())
        .filteredOn(p -> p.startsWith("docs") && !p.startsWith("docs/decisions"))
        .isSubsetOf(reached);
  }

  private static void follow(Path file, Set<Path> reached, int clicks) {
    reached.add(file);
    if (clicks == 0 || !file.toString().endsWith(".md")) {
      return;
    }
    for (MarkdownPage.Link link : MarkdownPage.read(file).links()) {
      if (URI.create(link.target()).getScheme() == null && !link.target().startsWith("#")) {
        follow(file.resolveSibling(link.target().split("#")[0]).normalize(), reached, clicks - 1);
      }
    }
  }

  @TestFactory
  Stream<DynamicNode> commandsDoWhatThePagesSay() {
    return MarkdownPage.all().stream()
        .filter(page -> page.blocks().stream().anyMatch(DocumentationTest::commands))
        .map(page -> dynamicContainer(page.file().toString(), blocks(page).stream()));
  }

  private static boolean commands(MarkdownPage.Block block) {
    boolean shell = block.info().isEmpty() || block.info().matches("(sh|console)\\b.*");
    return shell
        && ShownCommands.whole(block.lines()).stream()
            .anyMatch(l -> l.startsWith(ShownCommands.START));
  }

  private static List<DynamicTest> blocks(MarkdownPage page) {
    List<DynamicTest> tests = new ArrayList<>();
    ShownCommands[] workshop = new ShownCommands[1];
    List<MarkdownPage.Block> all = page.blocks();
    for (int i = 0; i < all.size(); i++) {
      MarkdownPage.Block block = all.get(i);
      if (!commands(block) && !block.info().matches("sh\\b.*")) {
        continue;
      }
      Matcher no = NO_RUN.matcher(block.info());
      String name = "line " + block.line();
      if (no.find()) {
        tests.add(dynamicTest(name + ", not run: " + no.group(1), () -> abort(no.group(1))));
        continue;
      }
      List<String> shown = i + 1 < all.size() ? shownBy(block, all.get(i + 1)) : List.of();
      tests.add(
          dynamicTest(
              name,
              () -> {
                if (workshop[0] == null) {
                  workshop[0] = new ShownCommands(Files.createTempDirectory(folder, "page"));
                }
                run(block, shown, workshop[0]);
              }));
    }
    return tests;
  }

  /** What the page shows as printed: a block of text right below the commands. */
  private static List<String> shownBy(MarkdownPage.Block block, MarkdownPage.Block next) {
    int below = block.line() + block.lines().size() + 2;
    return next.info().equals("text") && next.line() == below ? next.lines() : List.of();
  }

  private static void run(MarkdownPage.Block block, List<String> shown, ShownCommands workshop) {
    Matcher needs = NEEDS.matcher(block.info());
    if (needs.find()) {
      Tool.need(needs.group(1).split(","));
    }
    String printed =
        ShownCommands.whole(block.lines()).stream()
            .filter(ShownCommands::runs)
            .map(workshop::run)
            .collect(Collectors.joining());
    ShownCommands.assertShown(shown, printed);
  }
}
