package dev.gantrywright.app;

import dev.gantrywright.physics.Fopdt;
import dev.gantrywright.physics.Gains;
import dev.gantrywright.prove.StepResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * From a recorded step response to a process model and the controller terms that published rules
 * give for it.
 *
 * @param model first order plus dead time, gain in K for full power
 * @param rules name of the rule to its terms, gain in share of full power a kelvin
 * @param fitted the model's own response at the times of the readings, for the plot
 * @param worstKelvin largest distance between readings and model
 */
public record ThermalStudy(
    Fopdt model, Map<String, Gains> rules, List<StepResponse.Point> fitted, double worstKelvin) {

  /**
   * Fits and applies the rules.
   *
   * @throws dev.gantrywright.physics.OutOfDomain when the readings have no step's shape
   */
  public static ThermalStudy of(StepResponse response) {
    Fopdt model =
        Fopdt.fit(
            response.points().stream()
                .map(p -> new Fopdt.Reading(p.seconds(), p.celsius()))
                .toList(),
            response.powerStep());
    Map<String, Gains> rules = new LinkedHashMap<>();
    rules.put("Ziegler–Nichols PI (1942, step response)", model.zieglerNicholsPi());
    rules.put("Ziegler–Nichols PID (1942, step response)", model.zieglerNicholsPid());
    rules.put("Tyreus–Luyben PI (1992)", model.ultimate().tyreusLuybenPi());
    rules.put("Tyreus–Luyben PID (1992)", model.ultimate().tyreusLuybenPid());
    rules.put("SIMC PI (Skogestad 2003, τc = dead time)", model.simcPi(model.deadSeconds()));
    List<StepResponse.Point> fitted = new ArrayList<>();
    double worst = 0;
    double start = response.points().get(0).celsius();
    for (StepResponse.Point point : response.points()) {
      double t = point.seconds() - model.deadSeconds();
      double rise =
          t <= 0
              ? 0
              : model.gain() * response.powerStep() * (1 - Math.exp(-t / model.tauSeconds()));
      fitted.add(new StepResponse.Point(point.seconds(), start + rise));
      worst = Math.max(worst, Math.abs(start + rise - point.celsius()));
    }
    return new ThermalStudy(model, rules, fitted, worst);
  }
}
