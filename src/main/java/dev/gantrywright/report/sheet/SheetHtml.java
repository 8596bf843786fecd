package dev.gantrywright.report.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;

/** The sheet as one HTML file that needs no other: type and pictures stand in it. */
public final class SheetHtml {
  /** The section that tells event by event what was done. */
  private static final String LOG = "events";

  /** A table of so few rows is not torn over two pages. */
  private static final int MOST_KEPT_TOGETHER = 8;

  private static final int PERCENT = 100;

  private final Sheet sheet;
  private final boolean forPdf;
  private final Markup out = new Markup();
  private final SheetPictures pictures;

  private SheetHtml(Sheet sheet, boolean forPdf) {
    this.sheet = sheet;
    this.forPdf = forPdf;
    this.pictures = new SheetPictures(forPdf);
  }

  /** The file's bytes, UTF-8. */
  public static byte[] bytes(Sheet sheet) {
    return new SheetHtml(sheet, false).document().getBytes(StandardCharsets.UTF_8);
  }

  /** The document as the PDF writer lays it out: fonts come from elsewhere. */
  static String forPdf(Sheet sheet) {
    return new SheetHtml(sheet, true).document();
  }

  private String document() {
    out.raw("<!DOCTYPE html>").line();
    out.open("html", "lang", Sheet.LANGUAGE).line().open("head").line();
    if (!forPdf) {
      out.empty("meta", "charset", "utf-8").line();
      out.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
      out.line();
    }
    out.element("title", sheet.title()).line();
    out.empty("meta", "name", "description", "content", sheet.printer() + ", " + sheet.subtitle());
    out.line();
    out.open("style").raw(style()).close("style").line();
    out.close("head").line().open("body").line();
    out.open("main").line();
    head();
    boolean signed = false;
    for (Section section : sheet.sections()) {
      if (section.id().equals(LOG)) {
        // Ahead of the log, so that nobody is asked to sign an otherwise empty last page.
        signatures();
        signed = true;
      }
      section(section);
    }
    if (!signed) {
      signatures();
    }
    out.close("main").line().close("body").line().close("html").line();
    return out.toString();
  }

  private String style() {
    String css = new String(resource("sheet.css"), StandardCharsets.UTF_8);
    if (forPdf) {
      return css + paged();
    }
    return face("B612", 400, "B612-Regular")
        + face("B612", 700, "B612-Bold")
        + face("B612 Mono", 400, "B612Mono-Regular")
        + css;
  }

  private String paged() {
    return "@page { @bottom-left { content: \""
        + sheet.printer().replaceAll("[^\\p{L}\\p{N} .,()-]", "")
        + " · as-built sheet · "
        + sheet.date()
        + "\"; font: 7.5pt B612; color: #45453f; }"
        + " @bottom-right { content: \"page \" counter(page) \" of \" counter(pages);"
        + " font: 7.5pt B612; color: #45453f; } }\n";
  }

  private static String face(String family, int weight, String file) {
    return "@font-face { font-family: \""
        + family
        + "\"; font-weight: "
        + weight
        + "; src: url(data:font/ttf;base64,"
        + Base64.getEncoder().encodeToString(resource("fonts/" + file + ".ttf"))
        + ") format(\"truetype\"); }\n";
  }

  /** A file that ships with this program. */
  static byte[] resource(String name) {
    try (InputStream in = SheetHtml.class.getResourceAsStream("/dev/gantrywright/report/" + name)) {
      return in.readAllBytes();
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }

  private void head() {
    out.open("header").line();
    out.element("p", "As-built sheet", "class", "kind").line();
    out.element("h1", sheet.printer()).line();
    out.element("p", sheet.subtitle(), "class", "subtitle").line();
    String by = sheet.by().isEmpty() ? "" : ", by " + sheet.by();
    out.element("p", "Made " + sheet.date() + by, "class", "made").line();
    facts(sheet.standing(), "standing");
    out.close("header").line();
  }

  private void section(Section section) {
    out.open("section", "id", section.id()).line();
    out.element("h2", section.title()).line();
    section.blocks().forEach(this::block);
    out.close("section").line();
  }

  private void block(Block block) {
    if (block instanceof Block.Words words) {
      out.element("p", words.text()).line();
    } else if (block instanceof Block.Missing missing) {
      out.open("p", "class", "missing").raw(pictures.sign(Sign.OPEN));
      out.element("strong", missing.what()).text(" " + missing.todo()).close("p").line();
    } else if (block instanceof Block.Facts facts) {
      facts(facts.facts(), "facts");
    } else if (block instanceof Block.Table table) {
      table(table);
    } else if (block instanceof Block.Caution caution) {
      caution(caution);
    } else if (block instanceof Block.Strips strips) {
      out.raw(pictures.strips(strips));
    } else if (block instanceof Block.Curve curve) {
      out.raw(new SheetCurve(curve).markup(pictures));
    }
  }

  private void facts(List<Block.Fact> facts, String kind) {
    out.open("table", "class", kind).line();
    for (Block.Fact fact : facts) {
      out.open("tr").element("th", fact.label(), "scope", "row");
      out.open("td", "class", fact.code() ? "code" : "text");
      cell(fact.value());
      out.close("td").close("tr").line();
    }
    out.close("table").line();
  }

  private void table(Block.Table table) {
    boolean whole = table.rows().size() <= MOST_KEPT_TOGETHER;
    out.open("table", "class", whole ? "rows whole" : "rows").line();
    out.element("caption", table.caption()).line();
    int all = table.columns().stream().mapToInt(Block.Column::share).sum();
    out.open("thead").open("tr");
    for (Block.Column column : table.columns()) {
      String width =
          String.format(Locale.ROOT, "width: %.2f%%", (double) PERCENT * column.share() / all);
      out.element("th", column.head(), "scope", "col", "class", set(column), "style", width);
    }
    out.close("tr").close("thead").line().open("tbody").line();
    for (List<Cell> row : table.rows()) {
      out.open("tr");
      for (int i = 0; i < row.size(); i++) {
        out.open("td", "class", set(table.columns().get(i)));
        cell(row.get(i));
        out.close("td");
      }
      out.close("tr").line();
    }
    out.close("tbody").line().close("table").line();
  }

  private static String set(Block.Column column) {
    return column.set().name().toLowerCase(Locale.ROOT);
  }

  private void cell(Cell cell) {
    if (cell.sign() != Sign.NONE) {
      out.raw(pictures.sign(cell.sign()));
    }
    out.text(cell.text());
  }

  private void caution(Block.Caution caution) {
    out.open("div", "class", "hazard " + caution.word().toLowerCase(Locale.ROOT)).line();
    out.open("p").element("strong", caution.word()).text(" " + caution.hazard()).close("p");
    out.element("p", (caution.avoid() + " " + caution.who()).strip()).close("div").line();
  }

  private void signatures() {
    out.open("section", "id", "signed").line();
    out.element("h2", "Signed").line();
    out.open("table", "class", "signed").line();
    for (String who : List.of("Built by", "Checked by", "Handed over to")) {
      out.open("tr").element("th", who, "scope", "row");
      out.element("td", "name").element("td", "date").element("td", "signature");
      out.close("tr").line();
    }
    out.close("table").line().close("section").line();
  }
}
