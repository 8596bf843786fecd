package dev.gantrywright.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.Test;

class SheetPdfTest {
  private static final LocalDate DAY = LocalDate.of(2026, 3, 2);
  private static final byte[] PDF = SheetPdf.bytes(SheetSample.sheet(), DAY);

  /** 14 mm in points, less half a point for rounding. */
  private static final double MARGIN = 14 / 25.4 * 72 - 0.5;

  @Test
  void sameSheetSameBytes() {
    assertThat(SheetPdf.bytes(SheetSample.sheet(), DAY)).isEqualTo(PDF);
  }

  @Test
  void hasTitleLanguageAndMark() throws Exception {
    try (PDDocument document = Loader.loadPDF(PDF)) {
      assertThat(document.getDocumentInformation().getTitle())
          .isEqualTo(SheetSample.LONG + ": as-built sheet");
      assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en");
      assertThat(document.getDocumentCatalog().getMarkInfo().isMarked()).isTrue();
      assertThat(document.getDocumentCatalog().getViewerPreferences().displayDocTitle()).isTrue();
      String xmp =
          new String(
              document.getDocumentCatalog().getMetadata().toByteArray(),
              java.nio.charset.StandardCharsets.UTF_8);
      assertThat(xmp).contains("pdfuaid");
      document
          .getPages()
          .forEach(page -> assertThat(page.getMediaBox().getHeight()).isBetween(841f, 842f));
    }
  }

  @Test
  void isTaggedWithHeadingsTablesAndFigures() throws Exception {
    try (PDDocument document = Loader.loadPDF(PDF)) {
      TreeSet<String> tags = new TreeSet<>();
      List<String> figures = new ArrayList<>();
      collect(document.getDocumentCatalog().getStructureTreeRoot(), tags, figures);

      assertThat(tags).contains("H1", "H2", "P", "Table", "TR", "TH", "TD", "Figure");
      assertThat(figures).isNotEmpty().doesNotContainNull().doesNotContain("");
      assertThat(figures).contains("warning", "auxiliary0Max: triggered 1 time, first at 0.0");
    }
  }

  private static void collect(PDStructureNode node, TreeSet<String> tags, List<String> figures) {
    for (Object kid : node.getKids()) {
      if (kid instanceof PDStructureElement element) {
        tags.add(element.getStructureType());
        if (element.getStructureType().equals("Figure")) {
          figures.add(element.getAlternateDescription());
        }
        collect(element, tags, figures);
      }
    }
  }

  @Test
  void everyTextIsThereAndInsideTheMargins() throws Exception {
    StringBuilder all = new StringBuilder();
    List<String> outside = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(PDF)) {
      new PDFTextStripper() {
        @Override
        protected void processTextPosition(TextPosition text) {
          all.append(text.getUnicode());
          double right = text.getXDirAdj() + text.getWidthDirAdj();
          if (text.getXDirAdj() < MARGIN || right > text.getPageWidth() - MARGIN) {
            outside.add(text.getUnicode() + " at " + text.getXDirAdj());
          }
        }
      }.getText(document);
    }

    assertThat(outside).isEmpty();
    String found = all.toString().replaceAll("\\s", "");
    for (String word : SheetSample.words()) {
      assertThat(found).contains(word);
    }
  }

  @Test
  void textsOfNeighbouringCellsDoNotOverlap() throws Exception {
    List<String> overlaps = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(PDF)) {
      new PDFTextStripper() {
        private TextPosition last;

        @Override
        protected void processTextPosition(TextPosition text) {
          boolean sameLine = last != null && Math.abs(last.getYDirAdj() - text.getYDirAdj()) < 0.1;
          if (sameLine
              && text.getXDirAdj() > last.getXDirAdj()
              && text.getXDirAdj() + 0.6 < last.getXDirAdj() + last.getWidthDirAdj()) {
            overlaps.add(last.getUnicode() + text.getUnicode() + " at " + text.getXDirAdj());
          }
          last = text;
        }
      }.getText(document);
    }

    assertThat(overlaps).isEmpty();
  }

  @Test
  void fontsAreInTheFile() throws Exception {
    try (PDDocument document = Loader.loadPDF(PDF)) {
      for (COSName name : document.getPage(0).getResources().getFontNames()) {
        assertThat(embedded(document, name)).as(name.getName()).isTrue();
      }
    }
  }

  private static boolean embedded(PDDocument document, COSName name) throws IOException {
    return document.getPage(0).getResources().getFont(name).isEmbedded();
  }
}
