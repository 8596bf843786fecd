package dev.gantrywright.physics;

/**
 * Coil current of stepper drivers. VREF drivers regulate the peak; scaled drivers state the RMS.
 *
 * <p>Source: A4988 and DRV8825 data sheets (ITrip = VREF / (gain Rs), gain 8 and 5); TMC2209 data
 * sheet rev 1.03 section 9 (IRMS = (CS+1)/32 VFS/(Rs + 20 mΩ)/√2); TMC5160 data sheet (global
 * scaler of 256ths, no 20 mΩ). Currents in A, resistances in Ω, voltages in V.
 */
public final class DriverCurrent {
  private DriverCurrent() {}

  /** Peak current of a VREF driver: VREF / (gain Rs). */
  public static double vrefPeakAmps(double vrefVolts, double gain, double senseOhms) {
    OutOfDomain.notNegative("VREF in V", vrefVolts);
    OutOfDomain.positive("the gain", gain);
    return vrefVolts / (gain * OutOfDomain.positive("the sense resistor in ohm", senseOhms));
  }

  /** The VREF in V that gives a peak current. */
  public static double vrefVolts(double peakAmps, double gain, double senseOhms) {
    OutOfDomain.notNegative("the current in A", peakAmps);
    OutOfDomain.positive("the gain", gain);
    return peakAmps * gain * OutOfDomain.positive("the sense resistor in ohm", senseOhms);
  }

  /** Voltage across the sense resistor at which a VREF driver trips. */
  public static double tripVolts(double vrefVolts, double gain) {
    return OutOfDomain.notNegative("VREF in V", vrefVolts) / OutOfDomain.positive("the gain", gain);
  }

  /**
   * RMS current of a driver with a current scale.
   *
   * @param scale the scale CS, 0 to 31
   * @param fullScaleVolts voltage at full scale, such as 0.325
   * @param senseOhms sense resistor
   * @param internalOhms what the IC adds to it, such as 0.02
   */
  public static double scaledRmsAmps(
      int scale, double fullScaleVolts, double senseOhms, double internalOhms) {
    OutOfDomain.between("the current scale", scale, 0, 31);
    return (scale + 1) / 32.0 * fullRms(fullScaleVolts, senseOhms, internalOhms);
  }

  /** As {@link #scaledRmsAmps}, with VREF taking a share of its top voltage off. */
  public static double scaledRmsAmps(
      int scale,
      double fullScaleVolts,
      double senseOhms,
      double internalOhms,
      double vrefVolts,
      double vrefTopVolts) {
    OutOfDomain.between("VREF in V", vrefVolts, 0, vrefTopVolts);
    return scaledRmsAmps(scale, fullScaleVolts, senseOhms, internalOhms)
        * (vrefVolts / vrefTopVolts);
  }

  /** As {@link #scaledRmsAmps}, with a global scaler of 1 to 256 (256 is full). */
  public static double globalRmsAmps(
      int globalScaler, int scale, double fullScaleVolts, double senseOhms) {
    OutOfDomain.between("the global scaler", globalScaler, 1, 256);
    return globalScaler / 256.0 * scaledRmsAmps(scale, fullScaleVolts, senseOhms, 0);
  }

  /**
   * The largest scale whose RMS current does not exceed the wanted one; 0 is the least there is.
   */
  public static int scaleFor(
      double rmsAmps, double fullScaleVolts, double senseOhms, double internalOhms) {
    OutOfDomain.positive("the current in A", rmsAmps);
    double share = rmsAmps / fullRms(fullScaleVolts, senseOhms, internalOhms);
    return (int) Rounded.within((long) Math.floor(32 * share + 1e-9) - 1, 0, 31);
  }

  private static double fullRms(double fullScaleVolts, double senseOhms, double internalOhms) {
    OutOfDomain.positive("the full-scale voltage in V", fullScaleVolts);
    OutOfDomain.positive("the sense resistor in ohm", senseOhms);
    OutOfDomain.notNegative("the internal resistance in ohm", internalOhms);
    return fullScaleVolts / (senseOhms + internalOhms) / Math.sqrt(2);
  }

  public static double peakOfRms(double rmsAmps) {
    return rmsAmps * Math.sqrt(2);
  }

  public static double rmsOfPeak(double peakAmps) {
    return peakAmps / Math.sqrt(2);
  }

  /**
   * Least coil current that voltage-mode chopping still regulates by itself: blank time x chopper
   * frequency x supply / coil resistance (TMC2209 data sheet p.39).
   *
   * @param blankClocks blank time in clocks
   * @param chopperPerClock chopper frequency over clock frequency, such as 2/1024
   */
  public static double voltageModeLeastAmps(
      double blankClocks, double chopperPerClock, double supplyVolts, double coilOhms) {
    OutOfDomain.positive("the coil resistance in ohm", coilOhms);
    return blankClocks * chopperPerClock * supplyVolts / coilOhms;
  }

  /** Speed of one VACTUAL unit in microsteps/s: fclk / 2^24 (TMC2209 data sheet p.64). */
  public static double velocityUnitHertz(double clockHz) {
    return OutOfDomain.positive("the clock in Hz", clockHz) / (1 << 24);
  }
}
