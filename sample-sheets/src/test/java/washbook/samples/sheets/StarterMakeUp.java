package washbook.samples.sheets;

import static washbook.samples.sheets.Form.plain;
import static washbook.samples.sheets.Form.when;

import java.util.Arrays;
import java.util.stream.Collectors;
import washbook.functions.Numbers;
import washbook.functions.makeup.SugarKind;
import washbook.samples.sheets.Book.Look;

/** A sheet for making up a wash. */
final class StarterMakeUp {
  private StarterMakeUp() {}

  static Book make(boolean portable) {
    Book book = Book.forPaper("Making up a wash");
    sugar(book, portable).done();
    juice(book, portable).done();
    book.widths(book.workbook().getSheetAt(0), 29, 10, 8, 45);
    book.widths(book.workbook().getSheetAt(1), 26, 10, 8, 30, 7, 11);
    return book;
  }

  private static Form sugar(Book book, boolean portable) {
    Form form = new Form(book, "Sugar wash", 3, 1, portable);
    form.head(
        "Making up a sugar wash",
        "Type into the tinted cells. All volumes at 20 °C, all gravities SG 20/20.",
        5);
    form.section("Start from the water");
    String water = form.input("Water", 20, "0.0", "L", "what goes into the vessel first");
    String target = form.input("Gravity wanted", 1.08, "0.000", "SG", "");
    String kind =
        form.input(
            "Kind of sugar",
            "SUCROSE",
            "General",
            "",
            "choose from the list; DEXTROSE is the monohydrate");
    String kilograms =
        form.result(
            "Sugar",
            form.either(
                when("SUGARFORGRAVITY(" + water + ",1," + target + "," + kind + ")", water, target),
                plain(sugarFor(water, "1", target, solids(kind)), water, target)),
            "0.00",
            "kg",
            "");
    String wash =
        form.result(
            "Wash in all",
            form.either(
                when(
                    "VOLUMEAFTERSUGAR(" + water + ",1," + kilograms + "," + kind + ")",
                    water,
                    kilograms),
                plain(
                    "(" + mass(water, "1") + "+" + kilograms + ")/" + density(target),
                    water,
                    target,
                    kilograms)),
            "0.00",
            "L",
            "sugar takes room too");
    form.choose(kind, Arrays.stream(SugarKind.values()).map(Enum::name).toArray(String[]::new));
    form.between(water, 0, 100000, "Litres at 20 °C");
    form.between(target, 1, 1.19, "Gravity, 1.000 to 1.190");
    if (portable) {
      form.result(
          "Alcohol if it ferments to 1.000",
          when("ABV(" + target + ",1)", target),
          "0.00",
          "% vol",
          "dry washes end lower and give a little more");
    } else {
      alcohol(form, target, kind, wash);
    }
    form.section("Start from the full vessel");
    String litres = form.input("Wash in all", 25, "0.0", "L", "leave head space for foam");
    String wanted = form.input("Gravity wanted", 1.075, "0.000", "SG", "");
    form.result(
        "Sugar",
        form.either(
            when("SUGARFORVOLUME(" + litres + "," + wanted + "," + kind + ")", litres, wanted),
            plain(sugarIn(litres, wanted, kind), litres, wanted)),
        "0.00",
        "kg",
        "of the kind above");
    form.result(
        "Water",
        form.either(
            when("WATERFORVOLUME(" + litres + "," + wanted + "," + kind + ")", litres, wanted),
            plain(
                "(" + mass(litres, wanted) + "-" + sugarIn(litres, wanted, kind) + ")/" + WATER,
                litres,
                wanted)),
        "0.00",
        "L",
        "");
    if (portable) {
      return form;
    }
    form.section("Start from the alcohol wanted");
    String abv = form.input("Alcohol wanted", 10, "0.0", "% vol", "");
    String end = form.input("Gravity at the end", 0.995, "0.000", "SG", "where it usually stops");
    form.result(
        "Gravity to start with",
        when("ORIGINALFORABV(" + abv + "," + end + ")", abv, end),
        "0.0000",
        "SG",
        "");
    return form;
  }

  private static void alcohol(Form form, String target, String kind, String wash) {
    String end =
        form.result(
            "Gravity when all has fermented",
            when("FINALGRAVITY(" + target + "," + kind + ")", target),
            "0.0000",
            "SG",
            "yeast may stop earlier");
    form.result(
        "Alcohol then", when("ABV(" + target + "," + end + ")", target, end), "0.00", "% vol", "");
    form.result(
        "Carbon dioxide given off",
        when("CARBONDIOXIDE(" + target + "," + end + "," + wash + ")", target, end, wash),
        "0",
        "g",
        "1 g is about half a litre of gas: air the room");
  }

  private static Form juice(Book book, boolean portable) {
    Form form = new Form(book, "Juice and blends", 5, 1, portable);
    form.head("Juice, must and blends", "Type into the tinted cells. All volumes at 20 °C.", 5);
    form.section("Lift a juice with sugar");
    String litres = form.input("Juice", 40, "0.0", "L", "pressed and strained");
    String gravity = form.input("Its gravity", 1.052, "0.000", "SG", "corrected to 20 °C");
    String target = form.input("Gravity wanted", 1.07, "0.000", "SG", "");
    String sugar =
        form.result(
            "Sugar",
            form.either(
                when(
                    "SUGARFORGRAVITY(" + litres + "," + gravity + "," + target + ")",
                    litres,
                    gravity,
                    target),
                plain(sugarFor(litres, gravity, target, "1"), litres, gravity, target)),
            "0.00",
            "kg",
            "");
    form.result(
        "Juice in all",
        form.either(
            when(
                "VOLUMEAFTERSUGAR(" + litres + "," + gravity + "," + sugar + ")",
                litres,
                gravity,
                sugar),
            plain(
                "(" + mass(litres, gravity) + "+" + sugar + ")/" + density(target),
                litres,
                gravity,
                target,
                sugar)),
        "0.00",
        "L",
        "");
    form.section("Bring a must down with water");
    String must = form.input("Must", 30, "0.0", "L", "");
    String strong = form.input("Its gravity", 1.098, "0.000", "SG", "");
    String weaker = form.input("Gravity wanted", 1.085, "0.000", "SG", "");
    form.result(
        "Water",
        form.either(
            when(
                "WATERFORGRAVITY(" + must + "," + strong + "," + weaker + ")",
                must,
                strong,
                weaker),
            plain(
                mass(must, strong)
                    + "*("
                    + extract(strong)
                    + "-"
                    + extract(weaker)
                    + ")/"
                    + extract(weaker)
                    + "/"
                    + WATER,
                must,
                strong,
                weaker)),
        "0.00",
        "L",
        "");
    form.section("Several juices together");
    int first =
        form.table(
            6,
            new String[] {"What", "Litres", "SG"},
            new Object[][] {{"Apple 7", 25, 1.052}, {"Plum 3", 15, 1.084}},
            "General",
            "0.0",
            "0.000");
    String litresOf = "$B$" + first + ":$B$" + (first + 5);
    String gravitiesOf = "$C$" + first + ":$C$" + (first + 5);
    form.between(litresOf, 0, 100000, "Litres at 20 °C");
    form.between(gravitiesOf, 0.98, 1.19, "Gravity, 0.980 to 1.190");
    if (portable) {
      masses(book, form, first);
      String kilograms = "SUM($E$" + first + ":$E$" + (first + 5) + ")";
      String extract = "SUM($F$" + first + ":$F$" + (first + 5) + ")";
      form.result(
          "Gravity of the blend",
          "IF("
              + kilograms
              + "=0,\"\",WASHBOOK.CONVERT(100*"
              + extract
              + "/"
              + kilograms
              + ",\"BRIX\",\"SG\"))",
          "0.0000",
          "SG",
          "");
      return form;
    }
    form.result(
        "Gravity of the blend",
        "IF(COUNT("
            + litresOf
            + ")<1,\"\",WASHBOOK.BLENDGRAVITY("
            + litresOf
            + ","
            + gravitiesOf
            + "))",
        "0.0000",
        "SG",
        "");
    form.section("Another scale");
    String value = form.input("Value", 20.2, "0.00", "", "");
    String from = form.input("Scale it is on", "BRIX", "General", "", "choose from the list");
    String to = form.input("Scale wanted", "SG", "General", "", "");
    String[] scales = {
      "SG",
      "POINTS",
      "BRIX",
      "PLATO",
      "BALLING",
      "BAUME",
      "OECHSLE",
      "KMW",
      "TWADDELL",
      "KGM3",
      "GL"
    };
    form.choose(from, scales).choose(to, scales);
    form.result(
        "Value on that scale",
        when("CONVERT(" + value + "," + from + "," + to + ")", value),
        "0.0000",
        "",
        "");
    return form;
  }

  /** Kilograms to the litre of water at 20 °C, as the sugar scale has it. */
  static final String WATER = "(WASHBOOK.CONVERT(1,\"SG\",\"KGM3\")/1000)";

  static String density(String gravity) {
    return "(WASHBOOK.CONVERT(" + gravity + ",\"SG\",\"KGM3\")/1000)";
  }

  static String mass(String litres, String gravity) {
    return litres + "*" + density(gravity);
  }

  /** Per cent by mass. */
  static String extract(String gravity) {
    return "WASHBOOK.CONVERT(" + gravity + ",\"SG\",\"BRIX\")";
  }

  /** What lifts a wash to a gravity: by mass, so much solids for the sugar that is missing. */
  private static String sugarFor(String litres, String gravity, String target, String solids) {
    String before = gravity.equals("1") ? "0" : extract(gravity);
    return mass(litres, gravity)
        + "*("
        + extract(target)
        + "-"
        + before
        + ")/(100*"
        + solids
        + "-"
        + extract(target)
        + ")";
  }

  private static String sugarIn(String litres, String gravity, String kind) {
    return mass(litres, gravity) + "*" + extract(gravity) + "/100/" + solids(kind);
  }

  /** The share of dry solids of a kind named in a cell. */
  static String solids(String kind) {
    String words =
        Arrays.stream(SugarKind.values())
            .map(k -> "\"" + k.name() + "\"")
            .collect(Collectors.joining(","));
    String shares =
        Arrays.stream(SugarKind.values())
            .map(k -> Numbers.show(k.solids()))
            .collect(Collectors.joining(","));
    return "CHOOSE(MATCH(" + kind + ",{" + words + "},0)," + shares + ")";
  }

  private static void masses(Book book, Form form, int first) {
    book.put(form.sheet(), first - 2, 4, "kg", Form.head("0.000"));
    book.put(form.sheet(), first - 2, 5, "kg extract", Form.head("0.000"));
    for (int row = first; row < first + 6; row++) {
      String both = "IF(COUNT(B" + row + ",C" + row + ")<2,0,";
      book.put(form.sheet(), row - 1, 4, null, Look.cell("0.000;-0.000;"))
          .setCellFormula(both + mass("B" + row, "C" + row) + ")");
      book.put(form.sheet(), row - 1, 5, null, Look.cell("0.000;-0.000;"))
          .setCellFormula(both + "E" + row + "*" + extract("C" + row) + "/100)");
    }
  }
}
