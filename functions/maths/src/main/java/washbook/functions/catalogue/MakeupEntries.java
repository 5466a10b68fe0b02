package washbook.functions.catalogue;

import static washbook.functions.catalogue.Parameter.number;
import static washbook.functions.catalogue.Parameter.numbers;
import static washbook.functions.catalogue.Parameter.wordOrNumber;

import java.util.List;
import java.util.stream.Stream;
import washbook.functions.catalogue.CatalogueFunction.Group;
import washbook.functions.ferment.Feeding;
import washbook.functions.makeup.MakeUp;
import washbook.functions.makeup.SugarKind;
import washbook.functions.quantity.Quantity;

/** Functions for making up a wash. */
final class MakeupEntries {
  private static final String BY_MASS =
      " Calculated by mass at 20 °C; the solids of every kind of sugar are taken to weigh on the"
          + " gravity as sucrose does.";

  private static final String SOURCE =
      "Mass balance over ICUMSA SPS-4 (1998). Solids: dextrose by molar mass (monohydrate); honey"
          + " from Codex Stan 12-1981 (at most 20 % water, 18 % is usual); the others common"
          + " practice, no source.";

  static final List<String> KINDS = Stream.of(SugarKind.values()).map(Enum::name).toList();

  static final List<CatalogueFunction> ALL =
      List.of(
          CatalogueFunction.named("SUGARFORGRAVITY", Group.MAKEUP)
              .summary("Kilograms of sugar that lift water, juice or wash to a gravity.")
              .details(
                  "The volume grows: see VOLUMEAFTERSUGAR. Refuses a target below the gravity and"
                      + " one that the sugar is too wet for."
                      + BY_MASS)
              .takes(litres(), gravity(), target(), kind())
              .source(SOURCE)
              .example("20", "1.000", "1.080")
              .gives(
                  "kg", a -> MakeUp.sugarFor(a.number(0), a.number(1), a.number(2), solids(a, 3))),
          CatalogueFunction.named("VOLUMEAFTERSUGAR", Group.MAKEUP)
              .summary("Litres after sugar has been dissolved.")
              .details("Refuses more than SG 1.190." + BY_MASS)
              .takes(litres(), gravity(), kilograms(), kind())
              .source(SOURCE)
              .example("20", "1.000", "4.787")
              .gives("L", a -> MakeUp.volume(a.number(0), a.number(1), a.number(2), solids(a, 3))),
          CatalogueFunction.named("WASHGRAVITY", Group.MAKEUP)
              .summary("SG 20/20 after sugar has been dissolved.")
              .details("Refuses more than SG 1.190." + BY_MASS)
              .takes(litres(), gravity(), kilograms(), kind())
              .source(SOURCE)
              .example("20", "1.000", "4.787")
              .gives(
                  "SG", a -> MakeUp.gravity(a.number(0), a.number(1), a.number(2), solids(a, 3))),
          CatalogueFunction.named("SUGARFORVOLUME", Group.MAKEUP)
              .summary("Kilograms of sugar in a full vessel of a given gravity, made from water.")
              .details(
                  "WATERFORVOLUME tells the water that goes with it. Refuses a target below SG 1."
                      + BY_MASS)
              .takes(
                  number("litres", Quantity.LITRES, "Litres of finished wash."), target(), kind())
              .source(SOURCE)
              .example("25", "1.080")
              .gives("kg", a -> MakeUp.sugarForVolume(a.number(0), a.number(1), solids(a, 2))),
          CatalogueFunction.named("WATERFORVOLUME", Group.MAKEUP)
              .summary("Litres of water in a full vessel of a given gravity, made from sugar.")
              .details(
                  "SUGARFORVOLUME tells the sugar that goes with it. Refuses a target below SG 1."
                      + BY_MASS)
              .takes(
                  number("litres", Quantity.LITRES, "Litres of finished wash."), target(), kind())
              .source(SOURCE)
              .example("25", "1.080")
              .gives("L", a -> MakeUp.waterForVolume(a.number(0), a.number(1), solids(a, 2))),
          CatalogueFunction.named("WATERFORGRAVITY", Group.MAKEUP)
              .summary("Litres of water that bring a wash down to a gravity.")
              .details(
                  "For an unfermented wash. Refuses a target above the gravity, and one of SG 1 or"
                      + " less, which water alone does not reach."
                      + BY_MASS)
              .takes(litres(), gravity(), target())
              .source("Mass balance over ICUMSA SPS-4 (1998).")
              .example("20", "1.100", "1.080")
              .gives("L", a -> MakeUp.waterFor(a.number(0), a.number(1), a.number(2))),
          CatalogueFunction.named("BLENDGRAVITY", Group.MAKEUP)
              .summary("SG 20/20 of several unfermented worts, juices or washes together.")
              .details(
                  "Parts may be syrups up to SG 1.400. Rows where both cells are blank are passed"
                      + " over."
                      + BY_MASS)
              .takes(litresOfParts(), gravitiesOfParts())
              .source("Mass balance over ICUMSA SPS-4 (1998).")
              .example("10,15", "1.050,1.090")
              .gives(
                  "SG",
                  a ->
                      Feeding.original(
                          a.numbers(0),
                          a.numbers(1),
                          new double[0],
                          1,
                          Quantity.SYRUP_GRAVITY.max())));

  private MakeupEntries() {}

  private static Parameter litres() {
    return number("litres", Quantity.LITRES, "Litres at 20 °C before.");
  }

  private static Parameter gravity() {
    return number("gravity", Quantity.GRAVITY, "SG 20/20 before; 1 for water.");
  }

  private static Parameter target() {
    return number("target", Quantity.GRAVITY, "SG 20/20 that is wanted.").told("targetGravity");
  }

  private static Parameter kilograms() {
    return number("kilograms", Quantity.KILOGRAMS, "Kilograms of sugar that go in.");
  }

  static Parameter litresOfParts() {
    return numbers("litres", Quantity.LITRES, "Litres at 20 °C of each part.");
  }

  static Parameter gravitiesOfParts() {
    return numbers("gravities", Quantity.SYRUP_GRAVITY, "SG 20/20 of each part.");
  }

  static Parameter kind() {
    return wordOrNumber(
            "kind",
            KINDS,
            Quantity.SHARE,
            "Kind of sugar, or its share of dry solids by mass (sucrose 1, dextrose 0.909, invert"
                + " 0.77, honey 0.82, molasses 0.795, malt extract 0.80, dry malt 0.96).")
        .orElse("SUCROSE");
  }

  static double solids(Arguments a, int index) {
    return a.word(index) == null ? a.number(index) : SugarKind.valueOf(a.word(index)).solids();
  }
}
