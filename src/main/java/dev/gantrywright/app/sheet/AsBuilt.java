package dev.gantrywright.app.sheet;

import dev.gantrywright.app.OpenPrinter;
import dev.gantrywright.patch.PatchPlan;
import dev.gantrywright.record.Timeline;
import dev.gantrywright.report.ProfileFindings;
import dev.gantrywright.report.sheet.Section;
import dev.gantrywright.report.sheet.Sheet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** Makes the as-built sheet of a printer. */
public final class AsBuilt {
  private AsBuilt() {}

  /**
   * The sheet.
   *
   * @param findings of the profile as it stands
   * @param past the printer's history
   * @param day the day that it speaks of
   * @param by who makes it; empty where that is not known
   */
  public static Sheet of(
      OpenPrinter printer, ProfileFindings findings, Timeline past, LocalDate day, String by) {
    PatchPlan plan =
        printer.folder() == null || printer.names() == null
            ? null
            : PatchPlan.of(printer.profile(), printer.names(), printer.folder());
    Subject subject = Subject.of(printer, findings, plan, past);
    List<Section> sections = new ArrayList<>();
    sections.add(CautionPart.section());
    sections.add(PrinterPart.of(subject));
    sections.add(BoardPart.of(subject));
    sections.add(FindingsPart.of(subject));
    sections.add(SettingsPart.of(subject));
    sections.add(BuildPart.build(subject));
    sections.add(BuildPart.load(subject));
    sections.add(ProofPart.of(subject));
    sections.add(TouchPart.of(subject));
    sections.add(CalibrationPart.of(subject));
    sections.add(HeatUpPart.of(subject));
    sections.add(EventsPart.of(subject));
    return new Sheet(
        printer.title(), subtitle(printer), day.toString(), by, Standing.of(subject), sections);
  }

  private static String subtitle(OpenPrinter printer) {
    List<String> parts = new ArrayList<>();
    if (printer.sheet() != null && printer.sheet().name() != null) {
      parts.add(printer.sheet().name());
    }
    if (printer.profile().board().mcu() != null) {
      parts.add(printer.profile().board().mcu());
    }
    if (printer.folder() != null) {
      parts.add(printer.folder().root().toAbsolutePath().normalize().getFileName().toString());
    }
    return parts.isEmpty() ? "no board, no firmware folder" : String.join(" · ", parts);
  }
}
