package washbook.samples.sheets;

import static washbook.samples.sheets.Form.when;

/** A sheet for the still charge and one for spirit. */
final class StarterStill {
  private StarterStill() {}

  static Book make() {
    Book book = new Book("Still charge and dilution");
    charge(book);
    spirit(book);
    book.widths(book.workbook().getSheetAt(0), 34, 12, 10, 58);
    book.widths(book.workbook().getSheetAt(1), 34, 12, 10, 58);
    return book;
  }

  private static void charge(Book book) {
    Form form = new Form(book, "Still charge", 3);
    form.head(
        "What a charge holds and what a plain pot run gives",
        "Type into the tinted cells. An estimate for planning: a real still differs. It does not"
            + " say where to cut. Needs the Washbook functions.",
        5);
    form.section("The charge");
    String litres = form.input("Wash in the still", 25, "0.0", "L", "at 20 °C; leave head space");
    String og = form.input("Original gravity", 1.085, "0.0000", "SG", "corrected");
    String fg = form.input("Gravity now", 0.998, "0.0000", "SG", "corrected");
    String abv =
        form.result(
            "Alcohol in it", when("ABV(" + og + "," + fg + ")", og, fg), "0.00", "% vol", "");
    form.result(
        "Pure alcohol in the charge",
        when("CHARGEALCOHOL(" + litres + "," + og + "," + fg + ")", litres, og, fg),
        "0.00",
        "L",
        "of 100 %, for your own books: excise has its own rules");
    form.section("A plain run without reflux");
    String pressure = form.input("Air pressure", 1013.25, "0.0", "hPa", "at the still");
    form.result(
        "Boils at",
        when("BOILINGPOINT(" + abv + "," + pressure + ")", abv, pressure),
        "0.0",
        "°C",
        "");
    form.result("First vapour", when("VAPOURSTRENGTH(" + abv + ")", abv), "0.0", "% vol", "");
    String stop = form.input("Stop when it runs at", 10, "0.0", "% vol", "");
    form.result(
        "Run in all",
        when("RUNVOLUME(" + litres + "," + abv + "," + stop + ")", litres, abv, stop),
        "0.00",
        "L",
        "all of it, heads and tails too");
    form.result(
        "Its strength",
        when("RUNSTRENGTH(" + abv + "," + stop + ")", abv, stop),
        "0.0",
        "% vol",
        "");
    form.result(
        "Of the alcohol", when("RUNRECOVERY(" + abv + "," + stop + ")", abv, stop), "0.0", "%", "");
  }

  private static void spirit(Book book) {
    Form form = new Form(book, "Spirit and dilution", 3);
    form.head(
        "True strength, pure alcohol and dilution",
        "Type into the tinted cells. Strengths are % vol at 20 °C. Needs the Washbook functions.",
        5);
    form.section("What the alcoholmeter means");
    String reading = form.input("Reading", 66.5, "0.0", "% vol", "no sugar, no wood in it");
    String celsius = form.input("Temperature", 24, "0.0", "°C", "of the sample");
    String strength =
        form.result(
            "True strength",
            when("TRUESTRENGTH(" + reading + "," + celsius + ")", reading, celsius),
            "0.00",
            "% vol",
            "at 20 °C");
    String measured =
        form.input("Litres as measured", 6.5, "0.00", "L", "at the temperature above");
    String litres =
        form.result(
            "Litres at 20 °C",
            when(
                "VOLUMEAT20(" + measured + "," + celsius + "," + strength + ")",
                measured,
                strength,
                celsius),
            "0.000",
            "L",
            "");
    form.result(
        "Pure alcohol",
        when("PUREALCOHOL(" + litres + "," + strength + ")", litres, strength),
        "0.000",
        "L",
        "");
    form.section("Dilute it");
    String target = form.input("Strength wanted", 40, "0.0", "% vol", "");
    form.result(
        "Water",
        when(
            "DILUTIONWATER(" + litres + "," + strength + "," + target + ")",
            litres,
            strength,
            target),
        "0.000",
        "L",
        "at 20 °C; slowly, the mixture warms and shrinks");
    form.result(
        "Spirit then",
        when(
            "DILUTEDVOLUME(" + litres + "," + strength + "," + target + ")",
            litres,
            strength,
            target),
        "0.000",
        "L",
        "less than the sum");
    String wanted = form.input("Or: litres wanted", 5, "0.00", "L", "of the strength wanted");
    form.result(
        "Spirit to take",
        when(
            "SPIRITFORVOLUME(" + wanted + "," + target + "," + strength + ")",
            wanted,
            target,
            strength),
        "0.000",
        "L",
        "");
    form.section("Blend");
    int first =
        form.table(
            6,
            new String[] {"Litres", "% vol", "", "Which"},
            new Object[][] {
              {4, 65, null, "Plum 3"}, {2, 40, null, "Apple 7"}, {1, 0, null, "water"}
            },
            "0.00",
            "0.0",
            "General",
            "General");
    String litresOf = "$A$" + first + ":$A$" + (first + 5);
    String strengths = "$B$" + first + ":$B$" + (first + 5);
    String some = "IF(COUNT(" + litresOf + ")<1,\"\",WASHBOOK.";
    form.result(
        "Strength of the blend",
        some + "BLENDSTRENGTH(" + litresOf + "," + strengths + "))",
        "0.00",
        "% vol",
        "");
    form.result(
        "Litres of the blend",
        some + "BLENDVOLUME(" + litresOf + "," + strengths + "))",
        "0.000",
        "L",
        "");
  }
}
