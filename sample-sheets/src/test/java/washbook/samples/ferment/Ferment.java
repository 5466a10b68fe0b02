package washbook.samples.ferment;

import java.time.LocalDateTime;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;

/**
 * An invented ferment of the co-operative, run forwards: extract falls on a curve, and everything
 * that a log holds follows from it. Invented data.
 *
 * @param name the batch
 * @param originalGravity SG 20/20 before the ferment
 * @param finalGravity SG 20/20 at its end
 * @param days time in which about two thirds are fermented
 * @param warmthC temperature it is kept at
 * @param start when the yeast went in
 */
public record Ferment(
    String name,
    double originalGravity,
    double finalGravity,
    double days,
    double warmthC,
    LocalDateTime start) {

  public static final Ferment PLUM_3 =
      new Ferment("Plum 3", 1.0838, 0.9985, 4.2, 19, LocalDateTime.of(2024, 11, 4, 8, 0));
  public static final Ferment APPLE_7 =
      new Ferment("Apple 7", 1.0524, 0.9992, 5.5, 15, LocalDateTime.of(2024, 11, 9, 18, 30));
  public static final Ferment MOLASSES_2 =
      new Ferment("Molasses 2", 1.0976, 1.0224, 3.1, 26, LocalDateTime.of(2025, 1, 12, 9, 15));
  public static final Ferment SUGAR_4 =
      new Ferment("Sugar 4", 1.0905, 0.9908, 3.6, 24, LocalDateTime.of(2025, 2, 1, 17, 0));

  /** The state after so many days; exactly the original gravity at 0. */
  public Moment at(double day) {
    double originalExtract = SucroseSolution.brix(originalGravity);
    double last = FermentingWash.trueExtract(originalExtract, finalGravity);
    double done = 1 - Math.exp(-Math.pow(Math.max(0, day) / days, 1.6));
    return new Moment(
        this, day, originalExtract, originalExtract - done * (originalExtract - last));
  }

  /** Temperature of the wash in °C to a tenth: it warms itself while it works. */
  public double temperatureC(double day) {
    double age = Math.max(0, day) / days;
    double own = 4 * age * Math.exp(1 - age);
    return Math.round(10 * (warmthC + own + 0.8 * Math.sin(2.3 * day))) / 10.0;
  }

  public Ferment warmer(double byC) {
    return new Ferment(name, originalGravity, finalGravity, days, warmthC + byC, start);
  }

  public Ferment named(String other) {
    return new Ferment(other, originalGravity, finalGravity, days, warmthC, start);
  }
}
