package washbook.functions.catalogue;

import static washbook.functions.catalogue.Parameter.number;
import static washbook.functions.catalogue.Parameter.numbers;

import java.util.List;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.quantity.Quantity;
import washbook.functions.spirit.Cut;
import washbook.functions.spirit.Dilution;
import washbook.functions.spirit.Liqueur;

/** Functions on the jars of a run and on sweetened spirit. */
final class CutEntries {
  private static final String CAUTION =
      "Sums of what was measured: no figure here says where to cut or that a spirit is safe to drink."
          + " Excise is due on measured spirit where the law says so: local codes and licensed"
          + " practice decide.";

  private static final String JARS =
      "The jars in the order in which they ran, by their numbers from the top of the list; rows with"
          + " both cells blank are no jars.";

  private static final String TABARIE =
      "Tabarie's rule (OIV-MA-AS2-03B) over OIML R 22:1975 and ICUMSA SPS-4 (1998). No measured"
          + " liqueurs were at hand.";

  static final List<CatalogueFunction> ALL =
      List.of(
          CatalogueFunction.named("CUTVOLUME", Group.SPIRIT)
              .summary("Litres at 20 °C of some of the jars of a run together.")
              .details(JARS)
              .takes(litres(), strengths(), first(), last())
              .source("Mass balance over OIML R 22:1975.")
              .caution(CAUTION)
              .example("0.5,0.5,0.5,0.5", "78,74,69,62", "2", "3")
              .gives("L", a -> Dilution.blendVolume(cut(a, 0), cut(a, 1))),
          CatalogueFunction.named("CUTSTRENGTH", Group.SPIRIT)
              .summary("% vol at 20 °C of some of the jars of a run together.")
              .details(JARS)
              .takes(litres(), strengths(), first(), last())
              .source("Mass balance over OIML R 22:1975.")
              .caution(CAUTION)
              .example("0.5,0.5,0.5,0.5", "78,74,69,62", "2", "3")
              .gives("% vol", a -> Dilution.blend(cut(a, 0), cut(a, 1))),
          CatalogueFunction.named("CUTALCOHOL", Group.SPIRIT)
              .summary("Litres of pure alcohol at 20 °C in some of the jars of a run.")
              .details(
                  JARS + " What excise counts in litres of pure alcohol; rounding is local law.")
              .takes(litres(), strengths(), first(), last())
              .source("Litres times % vol, both at 20 °C.")
              .caution(CAUTION)
              .example("0.5,0.5,0.5,0.5", "78,74,69,62", "2", "3")
              .gives("L", a -> Cut.alcohol(cut(a, 0), cut(a, 1))),
          CatalogueFunction.named("LIQUEURSTRENGTH", Group.SPIRIT)
              .summary("% vol at 20 °C of spirit with sugar and water.")
              .details(
                  "By mass, so that the contraction is taken into account. Refuses more sugar"
                      + " than its water can"
                      + " dissolve.")
              .takes(spirit(), strength(), sugar(), water())
              .source(TABARIE)
              .caution(CAUTION)
              .example("1", "60", "200", "0.4")
              .gives("% vol", a -> liqueur(a).percentVolume()),
          CatalogueFunction.named("LIQUEURVOLUME", Group.SPIRIT)
              .summary("Litres at 20 °C of spirit with sugar and water.")
              .details("Goes with LIQUEURSTRENGTH.")
              .takes(spirit(), strength(), sugar(), water())
              .source(TABARIE)
              .caution(CAUTION)
              .example("1", "60", "200", "0.4")
              .gives("L", a -> liqueur(a).litres()));

  private CutEntries() {}

  private static double[] cut(Arguments a, int index) {
    return Cut.between(a.numbers(index), a.number(2), a.number(3));
  }

  private static Liqueur liqueur(Arguments a) {
    return Liqueur.of(a.number(0), a.number(1), a.number(2), a.given(3) ? a.number(3) : 0);
  }

  private static Parameter litres() {
    return numbers("litres", Quantity.LITRES, "Litres at 20 °C of each jar.");
  }

  private static Parameter strengths() {
    return numbers("strengths", Quantity.PERCENT_VOL, "% vol at 20 °C of each jar.");
  }

  private static Parameter first() {
    return number("first", Quantity.JAR, "Number of the first jar of the cut.").orElse(1.0);
  }

  private static Parameter last() {
    return number("last", Quantity.JAR, "Number of its last jar; the last of all if left out.")
        .orNothing();
  }

  private static Parameter spirit() {
    return number("litres", Quantity.LITRES, "Litres of spirit at 20 °C.");
  }

  private static Parameter strength() {
    return number("strength", Quantity.LIQUEUR_SPIRIT, "% vol at 20 °C of the spirit.");
  }

  private static Parameter sugar() {
    return number("gramsOfSugar", Quantity.GRAMS, "Grams of dry table sugar.");
  }

  private static Parameter water() {
    return number("litresOfWater", Quantity.LITRES, "Litres of water at 20 °C that go in as well.")
        .orNothing();
  }
}
