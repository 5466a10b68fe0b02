package washbook.functions.catalogue;

import static washbook.functions.catalogue.Parameter.number;

import java.util.List;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.ferment.Balance;
import washbook.functions.liquid.VapourLiquid;
import washbook.functions.quantity.Quantity;
import washbook.functions.still.Atmosphere;
import washbook.functions.still.PotRun;

/** Functions on the charge of a still and a simple run. */
final class StillEntries {
  private static final String SOURCE =
      "van Laar 1.6798 and 0.9227 with Antoine's vapour pressures at 1013.25 hPa; within 0.011 mole"
          + " fraction of the ethanol-water data in Perry's Chemical Engineers' Handbook.";

  private static final String RUN =
      " A simple pot without reflux, by Rayleigh's equation. A real still differs, by its reflux and"
          + " its way of heating: an estimate for planning. Refuses a stop strength that is not"
          + " below the first vapour.";

  static final String CAUTION =
      "Alcohol vapour catches fire and explodes: no open flame, a tight still, cooling before heat"
          + " and good air. Heads hold methanol and other poisons; no figure here says where to cut"
          + " or that a spirit is safe to drink. Distilling needs a licence in most countries: local"
          + " codes and licensed practice decide.";

  static final List<CatalogueFunction> ALL =
      List.of(
          CatalogueFunction.named("CHARGEALCOHOL", Group.STILL)
              .summary("Litres of pure alcohol in a fermented wash, at 20 °C.")
              .details("Litres times ABV. For low wines and spirit use PUREALCOHOL.")
              .takes(
                  number("litres", Quantity.LITRES, "Litres of wash at 20 °C in the still."),
                  FermentEntries.originalGravity(),
                  FermentEntries.gravity(),
                  FermentEntries.wash())
              .source("The balance as in ABV.")
              .caution(CAUTION)
              .example("25", "1.085", "0.998")
              .gives(
                  "L",
                  a ->
                      a.number(0)
                          * Balance.of(a.number(1), a.number(2), FermentEntries.kind(a, 3))
                              .percentVolume()
                          / 100),
          CatalogueFunction.named("BOILINGPOINT", Group.STILL)
              .summary("Boiling point of a charge in °C.")
              .details("Sugar and other solids, which lift it a little, are left out.")
              .takes(charge(), pressure())
              .source(SOURCE)
              .caution(CAUTION)
              .example("10")
              .gives("°C", a -> PotRun.boilingPoint(a.number(0), a.number(1))),
          CatalogueFunction.named("VAPOURSTRENGTH", Group.STILL)
              .summary("% vol at 20 °C of the condensed vapour over a boiling charge.")
              .details("At 1013.25 hPa, without reflux.")
              .takes(charge())
              .source(SOURCE)
              .caution(CAUTION)
              .example("10")
              .gives("% vol", a -> PotRun.vapourStrength(a.number(0))),
          CatalogueFunction.named("HEADSTRENGTH", Group.STILL)
              .summary("% vol at 20 °C of the vapour that shows a temperature at the still's head.")
              .details(
                  "A hPa less shows about 0.03 K less, and 10 hPa move it by 1 to 3 % vol: give the"
                      + " pressure of the day (not the one reduced to sea level) or AIRPRESSURE of"
                      + " the altitude. Refuses what is not below the boiling point of water and"
                      + " what is within 0.14 K of the constant-boiling mixture (78.2 °C at 1013.25"
                      + " hPa), where temperature tells nothing.")
              .takes(
                  number(
                      "temperatureC",
                      Quantity.HEAD_TEMPERATURE,
                      "Temperature of the vapour at the head."),
                  pressure())
              .source(SOURCE)
              .caution(CAUTION)
              .example("92")
              .gives("% vol", a -> PotRun.headStrength(a.number(0), a.number(1))),
          CatalogueFunction.named("AIRPRESSURE", Group.STILL)
              .summary(
                  "Air pressure at an altitude in hPa, as BOILINGPOINT and HEADSTRENGTH take it.")
              .details(
                  "By the standard atmosphere. With the day's pressure reduced to sea level, as"
                      + " weather reports give it, it follows the weather.")
              .takes(
                  number("altitudeM", Quantity.ALTITUDE, "Metres above the sea."),
                  number(
                          "seaLevelHPa",
                          Quantity.SEA_LEVEL_PRESSURE,
                          "Pressure reduced to sea level.")
                      .orElse(VapourLiquid.ATMOSPHERE_HPA))
              .source("ICAO standard atmosphere; US Standard Atmosphere 1976.")
              .caution(CAUTION)
              .example("540")
              .gives("hPa", a -> Atmosphere.pressureHPa(a.number(0), a.number(1))),
          CatalogueFunction.named("RUNVOLUME", Group.STILL)
              .summary("Litres at 20 °C that a simple pot run gives down to a stop strength.")
              .details(RUN.strip())
              .takes(
                  number("litres", Quantity.LITRES, "Litres of charge at 20 °C."), charge(), stop())
              .source(SOURCE)
              .caution(CAUTION)
              .example("25", "10", "10")
              .gives("L", a -> a.number(0) * PotRun.of(a.number(1), a.number(2)).litres()),
          CatalogueFunction.named("RUNSTRENGTH", Group.STILL)
              .summary("% vol of all that a simple pot run gives down to a stop strength.")
              .details(RUN.strip())
              .takes(charge(), stop())
              .source(SOURCE)
              .caution(CAUTION)
              .example("10", "10")
              .gives("% vol", a -> PotRun.of(a.number(0), a.number(1)).percentVolume()),
          CatalogueFunction.named("RUNRECOVERY", Group.STILL)
              .summary("Share of the charge's alcohol that a simple pot run brings over, in %.")
              .details(RUN.strip())
              .takes(charge(), stop())
              .source(SOURCE)
              .caution(CAUTION)
              .example("10", "10")
              .gives("%", a -> 100 * PotRun.of(a.number(0), a.number(1)).recovered()));

  private StillEntries() {}

  private static Parameter charge() {
    return number("strength", Quantity.CHARGE_STRENGTH, "% vol at 20 °C of the charge.");
  }

  private static Parameter pressure() {
    return number("pressureHPa", Quantity.PRESSURE, "Air pressure at the still.")
        .orElse(VapourLiquid.ATMOSPHERE_HPA);
  }

  private static Parameter stop() {
    return number(
        "stopStrength", Quantity.STOP_STRENGTH, "% vol of what runs off when the run is stopped.");
  }
}
