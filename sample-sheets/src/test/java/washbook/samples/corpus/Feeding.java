package washbook.samples.corpus;

import static washbook.samples.corpus.PlainLogs.HYDROMETER;

import java.util.ArrayList;
import java.util.List;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.WashKind;
import washbook.samples.ferment.Entry;
import washbook.samples.ferment.Ferment;
import washbook.samples.ferment.Moment;
import washbook.samples.ferment.Thermometer;

/** A sugar wash of 25 L that gets 2 kg of sugar more when it is half done. */
final class Feeding {
  /** The entry after which everything counts the added sugar. */
  static final int FIRST_AFTER = 5;

  private static final Ferment FIRST =
      new Ferment("Sugar 4", 1.0655, 0.9935, 3, 24, Ferment.SUGAR_4.start());
  private static final double LITRES = 25;
  private static final double KILOGRAMS = 2;
  private static final double FED_AFTER_DAYS = 3;

  private Feeding() {}

  static List<Entry> sugarWash() {
    List<Entry> entries =
        new ArrayList<>(Entry.readings(FIRST, HYDROMETER, Thermometer.C, 0, 1, 2, 3));
    Moment before = FIRST.at(FED_AFTER_DAYS);
    double mass = LITRES * FermentingWash.density20(FIRST.originalGravity()) / 1000;
    // What has left as gas and yeast is lighter than the error of the volume: left out.
    double alcohol = before.alcoholByMass() * mass / (mass + KILOGRAMS);
    double extract = (before.trueExtract() * mass + 100 * KILOGRAMS) / (mass + KILOGRAMS);
    double original = WashKind.MALT.originalExtract(alcohol, extract);
    entries.add(
        new Entry(
                new Moment(FIRST, FED_AFTER_DAYS + 1.0 / 24, original, extract),
                HYDROMETER,
                Thermometer.C,
                FIRST.temperatureC(FED_AFTER_DAYS))
            .withoutReading("Sugar added (kg)", KILOGRAMS)
            .put("Notes", "2 kg sugar, stirred in"));
    double last = FermentingWash.trueExtract(original, 0.9925);
    for (double day : new double[] {0.25, 1, 2, 3.5, 5, 8}) {
      double left = Math.exp(-Math.pow(day / 3.5, 1.4));
      double now = last + (extract - last) * left;
      entries.add(
          new Entry(
                  new Moment(FIRST, FED_AFTER_DAYS + day, original, now),
                  HYDROMETER,
                  Thermometer.C,
                  FIRST.temperatureC(FED_AFTER_DAYS + day))
              .loose(0.15));
    }
    return entries;
  }
}
