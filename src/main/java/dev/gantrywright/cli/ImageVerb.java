package dev.gantrywright.cli;

import dev.gantrywright.image.Image;
import dev.gantrywright.image.Verdict;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The verb image: reads a firmware image and judges it. */
@Command(
    name = "image",
    mixinStandardHelpOptions = true,
    description =
        "Reads a firmware image (raw binary, Intel HEX, S-record, ELF, UF2), prints what is in it"
            + " and, for a named controller, judges whether it is right for it.",
    footer = {"", "Exit status 0: nothing against it; 1: it is wrong; 2: it is no whole image."})
final class ImageVerb implements Callable<Integer> {
  @Spec private CommandSpec spec;
  @Mixin private ImageOptions options;
  @Mixin private TextOrJson format;

  @Parameters(index = "0", paramLabel = "FILE", description = "The firmware image.")
  private Path file;

  @Override
  public Integer call() {
    Image image = ImageFile.read(file);
    Optional<Verdict> verdict = options.judge(image);
    if (format.json()) {
      Printed.json(spec, ImageJson.of(file, image, verdict));
    } else {
      ImageText.print(Printed.out(spec), file, image, verdict);
    }
    return verdict.filter(Verdict::refused).isPresent() ? ExitStatus.FINDINGS : ExitStatus.FINE;
  }
}
