package dev.gantrywright.reference;

import dev.gantrywright.physics.Fopdt;
import dev.gantrywright.physics.Gains;
import dev.gantrywright.physics.UltimatePoint;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Group 12: controller tuning. */
final class ControllerRows extends GroupRows {
  private static final Pattern RULE =
      Pattern.compile("(Z-N|T-L) (P|PI|PID) (Kc|Ti|Td).*?Ku=([\\d.]+)(?: Pu=([\\d.]+))?");

  ControllerRows() {
    super("G12_pid");
    formula("div_", UltimatePoint.class, ControllerRows::closedLoop);
    formula("mul_", UltimatePoint.class, ControllerRows::closedLoop);
    formula("zn_ol_pi_kc", Fopdt.class, row -> process(row).zieglerNicholsPi().kc());
    formula("zn_ol_pi_ti", Fopdt.class, row -> process(row).zieglerNicholsPi().tiSeconds());
    formula("zn_ol_pid_kc", Fopdt.class, row -> process(row).zieglerNicholsPid().kc());
    formula("cc_pi_kc", Fopdt.class, row -> process(row).cohenCoonPi().kc());
    formula("cc_pi_ti", Fopdt.class, row -> process(row).cohenCoonPi().tiSeconds());
    formula("cc_pid_kc", Fopdt.class, row -> process(row).cohenCoonPid().kc());
    formula("cc_pid_ti", Fopdt.class, row -> process(row).cohenCoonPid().tiSeconds());
    formula("cc_pid_td", Fopdt.class, row -> process(row).cohenCoonPid().tdSeconds());
    formula("simc_kc", Fopdt.class, row -> process(row).simcPi(row.number("tauc")).kc());
    formula("simc_ti", Fopdt.class, row -> process(row).simcPi(row.number("tauc")).tiSeconds());
    formula("ku_fopdt", Fopdt.class, row -> process(row).ultimate().ku());
    formula("pu_fopdt", Fopdt.class, row -> process(row).ultimate().puSeconds());
    formula(
        "relay_ku",
        UltimatePoint.class,
        row -> UltimatePoint.ofRelay(row.number("d"), row.number("a"), 1).ku());
    formula("ki", Gains.class, row -> new Gains(row.number("kc"), row.number("ti"), 0).ki());
    formula("kd", Gains.class, row -> new Gains(row.number("kc"), 1, row.number("td")).kd());
  }

  /** Rows that need only some of the three numbers leave the others out; they do not matter. */
  private static Fopdt process(HandbookRow row) {
    return new Fopdt(
        row.has("K") ? row.number("K") : 1,
        row.has("tau") ? row.number("tau") : 100,
        row.number("theta"));
  }

  /** "Z-N PI Kc for Ku=20 Pu=30": the rule is named in the quantity, the inputs are its terms. */
  private static double closedLoop(HandbookRow row) {
    Matcher rule = RULE.matcher(row.quantity());
    if (!rule.find()) {
      throw new IllegalStateException(row.id() + ": " + row.quantity());
    }
    double pu = rule.group(5) == null ? 1 : Double.parseDouble(rule.group(5));
    UltimatePoint point = new UltimatePoint(Double.parseDouble(rule.group(4)), pu);
    boolean classic = row.quantity().contains("classic");
    Gains gains =
        switch (rule.group(1) + " " + rule.group(2)) {
          case "Z-N P" -> point.zieglerNicholsP();
          case "Z-N PI" -> classic ? point.classicPi() : point.zieglerNicholsPi();
          case "Z-N PID" -> classic ? point.classicPid() : point.zieglerNicholsPid();
          case "T-L PI" -> point.tyreusLuybenPi();
          default -> point.tyreusLuybenPid();
        };
    return switch (rule.group(3)) {
      case "Kc" -> gains.kc();
      case "Ti" -> gains.tiSeconds();
      default -> gains.tdSeconds();
    };
  }

  @Override
  protected Use fact(HandbookRow row) {
    UltimatePoint unit = new UltimatePoint(1, 1);
    return switch (row.quantity()) {
      case "gain margin left by Z-N P rule" ->
          Use.number(1 / unit.zieglerNicholsP().kc(), UltimatePoint.class);
      case "classic (1942) decimals" ->
          Use.text(
              "P "
                  + unit.zieglerNicholsP().kc()
                  + " Ku, PI "
                  + unit.classicPi().kc()
                  + " Ku, PID "
                  + unit.classicPid().kc()
                  + " Ku",
              UltimatePoint.class);
      default -> Use.none("a remark in words");
    };
  }
}
