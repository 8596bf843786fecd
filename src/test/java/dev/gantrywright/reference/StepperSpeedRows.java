package dev.gantrywright.reference;

import dev.gantrywright.physics.StepRate;
import dev.gantrywright.physics.StepperSpeed;

/** Group 13: how fast a stepper can turn. */
final class StepperSpeedRows extends GroupRows {
  StepperSpeedRows() {
    super("G13_stepper_speed");
    formula(
        "vl_rps",
        StepperSpeed.class,
        row ->
            StepperSpeed.revolutionsPerSecond(
                row.number("v"), row.number("l_mh") * 1e-3, row.number("i"), row.number("spr")));
    formula(
        "vl_tstep_ms",
        StepperSpeed.class,
        row ->
            StepperSpeed.fullStepSeconds(
                    row.number("v"), row.number("l_mh") * 1e-3, row.number("i"))
                * 1e3);
    formula(
        "v_needed",
        StepperSpeed.class,
        row ->
            StepperSpeed.supplyVolts(
                row.number("l_mh") * 1e-3, row.number("i"), row.number("fullsteps_s")));
    formula(
        "lr_ms",
        StepperSpeed.class,
        row -> StepperSpeed.timeConstantSeconds(row.number("l_mh") * 1e-3, row.number("r")) * 1e3);
    formula("step_rate", StepRate.class, row -> StepRate.hertz(row.number("spm"), row.number("v")));
    formula(
        "speed_of",
        StepRate.class,
        row -> StepRate.speedMmPerSecond(row.number("rate"), row.number("spm")));
    formula(
        "min_speed_limit",
        StepRate.class,
        row -> StepRate.speedMmPerSecond(row.number("rate_khz") * 1e3, row.number("spm")));
    formula(
        "pps_rpm",
        StepRate.class,
        row -> StepRate.rpm(row.number("pps"), row.number("spr"), row.number("micro")));
  }

  @Override
  protected Use fact(HandbookRow row) {
    return Use.none("a remark in words");
  }
}
