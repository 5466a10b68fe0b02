package washbook.functions.catalogue;

import static washbook.functions.catalogue.Parameter.number;

import java.util.List;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.ferment.CarbonDioxide;
import washbook.functions.ferment.FermentHeat;
import washbook.functions.liquid.WashKind;
import washbook.functions.quantity.Quantity;
import washbook.functions.still.StillHeat;

/** Functions on heat: of the charge, the condenser and the ferment. */
final class HeatEntries {
  private static final String CAUTION =
      "Never heat a vessel that cannot vent. Vapour that is not condensed burns and explodes: run"
          + " cooling water before heat, and more of it than this says. "
          + StillEntries.CAUTION;

  private static final String SOURCE =
      "Perry's Chemical Engineers' Handbook, 8th ed., tables 2-150 and 2-153; heat of mixtures after"
          + " Melinder (2010) and Perry's table 2-205, within 3 %.";

  static final List<CatalogueFunction> ALL =
      List.of(
          CatalogueFunction.named("CHARGEHEAT", Group.STILL)
              .summary("Heat in kWh that brings a charge to the boil.")
              .details("At 1013.25 hPa. The still's own heat and what the room takes are left out.")
              .takes(litres("charge"), charge(), from())
              .source(SOURCE)
              .caution(CAUTION)
              .example("25", "10", "18")
              .gives("kWh", a -> StillHeat.toBoil(a.number(0), a.number(1), a.number(2))),
          CatalogueFunction.named("MINUTESTOBOIL", Group.STILL)
              .summary("Minutes until a charge boils with a heating power.")
              .details(
                  "CHARGEHEAT over the power that reaches the charge: for an element inside about 0.9,"
                      + " common practice, no source.")
              .takes(
                  litres("charge"),
                  charge(),
                  from(),
                  number("kilowatts", Quantity.KILOWATTS, "Heating power."),
                  number("share", Quantity.SHARE, "Share of the power that reaches the charge.")
                      .orElse(0.9))
              .source(SOURCE)
              .caution(CAUTION)
              .example("25", "10", "18", "3")
              .gives(
                  "min",
                  a ->
                      StillHeat.minutesToBoil(
                          a.number(0), a.number(1), a.number(2), a.number(3), a.number(4))),
          CatalogueFunction.named("CONDENSERHEAT", Group.STILL)
              .summary("Heat in kWh that a condenser takes out of a distillate.")
              .details(
                  "Condensing at the boiling point of the distillate and cooling down. What runs back"
                      + " as reflux comes on top; heats of mixing are left out.")
              .takes(litres("distillate"), distillate(), at())
              .source(SOURCE)
              .caution(CAUTION)
              .example("5", "60", "20")
              .gives("kWh", a -> StillHeat.ofCondensing(a.number(0), a.number(1), a.number(2))),
          CatalogueFunction.named("COOLINGWATER", Group.STILL)
              .summary("Litres of cooling water that condense and cool a distillate.")
              .details(
                  "CONDENSERHEAT over what a litre takes up. Refuses water that leaves no warmer.")
              .takes(
                  litres("distillate"),
                  distillate(),
                  at(),
                  number("waterInC", Quantity.COOLING_TEMPERATURE, "Temperature it comes in with."),
                  number("waterOutC", Quantity.COOLING_TEMPERATURE, "Temperature it leaves with."))
              .source(SOURCE)
              .caution(CAUTION)
              .example("5", "60", "20", "12", "45")
              .gives(
                  "L",
                  a ->
                      StillHeat.coolingWater(
                          a.number(0), a.number(1), a.number(2), a.number(3), a.number(4))),
          CatalogueFunction.named("FERMENTHEAT", Group.FERMENT)
              .summary("Heat in kWh that a ferment has set free.")
              .details(
                  "100 kJ for each mole of hexose, by the carbon dioxide given off; published figures"
                      + " go from 69 (no growth of yeast) upwards. Refuses what ABV refuses.")
              .takes(litres("wash"), FermentEntries.originalGravity(), FermentEntries.gravity())
              .source(
                  "About 100 kJ/mol: Colombié and others (2007), as quoted; 68.9 by the CRC Handbook's"
                      + " enthalpies of formation.")
              .caution(
                  "A large vessel can grow too warm by itself. Carbon dioxide kills in closed rooms:"
                      + " air the room.")
              .example("25", "1.085", "0.998")
              .gives(
                  "kWh",
                  a ->
                      FermentHeat.kilowattHours(
                          CarbonDioxide.grams(
                              a.number(1), a.number(2), a.number(0), WashKind.MALT))));

  private HeatEntries() {}

  private static Parameter litres(String of) {
    return number("litres", Quantity.LITRES, "Litres of " + of + " at 20 °C.");
  }

  private static Parameter charge() {
    return number("strength", Quantity.CHARGE_STRENGTH, "% vol at 20 °C of the charge.");
  }

  private static Parameter distillate() {
    return number("strength", Quantity.CHARGE_STRENGTH, "% vol at 20 °C of the distillate.");
  }

  private static Parameter from() {
    return number("temperatureC", Quantity.CHARGE_TEMPERATURE, "Temperature of the charge.");
  }

  private static Parameter at() {
    return number(
        "temperatureC", Quantity.DISTILLATE_TEMPERATURE, "Temperature at which it runs off.");
  }
}
