package washbook.samples.ferment;

import java.time.LocalDateTime;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.Water;

/**
 * The true state of a ferment at one time.
 *
 * @param ferment whose
 * @param day days since its start
 * @param originalExtract % by mass; with sugar added later, of everything put in so far
 * @param trueExtract % by mass now
 */
public record Moment(Ferment ferment, double day, double originalExtract, double trueExtract) {

  public LocalDateTime time() {
    return ferment.start().plusMinutes(Math.round(day * 1440));
  }

  /** Ethanol, % by mass. */
  public double alcoholByMass() {
    return FermentingWash.alcoholByMass(originalExtract, trueExtract);
  }

  /** SG 20/20. */
  public double gravity() {
    return FermentingWash.gravity(originalExtract, trueExtract);
  }

  /** Density in kg/m3 at a temperature: alcoholic and sugary part add up. */
  public double density(double temperatureC) {
    return EthanolWater.density(alcoholByMass() / 100, temperatureC)
        + SucroseSolution.density(trueExtract, temperatureC)
        - Water.density(temperatureC);
  }

  /** % vol at 20 °C. */
  public double abv() {
    return alcoholByMass() * FermentingWash.density20(gravity()) / EthanolWater.ETHANOL_DENSITY_20;
  }

  /** %. */
  public double apparentAttenuation() {
    return 100 * (originalExtract - SucroseSolution.brix(gravity())) / originalExtract;
  }

  /** %. */
  public double realAttenuation() {
    return 100 * (originalExtract - trueExtract) / originalExtract;
  }
}
