package dev.gantrywright.header;

import static org.assertj.core.api.Assertions.assertThat;

import dev.gantrywright.board.Tool;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The macros live at the end of a header are, line for line, those that GNU C lists with {@code
 * -undef -E -dM}, on every header of several packages.
 */
class CompilerAgreementTest {
  private static final Path AVR = Path.of("/usr/lib/avr/include");

  private Set<String> predefined;

  @BeforeEach
  void needsTheCompiler() {
    Tool.need("gcc");
    predefined = Gnu.predefined();
  }

  @ParameterizedTest
  @ValueSource(strings = {"__AVR_ATmega2560__", "__AVR_ATtiny85__", "__AVR_ATxmega128A1__"})
  void onEveryHeaderOfTheAvrLibrary(String device) {
    Gnu.require(AVR);
    List<Path> headers = Gnu.headers(AVR);
    assertThat(headers).hasSizeGreaterThan(300);
    int compared = compare(headers, List.of(device), List.of(AVR));
    // the compiler itself gives up on a header that wants a C library for another machine
    assertThat(compared).isGreaterThanOrEqualTo(headers.size() - 1);
  }

  static Stream<Arguments> packages() {
    return Stream.of(
        Arguments.of("libmbedtls-dev", "/usr/include/mbedtls", 60),
        Arguments.of("libmbedtls-dev, second folder", "/usr/include/psa", 10),
        Arguments.of("linux-libc-dev, USB", "/usr/include/linux/usb", 10),
        Arguments.of("linux-libc-dev, CAN", "/usr/include/linux/can", 5),
        Arguments.of("linux-libc-dev, generic", "/usr/include/asm-generic", 30),
        Arguments.of("libc6-dev", "/usr/include/arpa", 4));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("packages")
  void onOtherHeadersThatAreMostlyDefinitions(String name, String folder, int atLeast) {
    Gnu.require(Path.of(folder));
    List<String> machine = List.of("__x86_64__", "__LP64__");
    assertThat(compare(Gnu.headers(Path.of(folder)), machine, List.of()))
        .isGreaterThanOrEqualTo(atLeast);
  }

  /** Compares on every header that the compiler does not give up on; how many those were. */
  private int compare(List<Path> headers, List<String> defines, List<Path> include) {
    List<String> options = new ArrayList<>();
    defines.forEach(d -> options.add("-D" + d));
    include.forEach(dir -> options.add("-I" + dir));
    List<Path> search = new ArrayList<>(include);
    search.addAll(SystemFolders.of(Path.of("/"), System.getProperty("os.arch")));
    LiveMacros macros = new LiveMacros(defines, search);
    int compared = 0;
    List<String> wrong = new ArrayList<>();
    for (Path header : headers) {
      Gnu.Answer gnu = Gnu.macros(header, options);
      if (gnu.stopped()) {
        continue;
      }
      compared++;
      List<String> theirs = gnu.lines().stream().filter(l -> !predefined.contains(l)).toList();
      List<String> ours =
          listing(macros, header).stream().filter(l -> !predefined.contains(l)).toList();
      if (!theirs.equals(ours)) {
        wrong.add(header + ": " + difference(theirs, ours));
      }
    }
    assertThat(wrong).isEmpty();
    return compared;
  }

  private static List<String> listing(LiveMacros macros, Path header) {
    try {
      return Gnu.sorted(macros.of(header).lines());
    } catch (IOException e) {
      throw new AssertionError(header.toString(), e);
    }
  }

  private static String difference(List<String> theirs, List<String> ours) {
    List<String> missing = new ArrayList<>(theirs);
    missing.removeAll(ours);
    List<String> extra = new ArrayList<>(ours);
    extra.removeAll(theirs);
    return "missing " + missing + ", extra " + extra;
  }

  @Test
  void onTheStressCorpusWithEveryLineEnd(@TempDir Path dir) throws IOException {
    for (String name : Corpus.names()) {
      for (LineEnds ends : LineEnds.values()) {
        Path file = dir.resolve(ends + "-" + name);
        Files.write(file, ends.apply(Corpus.bytes(name)));
        Gnu.Answer gnu = Gnu.macros(file, List.of("-w"));
        List<String> theirs = gnu.lines().stream().filter(l -> !predefined.contains(l)).toList();
        assertThat(listing(new LiveMacros(List.of(), List.of()), file))
            .as(file.getFileName().toString())
            .isEqualTo(theirs);
      }
    }
  }

  /**
   * ISO/IEC 14882:2017 5.5: operators in C++; in C names like any other, here a faulty condition.
   */
  @ParameterizedTest
  @ValueSource(strings = {"words.hpp", "words.h"})
  void onWordsThatAreOperatorsInCpp(String name, @TempDir Path dir) throws IOException {
    String text =
        """
        #define A 1
        #define N not A
        #if A and not N
        #define TAKEN 1
        #elif A or N
        #define OTHER 1
        #endif
        #if (6 bitand 3) == 2 and (A bitor 4) not_eq 4 and (5 xor 1) == compl -5
        #define BITS 1
        #endif
        #if and
        #define BARE 1
        #endif
        """;
    Path file = Files.writeString(dir.resolve(name), text);
    List<String> theirs =
        Gnu.macros(file, List.of("-w")).lines().stream()
            .filter(line -> !line.startsWith("#define _")) // what C++ adds
            .filter(line -> !predefined.contains(line))
            .toList();
    assertThat(listing(new LiveMacros(List.of(), List.of()), file)).isEqualTo(theirs);
  }

  @Test
  void onEveryAttributeInTheTable(@TempDir Path dir) throws IOException {
    List<String> rows =
        new String(Gnu.resource("attributes.txt"), java.nio.charset.StandardCharsets.US_ASCII)
            .lines()
            .filter(line -> !line.startsWith("#"))
            .toList();
    StringBuilder text = new StringBuilder();
    for (String row : rows) {
      String[] words = row.split(" ");
      text.append("#if __has_attribute(").append(words[0]).append(") != ").append(words[1]);
      text.append("\n#define WRONG_").append(words[0]).append("\n#endif\n");
    }
    Path file = Files.writeString(dir.resolve("attributes.h"), text);
    assertThat(Gnu.macros(file, List.of()).lines()).noneMatch(line -> line.contains("WRONG_"));
    assertThat(listing(new LiveMacros(List.of(), List.of()), file)).isEmpty();
    assertThat(rows).hasSizeGreaterThan(80);
  }
}
