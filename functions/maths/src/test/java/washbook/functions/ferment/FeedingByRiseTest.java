package washbook.functions.ferment;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.Answer.Code;
import washbook.functions.RefusedException;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.liquid.FermentingWash;
import washbook.functions.liquid.SucroseSolution;
import washbook.functions.liquid.WashKind;

/** The original gravity of a fed wash, told by its gravity before and after. */
class FeedingByRiseTest {
  private static final double LITRES = 20;

  /** SG just after a feed: alcohol and true extract by the masses, then by their own densities. */
  private static double afterFeed(
      double original, double before, double kilograms, double solids, WashKind kind) {
    double extract = SucroseSolution.brix(original);
    double trueExtract = FermentingWash.trueExtract(extract, before, kind);
    double alcohol = kind.alcoholByMass(extract, trueExtract);
    double madeUp = LITRES * FermentingWash.density20(original) / 1000;
    double mass = madeUp / (1 + kind.fall() * alcohol);
    double whole = mass + kilograms;
    double alcoholNow = alcohol * mass / whole;
    double extractNow = (trueExtract * mass + 100 * kilograms * solids) / whole;
    return EthanolWater.gravity(alcoholNow / 100) + SucroseSolution.gravity(extractNow) - 1;
  }

  private static double fed(double original, double kilograms, double solids) {
    return Feeding.original(
        new double[] {LITRES}, new double[] {original}, new double[] {kilograms}, solids, 1.190);
  }

  @ParameterizedTest
  @CsvSource({
    "1.050, 1.050, 1",
    "1.050, 1.020, 1",
    "1.062, 1.022, 0.5",
    "1.080, 1.000, 2",
    "1.092, 1.030, 0.2",
    "1.110, 1.015, 1.5",
    "1.040, 0.995, 3"
  })
  void aWashThatIsFedByTheMassesHasTheOriginalGravityOfEverything(
      double original, double before, double kilograms) {
    for (String kind : List.of("MALT", "HONEY", "FRUIT")) {
      WashKind wash = WashKind.of(kind);
      for (double solids : new double[] {1, 0.8}) {
        double after = afterFeed(original, before, kilograms, solids, wash);
        assertEquals(
            fed(original, kilograms, solids),
            Feeding.byRise(original, before, after, solids, wash),
            2e-9,
            kind + " " + solids);
      }
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"SUGAR", "MOLASSES", "MALT"})
  void theAlcoholThereBeforeIsOnlyDiluted(String kind) {
    WashKind wash = WashKind.of(kind);
    double original = Feeding.byRise(1.080, 1.020, 1.041, 1, wash);
    Balance before = Balance.of(1.080, 1.020, wash);
    Balance after = Balance.of(original, 1.041, wash);
    double alcohol = wash.alcoholByMass(before.originalExtract(), before.trueExtract());
    double alcoholAfter = wash.alcoholByMass(after.originalExtract(), after.trueExtract());
    double madeUp = 100 + 100 * wash.fall() * alcohol;
    double sugar =
        madeUp
            * (after.originalExtract() - before.originalExtract())
            / (100 - after.originalExtract());
    assertEquals(100 * alcohol, (100 + sugar) * alcoholAfter, 1e-6);
    assertTrue(after.percentVolume() < before.percentVolume());
  }

  @ParameterizedTest
  @ValueSource(strings = {"MALT", "FRUIT", "SUGAR", "HONEY", "MOLASSES"})
  void aHigherReadingAfterwardsMeansMoreSugar(String kind) {
    double last = 1.070;
    for (double after = 1.0205; after < 1.09; after += 0.0005) {
      double now = Feeding.byRise(1.070, 1.020, after, 1, WashKind.of(kind));
      assertTrue(now > last, kind + " at " + after);
      last = now;
    }
  }

  @Test
  void aWashNotYetBegunIsWhatItShows() {
    assertEquals(1.064, Feeding.byRise(1.050, 1.050, 1.064, 1, WashKind.MALT), 1e-9);
    assertEquals(1.064, Feeding.byRise(1.050, 1.051, 1.064, 1, WashKind.MALT), 1e-9);
  }

  @Test
  void aReadingThatTheWashBeforeCannotShowIsOfAStrongerOne() {
    double wanted = Feeding.byRise(1.050, 1.020, 1.066, 1, WashKind.MALT);
    double found =
        Feeding.byRise(
            1.050,
            1.020,
            extract -> extract < SucroseSolution.brix(1.060) ? Double.NaN : 1.066,
            1,
            WashKind.MALT);
    assertEquals(wanted, found, 1e-12);
  }

  @Test
  void whatDoesNotRiseIsRefused() {
    for (double after : new double[] {1.020, 1.010}) {
      assertEquals(Code.CONTRADICTION, refused(1.070, 1.020, after), "after " + after);
    }
    assertEquals(Code.CONTRADICTION, refused(1.040, 0.960, 1.010), "no wash falls so low");
  }

  @Test
  void moreThanAnyWashHoldsIsRefused() {
    assertEquals(Code.TOO_HIGH, refused(1.150, 1.050, 1.120));
    assertEquals(Code.TOO_HIGH, refused(1.150, 1.150, 1.195));
  }

  private static Code refused(double original, double before, double after) {
    return assertThrows(
            RefusedException.class, () -> Feeding.byRise(original, before, after, 1, WashKind.MALT))
        .refusal()
        .code();
  }
}
