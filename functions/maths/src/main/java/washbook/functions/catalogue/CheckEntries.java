package washbook.functions.catalogue;

import static washbook.functions.catalogue.Parameter.number;

import java.util.List;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.quantity.Quantity;
import washbook.functions.reading.HydrometerCheck;
import washbook.functions.reading.RefractometerTemperature;

/** Functions that check instruments. */
final class CheckEntries {
  private static final String SUGAR = "ICUMSA SPS-4 (1998); glass 25e-6 per K.";

  static final List<CatalogueFunction> ALL =
      List.of(
          CatalogueFunction.named("REFRACTOMETERAT20", Group.READINGS)
              .summary("Degrees Brix at 20 °C from a refractometer that does not correct itself.")
              .details(
                  "For juice and sugar solutions before the ferment; what is dissolved beside sugar"
                      + " is left out. Leave instruments alone that correct themselves (ATC).")
              .takes(
                  number("reading", Quantity.BRIX_TO_40, "What the refractometer shows."),
                  number(
                      "temperatureC",
                      Quantity.REFRACTOMETER_TEMPERATURE,
                      "Temperature of the prism and the sample."))
              .source(
                  "OIV-MA-AS2-02 (2012), table I, rows 5 to 17 °C, met within 0.04 °Bx; above 20 °C by"
                      + " the rule of Lorentz and Lorenz, within 0.1 °Bx of water's index up to 30 °C"
                      + " (from memory).")
              .example("22", "12")
              .gives("°Bx", a -> RefractometerTemperature.brixAt20(a.number(0), a.number(1))),
          CatalogueFunction.named("CHECKGRAVITY", Group.READINGS)
              .summary("SG 20/20 of table sugar dissolved in water, both weighed.")
              .details(
                  "A liquid to check a hydrometer with. The air's lift (less than 0.0001 SG) is left"
                      + " out. Refuses a solution above SG 1.190.")
              .takes(sugar(), water())
              .source(SUGAR)
              .example("100", "400")
              .gives("SG", a -> HydrometerCheck.gravity(a.number(0), a.number(1))),
          CatalogueFunction.named("HYDROMETEROFFSET", Group.READINGS)
              .summary("What a hydrometer shows too much in plain water, in SG.")
              .details("Use it as offset of CORRECTEDGRAVITY.")
              .takes(waterReading(), temperature(), calibration())
              .source(SUGAR)
              .example("1.001", "24")
              .gives("SG", a -> HydrometerCheck.offset(a.number(0), a.number(1), a.number(2))),
          CatalogueFunction.named("HYDROMETERSLOPE", Group.READINGS)
              .summary("What a hydrometer shows for a difference in gravity, over the true one.")
              .details(
                  "1 is right. From readings in water and in a sugar solution made by mass, both at"
                      + " one temperature. A reading less the offset has (reading - offset - 1) / slope"
                      + " above water. Refuses a solution less than 20 points above water.")
              .takes(
                  waterReading(),
                  number("solutionReading", Quantity.GRAVITY, "Reading in the sugar solution."),
                  sugar(),
                  water(),
                  temperature().orElse(20.0),
                  calibration())
              .source(SUGAR)
              .example("1.001", "1.084", "100", "400", "24")
              .gives(
                  "",
                  a ->
                      HydrometerCheck.slope(
                          a.number(0),
                          a.number(1),
                          a.number(2),
                          a.number(3),
                          a.number(4),
                          a.number(5))));

  private CheckEntries() {}

  private static Parameter waterReading() {
    return number("waterReading", Quantity.HYDROMETER_IN_WATER, "Reading in plain water.");
  }

  private static Parameter sugar() {
    return number("gramsOfSugar", Quantity.SAMPLE_GRAMS, "Grams of dry table sugar.");
  }

  private static Parameter water() {
    return number("gramsOfWater", Quantity.SAMPLE_GRAMS, "Grams of water.");
  }

  private static Parameter temperature() {
    return number("temperatureC", Quantity.SUGAR_TEMPERATURE, "Temperature of the liquids.");
  }

  private static Parameter calibration() {
    return number(
            "calibrationC",
            Quantity.CALIBRATION_TEMPERATURE,
            "Temperature at which the instrument is calibrated.")
        .orElse(20.0);
  }
}
