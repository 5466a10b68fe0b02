package washbook.functions.catalogue;

import static washbook.functions.catalogue.Parameter.number;

import java.util.List;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.quantity.Quantity;
import washbook.functions.reading.Hydrometer;

/** Functions that make a reading right. */
final class ReadingEntries {
  private static final Parameter TEMPERATURE =
      number("temperatureC", Quantity.SUGAR_TEMPERATURE, "Temperature of the wash at the reading.");

  private static final Parameter CALIBRATION =
      number(
              "calibrationC",
              Quantity.CALIBRATION_TEMPERATURE,
              "Temperature at which the instrument is calibrated.")
          .orElse(20.0);

  static final List<CatalogueFunction> ALL =
      List.of(
          CatalogueFunction.named("CORRECTEDGRAVITY", Group.READINGS)
              .summary("SG 20/20 from a hydrometer reading at any temperature.")
              .details(
                  "Takes into account the expansion of the wash and of the glass and the"
                      + " instrument's own"
                      + " calibration temperature. With the original gravity the alcohol's own"
                      + " expansion is taken into account too (about 0.1 % vol in a warm,"
                      + " finished wash)."
                      + " By the balance of MALT: another kind of wash moves it by less than 0.0001"
                      + " SG. Above 40 °C, where the formula of ethanol and water ends, it is"
                      + " continued to 60 °C: let such a sample cool. Refuses a reading lower than a"
                      + " wash of that original gravity can ferment to.")
              .takes(
                  number("reading", Quantity.GRAVITY, "What the hydrometer shows."),
                  TEMPERATURE,
                  CALIBRATION,
                  number(
                          "originalGravity",
                          Quantity.ORIGINAL_GRAVITY,
                          "SG 20/20 before the ferment; leave out for an unfermented wash.")
                      .orNothing(),
                  number(
                          "offset",
                          Quantity.GRAVITY_OFFSET,
                          "What the instrument shows too much: its reading in water at its"
                              + " calibration temperature less 1.000.")
                      .orElse(0.0))
              .source(
                  "ICUMSA SPS-4 (1998); OIML R 22:1975; glass 25e-6 per K: NBS Circular C440"
                      + " (1942); Tabarie's additivity.")
              .example("1.000", "30", "20", "1.085")
              .portable()
              .gives(
                  "SG",
                  a ->
                      a.given(3)
                          ? Hydrometer.correctedGravity(
                              a.number(0), a.number(1), a.number(2), a.number(3), a.number(4))
                          : Hydrometer.correctedGravity(
                              a.number(0), a.number(1), a.number(2), a.number(4))),
          CatalogueFunction.named("CORRECTEDBRIX", Group.READINGS)
              .summary("Degrees Brix at 20 °C from a Brix hydrometer at any temperature.")
              .details(
                  "For sugar solutions without alcohol. Takes into account the expansion of the"
                      + " wash and of the glass.")
              .takes(
                  number("reading", Quantity.BRIX, "What the hydrometer shows."),
                  TEMPERATURE,
                  CALIBRATION,
                  number(
                          "offset",
                          Quantity.BRIX_OFFSET,
                          "What the instrument shows too much: its reading in water at its"
                              + " calibration temperature.")
                      .orElse(0.0))
              .source(
                  "ICUMSA SPS-4 (1998); glass 25e-6 per K; agrees with the correction table of NBS"
                      + " Circular C440 (1942, from memory) within 0.035 °Bx from 10 to 30 °C, 0.055"
                      + " up to 45 °C and 0.105 down to 0 °C.")
              .example("20", "30")
              .portable()
              .gives(
                  "°Bx",
                  a ->
                      Hydrometer.correctedBrix(
                          a.number(0), a.number(1), a.number(2), a.number(3))));

  private ReadingEntries() {}
}
