package washbook.functions.catalogue;

import static washbook.functions.catalogue.FermentEntries.gravity;
import static washbook.functions.catalogue.Parameter.number;

import java.util.List;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.quantity.Quantity;
import washbook.functions.reading.Refractometer;

/** The refractometer pair. */
final class RefractometerEntries {
  private static final String SOURCE =
      "Index of sucrose: OIV-MA-AS2-02 table II as reprinted in the French order of 14 September"
          + " 2011, annex IV (10 to 30 °Bx), continued by the ICUMSA table of 1974 (from memory)."
          + " Index of ethanol: CRC Handbook of Chemistry and Physics, concentrative properties"
          + " (from memory). Balling's balance as in ABV.";

  private static final String MEANING =
      " The index that alcohol adds is taken into account. Readings at 20 °C, or from an"
          + " instrument that"
          + " allows for the temperature.";

  static final List<CatalogueFunction> ALL =
      List.of(
          CatalogueFunction.named("REFRACTOMETERGRAVITY", Group.READINGS)
              .summary("SG 20/20 of a fermenting wash from refractometer readings alone.")
              .details(
                  "From the reading before the ferment and the one now."
                      + MEANING
                      + " Good to about 0.002 SG. Refuses a current reading above the original one"
                      + " or lower than the wash can ferment to.")
              .takes(
                  number(
                      "originalBrix",
                      Quantity.REFRACTOMETER_BRIX,
                      "Refractometer reading before the ferment."),
                  presentBrix(),
                  factor())
              .source(SOURCE)
              .example("20", "10.5")
              .gives("SG", a -> Refractometer.gravity(a.number(0), a.number(1), a.number(2))),
          CatalogueFunction.named("REFRACTOMETERABV", Group.READINGS)
              .summary("Alcohol in % vol from a refractometer and a hydrometer, original unknown.")
              .details(
                  "Two readings of the same sample settle alcohol and extract together, without a"
                      + " balance of the ferment."
                      + MEANING
                      + " One tenth °Bx moves it by about 0.07 % vol, 0.001 SG by about 0.2. Refuses"
                      + " pairs that no wash shows.")
              .takes(presentBrix(), gravity(), factor())
              .source(SOURCE)
              .example("10.5", "1.010")
              .gives(
                  "% vol",
                  a -> Refractometer.percentVolume(a.number(0), a.number(1), a.number(2))));

  private RefractometerEntries() {}

  private static Parameter presentBrix() {
    return number("presentBrix", Quantity.REFRACTOMETER_BRIX, "Refractometer reading now.");
  }

  private static Parameter factor() {
    return number(
            "factor",
            Quantity.REFRACTOMETER_FACTOR,
            "What the instrument shows in this wash over the true °Bx; 1 for sugar washes.")
        .orElse(1.0);
  }
}
