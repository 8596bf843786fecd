package dev.gantrywright.cli;

import picocli.CommandLine.Option;

/** The {@code --format} option of a verb that speaks text or JSON; use it as a picocli mixin. */
final class TextOrJson {
  enum Format {
    text,
    json
  }

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "How to print: ${COMPLETION-CANDIDATES} (default ${DEFAULT-VALUE}).",
      defaultValue = "text")
  Format format = Format.text;

  boolean json() {
    return format == Format.json;
  }
}
