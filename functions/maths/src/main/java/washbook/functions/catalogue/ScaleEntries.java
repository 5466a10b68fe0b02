package washbook.functions.catalogue;

import static washbook.functions.catalogue.Parameter.number;
import static washbook.functions.catalogue.Parameter.word;

import java.util.List;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.quantity.Quantity;
import washbook.functions.scale.Conversion;

/** Functions between scales and units. */
final class ScaleEntries {
  static final List<CatalogueFunction> ALL =
      List.of(
          CatalogueFunction.named("CONVERT", Group.SCALES)
              .summary("Turns a value on one scale or in one unit into another of the same kind.")
              .details(
                  "Sugar scales meet at SG 20/20: SG, POINTS (1000 x (SG - 1)), BRIX, PLATO and"
                      + " BALLING (all % by mass of sucrose), BAUME (145 - 145/SG), OECHSLE, KMW,"
                      + " TWADDELL, KGM3 (density at 20 °C), GL (grams of extract per litre),"
                      + " POTENTIAL (% vol when fermented to SG 1.000). Sugar scales are valid from"
                      + " SG 0.970 to 1.400, POTENTIAL to 1.190. Strengths meet at the mass"
                      + " fraction: ABV (% vol at 20 °C), ABW (% mass), PROOFUS, PROOFUK, KGM3."
                      + " Temperature C, F; volume L, GALUS, GALUK; mass KG, LB. A pair of"
                      + " different kinds is refused with the list.")
              .takes(
                  number("value", Quantity.ANY, "The value to convert."),
                  word("from", Conversion.words(), "Scale or unit of the value."),
                  word("to", Conversion.words(), "Scale or unit of the result."))
              .source(
                  "ICUMSA SPS-4 (1998); OIML R 22:1975; Baume modulus 145: NBS Circular C440 (1942);"
                      + " proof: 27 CFR 30.11; UK proof spirit: Alcoholic Liquor Duties Act 1979, section 2(2);"
                      + " KMW: Oechsle = KMW (4.54 + 0.022 KMW), Ambrosi 1994 in a lexicon of food.")
              .example("12", "BRIX", "SG")
              .portable()
              .gives("", a -> Conversion.convert(a.number(0), a.word(1), a.word(2))));

  private ScaleEntries() {}
}
