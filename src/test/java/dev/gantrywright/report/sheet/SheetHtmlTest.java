package dev.gantrywright.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import nu.validator.messages.MessageEmitterAdapter;
import nu.validator.messages.TextMessageEmitter;
import nu.validator.servlet.imagereview.ImageCollector;
import nu.validator.source.SourceCode;
import nu.validator.validation.SimpleDocumentValidator;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

class SheetHtmlTest {
  @Test
  void isValidHtml() throws Exception {
    assertThat(complaints(SheetHtml.bytes(SheetSample.sheet()))).isEmpty();
  }

  @Test
  void theValidatorFindsFaults() throws Exception {
    String broken =
        new String(SheetHtml.bytes(SheetSample.sheet()), StandardCharsets.UTF_8)
            .replace("<h1>", "<h1 colour=\"red\">");

    assertThat(complaints(broken.getBytes(StandardCharsets.UTF_8)))
        .contains("Attribute “colour” not allowed on element “h1”");
  }

  /** What the Nu HTML checker says, errors only; empty where it is content. */
  static String complaints(byte[] html) throws Exception {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SimpleDocumentValidator validator = new SimpleDocumentValidator();
    SourceCode source = validator.getSourceCode();
    MessageEmitterAdapter errors =
        new MessageEmitterAdapter(
            null,
            source,
            false,
            new ImageCollector(source),
            0,
            false,
            new TextMessageEmitter(out, false));
    errors.setErrorsOnly(true);
    errors.setHtml(true);
    validator.setUpMainSchema(
        "http://s.validator.nu/html5-rdfalite.rnc", new org.xml.sax.helpers.DefaultHandler());
    validator.setUpValidatorAndParsers(errors, false, false);
    errors.start(null);
    validator.checkHtmlInputSource(new InputSource(new ByteArrayInputStream(html)));
    errors.end("", "", "");
    return out.toString(StandardCharsets.UTF_8).strip();
  }

  @Test
  void needsNoOtherFile() {
    String html = new String(SheetHtml.bytes(SheetSample.sheet()), StandardCharsets.UTF_8);

    Matcher links = Pattern.compile("(?:src|href)\\s*=|url\\((?!data:)|@import").matcher(html);
    assertThat(links.find()).isFalse();
    assertThat(html).startsWith("<!DOCTYPE html>\n<html lang=\"en\">");
    assertThat(html).contains("<title>" + SheetSample.LONG + ": as-built sheet</title>");
  }

  @Test
  void textsNeverBecomeMarkup() {
    String html = new String(SheetHtml.bytes(SheetSample.sheet()), StandardCharsets.UTF_8);

    assertThat(html).contains("&lt;script&gt;alert(1)&lt;/script&gt; &amp; so on");
    assertThat(html).doesNotContain("<script>");
    assertThat(Markup.escaped("a\u0000b\uFFFEc\uD800d")).isEqualTo("a\uFFFDb\uFFFDc\uFFFDd");
  }

  @Test
  void everyTextColourStandsOutOnPaper() {
    String css = new String(SheetHtml.resource("sheet.css"), StandardCharsets.UTF_8);
    Matcher colours = Pattern.compile("[ ;]color: (#[0-9a-f]{6})").matcher(css);
    int seen = 0;
    while (colours.find()) {
      seen++;
      // 4.5:1 for text: WCAG 2.2, 1.4.3.
      assertThat(contrastOnWhite(colours.group(1))).as(colours.group(1)).isGreaterThan(4.5);
    }
    assertThat(seen).isGreaterThan(3);
    for (Sign sign : Sign.values()) {
      Matcher shapes = Pattern.compile("#[0-9a-f]{6}").matcher(new SheetPictures(false).sign(sign));
      assertThat(shapes.find()).isTrue();
      // 3:1 for signs: WCAG 2.2, 1.4.11.
      assertThat(contrastOnWhite(shapes.group())).as(sign.name()).isGreaterThan(3);
    }
  }

  /** Relative luminance and contrast by WCAG 2.2. */
  private static double contrastOnWhite(String hex) {
    int rgb = Integer.parseInt(hex.substring(1), 16);
    double luminance =
        0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8) + 0.0722 * linear(rgb);
    return 1.05 / (luminance + 0.05);
  }

  private static double linear(int channel) {
    double share = (channel & 0xff) / 255.0;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }
}
