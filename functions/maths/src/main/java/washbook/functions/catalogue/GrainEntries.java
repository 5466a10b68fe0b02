package washbook.functions.catalogue;

import static washbook.functions.catalogue.Parameter.number;
import static washbook.functions.catalogue.Parameter.wordOrNumber;

import java.util.List;
import java.util.stream.Stream;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.makeup.Grain;
import washbook.functions.makeup.Nitrogen;
import washbook.functions.quantity.Quantity;

/** Functions on grain, starch and yeast food. */
final class GrainEntries {
  private static final List<String> GRAINS = Stream.of(Grain.values()).map(Enum::name).toList();

  private static final String PHOSPHATE =
      "OIV Codex COEI-1-PHODIA: 25.79 % ammonia in diammonium phosphate, 21.2 % nitrogen.";

  static final List<CatalogueFunction> ALL =
      List.of(
          CatalogueFunction.named("GRAINEXTRACT", Group.MAKEUP)
              .summary("Kilograms of extract that grain or potatoes give in a mash.")
              .details(
                  "Old goods and mashing with malt: a lower limit today. Give a share of your own"
                      + " from a maltster's sheet or a trial mash.")
              .takes(
                  kilograms(),
                  wordOrNumber(
                          "kind",
                          GRAINS,
                          Quantity.SHARE,
                          "Kind of goods, or the share of their mass that becomes extract.")
                      .told("goods"))
              .source("Balling's table of extracts of grain, as reprinted; read in an excerpt.")
              .example("10", "RYE")
              .gives(
                  "kg",
                  a ->
                      a.number(0)
                          * (a.word(1) == null ? a.number(1) : Grain.valueOf(a.word(1)).extract())),
          CatalogueFunction.named("STARCHALCOHOL", Group.MAKEUP)
              .summary("Litres of pure alcohol at 20 °C that the starch of grain can give.")
              .details(
                  "100 g of starch take up 11.1 g of water and give at most 56.8 g of ethanol; yeast"
                      + " and mashing reach a share of that.")
              .takes(
                  kilograms(),
                  number("starch", Quantity.SHARE, "Share of starch in the goods by mass."),
                  number(
                          "reached",
                          Quantity.SHARE,
                          "Share of the theoretical yield that is reached.")
                      .orElse(0.9))
              .source("Stoichiometry with IUPAC molar masses; 0.9 common practice, no source.")
              .example("10", "0.6")
              .gives("L", a -> Grain.alcohol(a.number(0), a.number(1), a.number(2))),
          CatalogueFunction.named("PHOSPHATEFORNITROGEN", Group.MAKEUP)
              .summary("Grams of diammonium phosphate that bring yeast nitrogen to a target.")
              .details(
                  "Usual lower limit for a must 140 mg/L; 100 to 500 by sugar and yeast. 0 when there"
                      + " is enough. Local rules limit what may be added.")
              .takes(
                  litres(),
                  number("present", Quantity.NITROGEN, "Nitrogen that yeast can use now, mg/L."),
                  number("target", Quantity.NITROGEN_WANTED, "Nitrogen wanted, mg/L.")
                      .told("targetNitrogen")
                      .orElse(140.0))
              .source(PHOSPHATE + " 140 mg/L: Butzke, Am. J. Enol. Vitic. 49 (1998), as quoted.")
              .example("25", "60")
              .gives("g", a -> Nitrogen.grams(a.number(0), a.number(1), a.number(2))),
          CatalogueFunction.named("NITROGENFROMPHOSPHATE", Group.MAKEUP)
              .summary("Yeast nitrogen in mg/L that grams of diammonium phosphate add.")
              .details("PHOSPHATEFORNITROGEN the other way round.")
              .takes(
                  litres(),
                  number("grams", Quantity.GRAMS, "Grams of diammonium phosphate.")
                      .told("phosphate"))
              .source(PHOSPHATE)
              .example("25", "9.4")
              .gives("mg N/L", a -> Nitrogen.milligramsPerLitre(a.number(0), a.number(1))));

  private GrainEntries() {}

  private static Parameter kilograms() {
    return number("kilograms", Quantity.KILOGRAMS, "Kilograms of goods.");
  }

  private static Parameter litres() {
    return number("litres", Quantity.LITRES, "Litres of wash or juice.");
  }
}
