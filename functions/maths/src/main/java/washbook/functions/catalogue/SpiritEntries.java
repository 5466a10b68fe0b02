package washbook.functions.catalogue;

import static washbook.functions.catalogue.Parameter.number;

import java.util.List;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.liquid.EthanolWater;
import washbook.functions.quantity.Quantity;
import washbook.functions.reading.Alcoholometer;
import washbook.functions.spirit.Obscuration;
import washbook.functions.spirit.Spirit;

/** Functions that read and measure spirit. */
final class SpiritEntries {
  private static final String OIML = "OIML R 22:1975, general formula.";
  private static final String ICE =
      " Refuses a temperature at which ice leaves the mixture (freezing points: CRC Handbook of"
          + " Chemistry and Physics, from memory).";

  static final List<CatalogueFunction> ALL =
      List.of(
          CatalogueFunction.named("TRUESTRENGTH", Group.SPIRIT)
              .summary("% vol at 20 °C from an alcoholometer reading at any temperature.")
              .details(
                  "Counts the expansion of the spirit and of the glass. For spirit without sugar"
                      + " (see OBSCURATION). The scale is taken as % vol with both volumes at"
                      + " calibrationC."
                      + ICE)
              .takes(
                  number("reading", Quantity.PERCENT_VOL, "What the alcoholometer shows."),
                  number(
                      "temperatureC",
                      Quantity.SPIRIT_TEMPERATURE,
                      "Temperature of the spirit at the reading."),
                  number(
                          "calibrationC",
                          Quantity.CALIBRATION_TEMPERATURE,
                          "Temperature at which the instrument is calibrated.")
                      .orElse(20.0))
              .source(OIML + " Glass 25e-6 per K; agrees with 27 CFR 30.61 within 0.05 proof.")
              .example("42", "25")
              .portable()
              .gives(
                  "% vol", a -> Alcoholometer.trueStrength(a.number(0), a.number(1), a.number(2))),
          CatalogueFunction.named("SPIRITDENSITY", Group.SPIRIT)
              .summary("Density of a spirit in kg/m3.")
              .details("For spirit without sugar." + ICE)
              .takes(strength(), temperature())
              .source(OIML)
              .example("40", "15")
              .gives("kg/m3", a -> Spirit.density(a.number(0), a.number(1))),
          CatalogueFunction.named("VOLUMEAT20", Group.SPIRIT)
              .summary("Litres at 20 °C of a spirit measured at another temperature.")
              .details(
                  "The vessel's own expansion is left out. Mind the order: temperature before"
                      + " strength here, after it in PUREALCOHOL; a swap is named in the reason where"
                      + " the values tell."
                      + ICE)
              .takes(
                  number("litres", Quantity.LITRES, "Litres as measured."),
                  number(
                      "temperatureC",
                      Quantity.SPIRIT_TEMPERATURE,
                      "Temperature of the spirit when it was measured."),
                  strength())
              .takenForEachOther("temperatureC", "strength")
              .source(OIML)
              .example("100", "5", "65")
              .gives("L", a -> Spirit.volumeAt20(a.number(0), a.number(1), a.number(2))),
          CatalogueFunction.named("PUREALCOHOL", Group.SPIRIT)
              .summary("Litres of pure alcohol in a spirit, at 20 °C.")
              .details(
                  "Litres measured at another temperature are first brought to 20 °C. Mind the"
                      + " order: strength before temperature here, after it in VOLUMEAT20; a swap is"
                      + " named in the reason where the values tell."
                      + ICE)
              .takes(
                  number("litres", Quantity.LITRES, "Litres as measured."),
                  strength(),
                  temperature())
              .takenForEachOther("strength", "temperatureC")
              .source(OIML)
              .example("10", "65")
              .portable()
              .gives("L", a -> Spirit.pureAlcohol(a.number(0), a.number(1), a.number(2))),
          CatalogueFunction.named("LITRESBYWEIGHT", Group.SPIRIT)
              .summary("Litres of spirit at 20 °C from what a scale shows.")
              .details(
                  "Weighing needs no thermometer. The lift of the air (1.2 kg/m3, weights of 8000"
                      + " kg/m3) is taken into account: about 0.1 %.")
              .takes(
                  number("kilograms", Quantity.KILOGRAMS, "Net reading of the scale."), strength())
              .source(OIML + " Weights: OIML D 28:2004; air: common practice, no source.")
              .example("9", "65")
              .gives("L", a -> Spirit.volumeOfWeight(a.number(0), a.number(1))),
          CatalogueFunction.named("ABVTOABW", Group.SPIRIT)
              .summary("% by mass of a strength in % vol at 20 °C.")
              .takes(strength())
              .source(OIML + " % vol = 100 p density(p) / density(1).")
              .example("40")
              .gives("% mass", a -> 100 * EthanolWater.massFraction(a.number(0))),
          CatalogueFunction.named("ABWTOABV", Group.SPIRIT)
              .summary("% vol at 20 °C of a strength in % by mass.")
              .takes(number("percentMass", Quantity.PERCENT_MASS, "Strength in % by mass."))
              .source(OIML + " % vol = 100 p density(p) / density(1).")
              .example("33.3")
              .gives("% vol", a -> EthanolWater.percentVolume(a.number(0) / 100)),
          CatalogueFunction.named("OBSCURATION", Group.SPIRIT)
              .summary("True % vol of a spirit whose dissolved solids hide some of its strength.")
              .details(
                  "0.1 g of solids in 100 mL hides 0.2 % vol. Weigh what a measured sample leaves"
                      + " when it is dried. For spirits of 40 to 50 % vol: refuses a result outside"
                      + " that and more than 0.6 g per 100 mL; distil a sample instead.")
              .takes(
                  number(
                      "apparent", Quantity.OBSCURED_STRENGTH, "Corrected alcoholometer strength."),
                  number("gramsPer100mL", Quantity.SOLIDS, "Grams of solids in 100 mL."))
              .source(
                  "27 CFR 30.32(a): 0.1 g per 100 mL hides 0.4 proof, 80 to 100 proof, up to 600 mg"
                      + " per 100 mL.")
              .example("40", "0.3")
              .gives("% vol", a -> Obscuration.trueStrength(a.number(0), a.number(1))));

  private SpiritEntries() {}

  static Parameter strength() {
    return number("strength", Quantity.PERCENT_VOL, "% vol at 20 °C.");
  }

  private static Parameter temperature() {
    return number(
            "temperatureC",
            Quantity.SPIRIT_TEMPERATURE,
            "Temperature of the spirit; 20 if left out.")
        .orElse(20.0);
  }
}
