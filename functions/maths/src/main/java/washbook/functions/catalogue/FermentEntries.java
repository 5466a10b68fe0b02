package washbook.functions.catalogue;

import static washbook.functions.catalogue.Parameter.number;
import static washbook.functions.catalogue.Parameter.word;

import java.util.List;
import java.util.function.ToDoubleFunction;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.ferment.Balance;
import washbook.functions.quantity.Quantity;
import washbook.functions.scale.PotentialAlcohol;

/** Functions that tell from the original gravity and the gravity now where a wash stands. */
final class FermentEntries {
  private static final String MODEL =
      "Balling's balance with Tabarie's additivity, for one filling of the vessel without later"
          + " sugar. A sugar wash poor in nutrients can yield some percent more than the balance;"
          + " the additivity is good to about 0.0005 SG. Refuses a gravity above the original one"
          + " and one lower than the wash can ferment to.";

  private static final String MODEL_SOURCE =
      "Balling's balance 2.0665 / 0.9565 / 0.11; ICUMSA SPS-4 (1998); OIML R 22:1975; within 0.07 %"
          + " vol of the duty factors of UK HMRC Excise Notice 226 for OG 1.030 to 1.110 fermented"
          + " to 1.000 to 1.008.";

  static final List<CatalogueFunction> ALL =
      List.of(
          ofTwoGravities(
              "ABV", "% vol", "Alcohol to date in % vol at 20 °C.", "", Balance::percentVolume),
          ofTwoGravities(
              "APPARENTATTENUATION",
              "%",
              "Share of the original extract that seems to be gone, by gravity alone.",
              "Above 100 % in a dry ferment, because alcohol is lighter than water. ",
              Balance::apparentAttenuation),
          ofTwoGravities(
              "REALATTENUATION",
              "%",
              "Share of the original extract that is really gone.",
              "(OE - RE) / OE. ",
              Balance::realAttenuation),
          ofTwoGravities(
              "FERMENTATIONDEGREE",
              "%",
              "Degree of fermentation: share of the extract that has been turned over.",
              "Real attenuation over (1 - 0.005161 RE), RE the true extract in % by mass. ",
              Balance::fermentationDegree),
          ofTwoGravities(
              "TRUEEXTRACT",
              "% mass",
              "Extract really left in the wash, alcohol's lightness taken out.",
              "Down to -0.5 within reading error. ",
              Balance::trueExtract),
          ofTwoGravities(
              "SUGARLEFT",
              "g/L",
              "Extract really left, in grams per litre at 20 °C.",
              "Counted as extract: unfermentable solids are in it. Never below 0. ",
              Balance::sugarLeftGramsPerLitre),
          CatalogueFunction.named("POTENTIALABV", Group.FERMENT)
              .summary("Alcohol that a gravity promises, in % vol.")
              .details(
                  "MODEL: fermented to SG 1.000 by the pack's balance, as a potential-alcohol scale"
                      + " has its zero at water; below 1.000 a straight line, negative. DRY: all"
                      + " extract fermented. 16.83 and 17: grams of extract per litre over that many"
                      + " grams for each % vol.")
              .takes(
                  number("gravity", Quantity.GRAVITY, "SG 20/20 of the wash."),
                  word("basis", List.of("MODEL", "DRY", "16.83", "17"), "How it is calculated.")
                      .orElse("MODEL"))
              .source(
                  MODEL_SOURCE
                      + " 16.83 g/L: OIV-MA-AS2-02 table II as reprinted in the French order of 14"
                      + " September 2011, annex IV. 17 g/L: common practice, no source.")
              .example("1.085")
              .portable()
              .gives("% vol", a -> potential(a.number(0), a.word(1))),
          CatalogueFunction.named("ABVBYPOTENTIAL", Group.FERMENT)
              .summary("The trade's difference of two potential-alcohol readings, for comparison.")
              .details(
                  "Potential alcohol (MODEL) at the original gravity less that at the gravity now."
                      + " A rule of thumb: use ABV for the real figure. Refuses a gravity above the"
                      + " original one.")
              .takes(originalGravity(), gravity())
              .source("Common practice, no source; each potential as in POTENTIALABV.")
              .example("1.085", "0.998")
              .gives(
                  "% vol",
                  a -> {
                    Balance.refuseRise(a.number(0), a.number(1));
                    return PotentialAlcohol.model(a.number(0))
                        - PotentialAlcohol.model(a.number(1));
                  }));

  private FermentEntries() {}

  private static CatalogueFunction ofTwoGravities(
      String name, String unit, String summary, String note, ToDoubleFunction<Balance> result) {
    return CatalogueFunction.named(name, Group.FERMENT)
        .summary(summary)
        .details(note + MODEL)
        .takes(originalGravity(), gravity())
        .source(MODEL_SOURCE)
        .example("1.085", "0.998")
        .portable()
        .gives(unit, a -> result.applyAsDouble(Balance.of(a.number(0), a.number(1))));
  }

  static Parameter originalGravity() {
    return number("originalGravity", Quantity.ORIGINAL_GRAVITY, "SG 20/20 before the ferment.");
  }

  static Parameter gravity() {
    return number("gravity", Quantity.GRAVITY, "Corrected SG 20/20 now.");
  }

  private static double potential(double gravity, String basis) {
    return switch (basis) {
      case "MODEL" -> PotentialAlcohol.model(gravity);
      case "DRY" -> PotentialAlcohol.dry(gravity);
      default -> PotentialAlcohol.fixed(gravity, Double.parseDouble(basis));
    };
  }
}
