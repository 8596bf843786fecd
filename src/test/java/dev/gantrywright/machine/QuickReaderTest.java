package dev.gantrywright.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The quick reader reads what the careful one reads, and never anything else. */
class QuickReaderTest {
  private static final List<String> ODD =
      List.of(
          "null",
          "0",
          "-1",
          "16",
          "16.0",
          "1e3",
          "1e400",
          "99999999999",
          "0.5",
          "\"\"",
          "\"16\"",
          "\"belt\"",
          "\"NO\"",
          "true",
          "[]",
          "[1]",
          "[\"a\"]",
          "[null]",
          "{}",
          "{\"a\":1}",
          "{\"a\":\"b\"}",
          "{\"a\":null}",
          "{\"a\":{}}");

  @ParameterizedTest
  @ValueSource(strings = {"sandpiper", "guillemot", "heron"})
  void theDemoPrintersAreReadQuickly(String name) throws Exception {
    byte[] json = Files.readAllBytes(DemoFilesTest.DEMO.resolve(name + ".printer.json"));
    assertThat(QuickReader.profile(json)).contains(ProfileStore.parseWithCare(name, json));
  }

  @ParameterizedTest
  @ValueSource(strings = {"fulmar-m4", "petrel-81"})
  void theDemoSheetsAreReadQuickly(String name) throws Exception {
    byte[] json = Files.readAllBytes(DemoFilesTest.DEMO.resolve(name + ".board.json"));
    assertThat(QuickReader.sheet(json)).contains(BoardStore.parseWithCare(name, json));
  }

  @Test
  void everyFieldSetToAnOddValueIsReadAlikeOrLeftToTheCarefulReader() throws Exception {
    Path demo = DemoFilesTest.DEMO.resolve("guillemot.printer.json");
    int read = 0;
    for (String json : mutants(Files.readAllBytes(demo))) {
      byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
      Optional<PrinterProfile> quick = QuickReader.profile(bytes);
      if (quick.isPresent()) {
        read++;
        try {
          assertThat(quick.get()).as(json).isEqualTo(ProfileStore.parseWithCare("x", bytes));
        } catch (ProfileProblem e) {
          fail("read quickly, refused with care: " + e.getMessage() + " in " + json);
        }
      }
    }
    assertThat(read).isGreaterThan(300);
  }

  @Test
  void everyValueOfASheetSetToAnOddOneToo() throws Exception {
    Path demo = DemoFilesTest.DEMO.resolve("fulmar-m4.board.json");
    for (String json : mutants(Files.readAllBytes(demo))) {
      byte[] bytes = json.getBytes(StandardCharsets.UTF_8);
      Optional<BoardSheet> quick = QuickReader.sheet(bytes);
      if (quick.isPresent()) {
        try {
          assertThat(quick.get()).as(json).isEqualTo(BoardStore.parseWithCare("x", bytes));
        } catch (ProfileProblem e) {
          fail("read quickly, refused with care: " + e.getMessage() + " in " + json);
        }
      }
    }
  }

  /** The document with each of its values, at every depth, replaced by each odd one. */
  private static List<String> mutants(byte[] json) {
    JsonNode tree = ProfileFormat.MAPPER.readTree(json);
    List<JsonNode> odd =
        ODD.stream().map(text -> (JsonNode) ProfileFormat.MAPPER.readTree(text)).toList();
    List<String> texts = new ArrayList<>();
    mutate(tree, tree, odd, texts);
    return texts;
  }

  private static void mutate(JsonNode root, JsonNode at, List<JsonNode> odd, List<String> texts) {
    if (at instanceof ObjectNode object) {
      for (String key : List.copyOf(object.propertyNames())) {
        JsonNode own = object.get(key);
        for (JsonNode value : odd) {
          object.set(key, value);
          texts.add(root.toString());
        }
        object.set(key, own);
        mutate(root, own, odd, texts);
      }
    } else if (at instanceof ArrayNode array) {
      array.forEach(child -> mutate(root, child, odd, texts));
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "[]",
        "{",
        "{}",
        "{\"format\":2}",
        "{\"format\":1} {}",
        "{\"format\":1,\"colour\":\"blue\"}",
        "{\"format\":1,\"name\":\"a\",\"name\":\"b\"}",
        "{\"format\":1,\"axes\":{\"x\":{},\"x\":{}}}",
        "{\"format\":1,\"serial\":{\"baud\":9600.5}}",
        "{\"format\":1,\"axes\":{\"x\":{\"driver\":{\"microsteps\":1024}}}}"
      })
  void whatIsOutOfTheOrdinaryIsLeftToTheCarefulReader(String json) {
    assertThat(QuickReader.profile(json.getBytes(StandardCharsets.UTF_8))).isEmpty();
  }

  @Test
  void keysMayStandInAnyOrder() throws Exception {
    byte[] json =
        "{\"supply\":{\"amps\":5,\"volts\":24},\"name\":\"a\",\"format\":1}"
            .getBytes(StandardCharsets.UTF_8);
    assertThat(QuickReader.profile(json)).contains(ProfileStore.parseWithCare("a", json));
  }
}
