package washbook.functions.catalogue;

import static washbook.functions.catalogue.Parameter.number;
import static washbook.functions.catalogue.Parameter.numbers;

import java.util.List;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.quantity.Quantity;
import washbook.functions.spirit.Dilution;

/** Functions that dilute and blend spirit. */
final class DilutionEntries {
  private static final String SOURCE = "Mass balance over OIML R 22:1975, general formula.";
  private static final String BY_MASS =
      " By mass: ethanol and water together take less room than apart. Litres at 20 °C.";

  private static final String CAUTION =
      "Strong spirit and its vapour burn: no flame or spark near it, and good air. No figure here"
          + " says that a spirit is safe to drink; local codes and licensed practice decide.";

  static final List<CatalogueFunction> ALL =
      List.of(
          CatalogueFunction.named("DILUTIONWATER", Group.SPIRIT)
              .summary("Litres of water that bring a spirit down to a strength.")
              .details("Refuses a target above the strength." + BY_MASS)
              .takes(litres(), SpiritEntries.strength(), target())
              .source(SOURCE)
              .caution(CAUTION)
              .example("10", "65", "40")
              .portable()
              .gives("L", a -> Dilution.water(a.number(0), a.number(1), a.number(2))),
          CatalogueFunction.named("DILUTEDVOLUME", Group.SPIRIT)
              .summary("Litres of spirit after it has been diluted to a strength.")
              .details("Refuses a target above the strength." + BY_MASS)
              .takes(litres(), SpiritEntries.strength(), target())
              .source(SOURCE)
              .caution(CAUTION)
              .example("10", "65", "40")
              .gives("L", a -> Dilution.volume(a.number(0), a.number(1), a.number(2))),
          CatalogueFunction.named("SPIRITFORVOLUME", Group.SPIRIT)
              .summary("Litres of a stronger spirit to take for a volume of the target strength.")
              .details("Then dilute with DILUTIONWATER. Refuses a target above the strength.")
              .takes(
                  number("litres", Quantity.LITRES, "Litres wanted, at 20 °C."),
                  target(),
                  SpiritEntries.strength())
              .source("Pure alcohol is kept: litres x target / strength.")
              .caution(CAUTION)
              .example("20", "40", "65")
              .gives("L", a -> Dilution.spiritFor(a.number(0), a.number(1), a.number(2))),
          CatalogueFunction.named("WATEREDSTRENGTH", Group.SPIRIT)
              .summary("% vol of a spirit after a measured volume of water has gone in.")
              .details(BY_MASS.strip())
              .takes(
                  litres(),
                  SpiritEntries.strength(),
                  number("litresOfWater", Quantity.LITRES, "Litres of water at 20 °C."))
              .source(SOURCE)
              .caution(CAUTION)
              .example("10", "65", "6.441")
              .gives(
                  "% vol", a -> Dilution.strengthAfterWater(a.number(0), a.number(1), a.number(2))),
          CatalogueFunction.named("BLENDSTRENGTH", Group.SPIRIT)
              .summary("% vol of several spirits, or spirits and water, together.")
              .details(
                  "Rows where both cells are blank are passed over; 0 % vol is water." + BY_MASS)
              .takes(litresOfParts(), strengthsOfParts())
              .source(SOURCE)
              .caution(CAUTION)
              .example("10,5", "65,40")
              .gives("% vol", a -> Dilution.blend(a.numbers(0), a.numbers(1))),
          CatalogueFunction.named("BLENDVOLUME", Group.SPIRIT)
              .summary("Litres of several spirits, or spirits and water, together.")
              .details(
                  "Rows where both cells are blank are passed over; 0 % vol is water." + BY_MASS)
              .takes(litresOfParts(), strengthsOfParts())
              .source(SOURCE)
              .caution(CAUTION)
              .example("10,6.441", "65,0")
              .gives("L", a -> Dilution.blendVolume(a.numbers(0), a.numbers(1))));

  private DilutionEntries() {}

  private static Parameter litres() {
    return number("litres", Quantity.LITRES, "Litres of spirit at 20 °C.");
  }

  private static Parameter target() {
    return number("target", Quantity.PERCENT_VOL, "% vol at 20 °C that is wanted.")
        .told("targetStrength");
  }

  private static Parameter litresOfParts() {
    return numbers("litres", Quantity.LITRES, "Litres at 20 °C of each part.");
  }

  private static Parameter strengthsOfParts() {
    return numbers("strengths", Quantity.PERCENT_VOL_OR_WATER, "% vol of each part; 0 for water.");
  }
}
