package dev.gantrywright.report.sheet;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;

/**
 * The sheet as a tagged PDF on A4: laid out from the HTML, its text extractable, its title and
 * language set. The same sheet gives the same bytes.
 */
public final class SheetPdf {
  private static final String PRODUCER = "Gantrywright";

  private SheetPdf() {}

  /**
   * The file's bytes.
   *
   * @param day what the file says of when it was made
   */
  public static byte[] bytes(Sheet sheet, LocalDate day) {
    XRLog.setLoggingEnabled(false);
    String html = SheetHtml.forPdf(sheet);
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.usePdfUaAccessibility(true);
    builder.withHtmlContent(html, null);
    builder.withProducer(PRODUCER);
    builder.useSVGDrawer(new SheetSvgDrawer());
    font(builder, "B612", 400, "B612-Regular");
    font(builder, "B612", 700, "B612-Bold");
    font(builder, "B612 Mono", 400, "B612Mono-Regular");
    try (PdfBoxRenderer renderer = builder.buildPdfRenderer();
        PDDocument document = renderer.createPDFKeepOpen()) {
      dated(document, sheet, day);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      // The identifier is made of the content, not of the clock.
      document.setDocumentId(ByteBuffer.wrap(digest(html)).getLong());
      document.save(out);
      return out.toByteArray();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private static void font(PdfRendererBuilder builder, String family, int weight, String file) {
    builder.useFont(
        () -> new ByteArrayInputStream(SheetHtml.resource("fonts/" + file + ".ttf")),
        family,
        weight,
        FontStyle.NORMAL,
        true);
  }

  private static void dated(PDDocument document, Sheet sheet, LocalDate day) {
    Calendar midnight = GregorianCalendar.from(day.atStartOfDay(ZoneOffset.UTC));
    midnight.setTimeZone(TimeZone.getTimeZone("UTC"));
    PDDocumentInformation information = document.getDocumentInformation();
    information.setTitle(sheet.title());
    information.setCreationDate(midnight);
    information.setModificationDate(midnight);
  }

  private static byte[] digest(String html) {
    try {
      return java.security.MessageDigest.getInstance("SHA-256")
          .digest(html.getBytes(StandardCharsets.UTF_8));
    } catch (java.security.NoSuchAlgorithmException impossible) {
      throw new IllegalStateException("every Java platform has SHA-256", impossible);
    }
  }
}
