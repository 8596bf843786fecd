package dev.gantrywright.cli;

import dev.gantrywright.image.Image;
import dev.gantrywright.image.ImageDetails;
import dev.gantrywright.image.MemoryPicture;
import dev.gantrywright.image.Remark;
import dev.gantrywright.image.Segment;
import dev.gantrywright.image.Verdict;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/** An image and what is said of it, as lines of text. */
final class ImageText {
  private static final int BAR = 40;
  private static final int SEGMENTS_SHOWN = 8;

  /** What fills memory, the most telling first. */
  private static final String SIGNS = "!#VZB-.";

  private ImageText() {}

  static void print(PrintWriter out, Path file, Image read, Optional<Verdict> verdict) {
    Image image = verdict.map(v -> v.examination().image()).orElse(read);
    out.printf(
        Locale.ROOT,
        "%s: %s, %,d bytes, SHA-256 %s%n",
        file.getFileName(),
        image.format().words(),
        image.fileBytes(),
        image.sha256());
    out.println("  looks like " + image.guess());
    if (image.placed()) {
      image.contents().segments().stream()
          .limit(SEGMENTS_SHOWN)
          .forEach(s -> out.println("  " + segment(s)));
      int more = image.contents().segments().size() - SEGMENTS_SHOWN;
      if (more > 0) {
        out.println("  and " + more + " more");
      }
    }
    image.entry().ifPresent(e -> out.printf(Locale.ROOT, "  entry 0x%08X%n", e));
    if (image.details() instanceof ImageDetails.Elf elf) {
      out.printf(
          Locale.ROOT,
          "  %s; text %,d, data %,d, bss %,d: flash %,d, RAM %,d bytes%n",
          elf.machine().words(),
          elf.use().text(),
          elf.use().data(),
          elf.use().bss(),
          elf.use().flashBytes(),
          elf.use().ramBytes());
    }
    if (verdict.isEmpty()) {
      out.println("  not judged: name the controller with --mcu PART or --board SHEET");
      return;
    }
    judged(out, verdict.get());
  }

  private static String segment(Segment s) {
    return String.format(Locale.ROOT, "%s  %,d bytes", s.range(), s.length());
  }

  private static void judged(PrintWriter out, Verdict verdict) {
    out.printf(
        Locale.ROOT,
        "for %s, program at 0x%08X (offset %,d)%n",
        verdict.examination().chip().part(),
        verdict.examination().programStart(),
        verdict.examination().loader().startBytes());
    verdict.picture().banks().forEach(bank -> out.println("  " + bar(bank)));
    remarks(out, verdict);
    out.println(
        verdict.refused()
            ? "refused: do not load this image"
            : "nothing against loading this image");
  }

  static void remarks(PrintWriter out, Verdict verdict) {
    for (Remark r : verdict.remarks()) {
      out.println(r.level().word() + " " + r.id() + ": " + r.text());
      out.println("        " + r.evidence());
      out.println("        " + r.todo() + " [" + r.source() + "]");
    }
  }

  /**
   * {@code flash [BBPPPP....] 35,788 of 1,048,576 bytes}; each sign is the most telling of what its
   * part holds.
   */
  static String bar(MemoryPicture.Bank bank) {
    StringBuilder bar = new StringBuilder();
    for (int i = 0; i < BAR; i++) {
      long from = bank.range().start() + bank.range().size() * i / BAR;
      long to = Math.max(from + 1, bank.range().start() + bank.range().size() * (i + 1) / BAR);
      bar.append(sign(bank, from, to));
    }
    boolean over = bank.fills().stream().anyMatch(f -> f.kind() == MemoryPicture.Kind.OVER);
    return String.format(
        Locale.ROOT,
        "%-22s [%s%s] %s",
        bank.name(),
        bar,
        over ? "!" : "",
        bank.measured()
            ? String.format(
                Locale.ROOT,
                "%,d of %,d bytes (%.1f %%)",
                bank.usedBytes(),
                bank.range().size(),
                100.0 * bank.usedBytes() / bank.range().size())
            : String.format(
                Locale.ROOT, "%,d bytes; this format does not tell its use", bank.range().size()));
  }

  /** The rarest filling wins, so that a small program still shows beside a bootloader. */
  private static char sign(MemoryPicture.Bank bank, long from, long to) {
    int best = SIGNS.length() - 1;
    for (MemoryPicture.Fill f : bank.fills()) {
      if (f.range().start() < to && f.range().end() > from) {
        best = Math.min(best, SIGNS.indexOf(own(f.kind())));
      }
    }
    return SIGNS.charAt(best);
  }

  private static char own(MemoryPicture.Kind kind) {
    return switch (kind) {
      case BOOTLOADER -> 'B';
      case PROGRAM -> '#';
      case VARIABLES -> 'V';
      case CLEARED -> 'Z';
      case STACK_ROOM -> '-';
      case OVER -> '!';
      case FREE -> '.';
    };
  }
}
