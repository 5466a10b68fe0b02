package washbook.samples.sheets;

import static washbook.samples.sheets.Form.when;

/** A sheet for making up a wash. */
final class StarterMakeUp {
  private StarterMakeUp() {}

  static Book make() {
    Book book = new Book("Making up a wash");
    sugar(book);
    juice(book);
    book.widths(book.workbook().getSheetAt(0), 34, 12, 10, 58);
    book.widths(book.workbook().getSheetAt(1), 34, 12, 10, 58);
    return book;
  }

  private static void sugar(Book book) {
    Form form = new Form(book, "Sugar wash", 3);
    form.head(
        "Making up a sugar wash",
        "Type into the tinted cells. All volumes at 20 °C, all gravities SG 20/20. Needs the"
            + " Washbook functions.",
        5);
    form.section("So much water, so strong a wash");
    String water = form.input("Water", 20, "0.0", "L", "what goes into the vessel first");
    String target = form.input("Gravity wanted", 1.08, "0.000", "SG", "");
    String kind =
        form.input(
            "Kind of sugar", "SUCROSE", "General", "", "SUCROSE, DEXTROSE, INVERT, HONEY, ...");
    String kilograms =
        form.result(
            "Sugar",
            when("SUGARFORGRAVITY(" + water + ",1," + target + "," + kind + ")", water, target),
            "0.000",
            "kg",
            "");
    form.result(
        "Wash in all",
        when("VOLUMEAFTERSUGAR(" + water + ",1," + kilograms + "," + kind + ")", water, kilograms),
        "0.00",
        "L",
        "sugar takes room too");
    alcohol(form, target, kind);
    form.section("A vessel of so many litres, full");
    String litres = form.input("Wash in all", 25, "0.0", "L", "leave head space for foam");
    String wanted = form.input("Gravity wanted", 1.075, "0.000", "SG", "");
    form.result(
        "Sugar",
        when("SUGARFORVOLUME(" + litres + "," + wanted + "," + kind + ")", litres, wanted),
        "0.000",
        "kg",
        "of the kind above");
    form.result(
        "Water",
        when("WATERFORVOLUME(" + litres + "," + wanted + "," + kind + ")", litres, wanted),
        "0.00",
        "L",
        "");
    form.section("So strong when it is done");
    String abv = form.input("Alcohol wanted", 10, "0.0", "% vol", "");
    String end = form.input("Gravity at the end", 0.995, "0.000", "SG", "where it usually stops");
    form.result(
        "Gravity to start with",
        when("ORIGINALFORABV(" + abv + "," + end + ")", abv, end),
        "0.0000",
        "SG",
        "");
  }

  private static void alcohol(Form form, String target, String kind) {
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
        "Carbon dioxide from 20 L",
        when("CARBONDIOXIDE(" + target + "," + end + ",20)", target, end),
        "0",
        "g",
        "air the room: a gram is about half a litre");
  }

  private static void juice(Book book) {
    Form form = new Form(book, "Juice and blends", 3);
    form.head(
        "Juice, must and blends",
        "Type into the tinted cells. All volumes at 20 °C. Needs the Washbook functions.",
        5);
    form.section("Lift a juice with sugar");
    String litres = form.input("Juice", 40, "0.0", "L", "pressed and strained");
    String gravity = form.input("Its gravity", 1.052, "0.000", "SG", "corrected to 20 °C");
    String target = form.input("Gravity wanted", 1.07, "0.000", "SG", "");
    String sugar =
        form.result(
            "Sugar",
            when(
                "SUGARFORGRAVITY(" + litres + "," + gravity + "," + target + ")",
                litres,
                gravity,
                target),
            "0.000",
            "kg",
            "");
    form.result(
        "Juice in all",
        when(
            "VOLUMEAFTERSUGAR(" + litres + "," + gravity + "," + sugar + ")",
            litres,
            gravity,
            sugar),
        "0.00",
        "L",
        "");
    form.section("Bring a must down with water");
    String must = form.input("Must", 30, "0.0", "L", "");
    String strong = form.input("Its gravity", 1.098, "0.000", "SG", "");
    String weaker = form.input("Gravity wanted", 1.085, "0.000", "SG", "");
    form.result(
        "Water",
        when("WATERFORGRAVITY(" + must + "," + strong + "," + weaker + ")", must, strong, weaker),
        "0.00",
        "L",
        "");
    form.section("Several juices together");
    int first =
        form.table(
            6,
            new String[] {"Litres", "SG", "", "Which"},
            new Object[][] {{25, 1.052, null, "Apple 7"}, {15, 1.084, null, "Plum 3"}},
            "0.0",
            "0.000",
            "General",
            "General");
    String litresOf = "$A$" + first + ":$A$" + (first + 5);
    String gravitiesOf = "$B$" + first + ":$B$" + (first + 5);
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
    String from =
        form.input("Scale it is on", "BRIX", "General", "", "SG, BRIX, PLATO, OECHSLE, ...");
    String to = form.input("Scale wanted", "SG", "General", "", "");
    form.result(
        "Value there",
        when("CONVERT(" + value + "," + from + "," + to + ")", value),
        "0.0000",
        "",
        "");
  }
}
