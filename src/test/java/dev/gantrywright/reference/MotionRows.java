package dev.gantrywright.reference;

import dev.gantrywright.catalog.Belt;
import dev.gantrywright.catalog.Catalog;
import dev.gantrywright.catalog.MotorFrame;
import dev.gantrywright.catalog.Screw;
import dev.gantrywright.physics.BeltGeometry;
import dev.gantrywright.physics.DeltaDrive;
import dev.gantrywright.physics.ScrewGeometry;
import dev.gantrywright.physics.StepsPerMm;
import dev.gantrywright.physics.TwoBeltDrive;
import java.text.DecimalFormat;
import java.util.stream.Collectors;

/** Group 6: drive trains, belts, screws and frames. */
final class MotionRows extends GroupRows {
  private static final Catalog CATALOG = Catalog.shipped();

  MotionRows() {
    super("G06_motion");
    formula(
        "spm_belt",
        StepsPerMm.class,
        row ->
            StepsPerMm.belt(
                steps(row),
                row.number("micro"),
                row.number("pitch"),
                row.number("teeth"),
                row.number("gear")));
    formula(
        "spm_screw",
        StepsPerMm.class,
        row ->
            StepsPerMm.screw(
                steps(row), row.number("micro"), row.number("lead"), row.number("gear")));
    formula(
        "spm_wheel",
        StepsPerMm.class,
        row ->
            StepsPerMm.wheel(
                steps(row), row.number("micro"), row.number("dia"), row.number("gear")));
    formula("step_um", StepsPerMm.class, row -> StepsPerMm.resolutionMm(row.number("spm")) * 1e3);
    formula("in2mm", BeltGeometry.class, row -> BeltGeometry.millimetres(row.number("inch")));
    formula(
        "pitch_dia",
        BeltGeometry.class,
        row -> BeltGeometry.pitchDiameterMm(row.whole("teeth"), row.number("pitch")));
    formula(
        "lead",
        ScrewGeometry.class,
        row -> ScrewGeometry.leadMm(row.number("pitch"), row.whole("starts")));
    formula(
        "starts",
        ScrewGeometry.class,
        row -> ScrewGeometry.starts(row.number("lead"), row.number("pitch")));
    formula(
        "tr_d2",
        ScrewGeometry.class,
        row -> ScrewGeometry.pitchDiameterMm(row.number("d"), row.number("p")));
    formula(
        "tr_d3",
        ScrewGeometry.class,
        row ->
            ScrewGeometry.screwMinorDiameterMm(
                row.number("d"), row.number("p"), ScrewGeometry.clearanceMm(row.number("p"))));
    formula(
        "tr_D4",
        ScrewGeometry.class,
        row -> ScrewGeometry.nutMajorDiameterMm(row.number("d"), row.number("ac")));
    formula(
        "corexy_a",
        TwoBeltDrive.class,
        row -> TwoBeltDrive.motorA(row.number("x"), row.number("y")));
    formula(
        "corexy_b",
        TwoBeltDrive.class,
        row -> TwoBeltDrive.motorB(row.number("x"), row.number("y")));
    formula(
        "corexy_x", TwoBeltDrive.class, row -> TwoBeltDrive.x(row.number("a"), row.number("b")));
    formula(
        "corexy_y", TwoBeltDrive.class, row -> TwoBeltDrive.y(row.number("a"), row.number("b")));
    formula(
        "delta_h",
        DeltaDrive.class,
        row ->
            DeltaDrive.carriageMm(
                row.number("R"),
                row.number("L"),
                row.number("deg"),
                row.number("x"),
                row.number("y"),
                row.number("z")));
  }

  private static double steps(HandbookRow row) {
    return StepsPerMm.fullSteps(row.number("angle"));
  }

  @Override
  protected Use fact(HandbookRow row) {
    String quantity = row.quantity();
    if (quantity.startsWith("belt pitch ")) {
      return Use.number(
          CATALOG.belt(quantity.substring(11)).map(Belt::pitchMm).orElseThrow(), Catalog.class);
    }
    if (row.has("thread")) {
      return Use.number(
          CATALOG.screw(row.text("thread")).map(Screw::pitchMm).orElseThrow(), Catalog.class);
    }
    if (row.has("frame")) {
      return Use.number(frame(row.whole("frame")), Catalog.class);
    }
    if (row.has("lead")) {
      return Use.text(ballLead(row.number("lead")) ? "yes" : "no", Catalog.class);
    }
    if (quantity.startsWith("pitches listed for Tr")) {
      String diameter = quantity.replaceAll("\\D*(\\d+).*", "$1");
      return Use.text(pitches(Double.parseDouble(diameter)), Catalog.class);
    }
    return switch (quantity) {
      case "belt types in ISO 13050:1999" -> Use.text(types1999(), Catalog.class);
      case "smallest pitch in ISO 13050:1999" -> Use.number(smallest1999(), Catalog.class);
      case "ISO 13050:2014 R and S systems list 3M and 5M pitches too" ->
          Use.text(
              CATALOG.belt("3M").isPresent() && CATALOG.belt("5M").isPresent() ? "yes" : "no",
              Catalog.class);
      default -> Use.none("a remark in words");
    };
  }

  private static double frame(int size) {
    return CATALOG.frames().stream()
        .filter(frame -> frame.designation().equals("NEMA " + size))
        .mapToDouble(MotorFrame::boltSpacingMm)
        .findFirst()
        .orElseThrow();
  }

  private static boolean ballLead(double lead) {
    return CATALOG.screws().stream()
        .anyMatch(screw -> screw.standard().equals("ISO 3408-2") && screw.pitchMm() == lead);
  }

  private static String pitches(double diameter) {
    return CATALOG.screws().stream()
        .filter(screw -> screw.standard().equals("ISO 2904") && screw.diameterMm() == diameter)
        .map(screw -> new DecimalFormat("0.##").format(screw.pitchMm()).replace(',', '.'))
        .collect(Collectors.joining(" and "));
  }

  private static String types1999() {
    return CATALOG.belts().stream()
        .filter(belt -> belt.source().startsWith("ISO 13050:1999"))
        .map(Belt::designation)
        .collect(Collectors.joining(" "));
  }

  private static double smallest1999() {
    return CATALOG.belts().stream()
        .filter(belt -> belt.source().startsWith("ISO 13050:1999"))
        .mapToDouble(Belt::pitchMm)
        .min()
        .orElseThrow();
  }
}
