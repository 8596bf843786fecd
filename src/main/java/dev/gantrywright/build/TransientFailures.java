package dev.gantrywright.build;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Signs that a build failed for a passing reason: the network, a busy file, a killed compiler. */
final class TransientFailures {
  private record Sign(String words, String reason) {}

  private final List<Sign> signs;

  private TransientFailures(List<Sign> signs) {
    this.signs = List.copyOf(signs);
  }

  static TransientFailures shipped() {
    try (InputStream in = TransientFailures.class.getResourceAsStream("transient-failures.json")) {
      List<Sign> signs = new ArrayList<>();
      for (JsonNode row : JsonMapper.shared().readTree(in.readAllBytes()).get("signs")) {
        signs.add(new Sign(row.get("words").asString(), row.get("reason").asString()));
      }
      return new TransientFailures(signs);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The reason, where one fits and no error in the sources explains the failure. */
  Optional<String> reason(List<String> lines, List<Diagnostic> diagnostics) {
    boolean ownFault =
        diagnostics.stream()
            .anyMatch(
                d ->
                    d.level() == Diagnostic.Level.ERROR
                        && d.origin() == Diagnostic.Origin.COMPILER
                        && d.line() > 0);
    if (ownFault) {
      return Optional.empty();
    }
    for (Sign sign : signs) {
      for (String line : lines) {
        if (line.toLowerCase(Locale.ROOT).contains(sign.words())) {
          return Optional.of(sign.reason() + ": " + line.strip());
        }
      }
    }
    return Optional.empty();
  }
}
