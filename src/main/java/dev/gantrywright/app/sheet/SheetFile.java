package dev.gantrywright.app.sheet;

import dev.gantrywright.report.sheet.Sheet;
import dev.gantrywright.report.sheet.SheetHtml;
import dev.gantrywright.report.sheet.SheetPdf;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDate;
import java.util.Locale;

/** A sheet as a file; its name says which kind. */
public final class SheetFile {
  private SheetFile() {}

  /** Whether the name ends in {@code .html} or {@code .pdf}. */
  public static boolean known(Path file) {
    return pdf(file) || name(file).endsWith(".html");
  }

  private static boolean pdf(Path file) {
    return name(file).endsWith(".pdf");
  }

  private static String name(Path file) {
    return file.getFileName().toString().toLowerCase(Locale.ROOT);
  }

  /** What goes into the file. */
  public static byte[] bytes(Sheet sheet, LocalDate day, Path file) {
    return pdf(file) ? SheetPdf.bytes(sheet, day) : SheetHtml.bytes(sheet);
  }

  /** Writes it whole or not at all. */
  public static void write(byte[] bytes, Path file) throws IOException {
    Path target = file.toAbsolutePath();
    Path fresh = target.resolveSibling("." + target.getFileName() + ".new");
    try {
      Files.write(fresh, bytes);
      Files.move(fresh, target, StandardCopyOption.REPLACE_EXISTING);
    } finally {
      Files.deleteIfExists(fresh);
    }
  }
}
