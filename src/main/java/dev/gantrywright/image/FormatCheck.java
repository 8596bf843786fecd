package dev.gantrywright.image;

import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Does the loader read this file format at all? */
final class FormatCheck implements ImageCheck {
  @Override
  public void check(Examination e, Consumer<Remark> out) {
    if (e.loader().takes().isEmpty() || e.loader().takes().contains(e.image().format())) {
      return;
    }
    out.accept(
        Remark.error(
            "loader-other-format",
            "The loader does not read " + e.image().format().words() + " files.",
            "it takes "
                + e.loader().takes().stream()
                    .map(ImageFormat::words)
                    .sorted()
                    .collect(Collectors.joining(", ")),
            "Give the file that the build makes for loading; a name alone changes nothing.",
            "the board sheet"));
  }
}
