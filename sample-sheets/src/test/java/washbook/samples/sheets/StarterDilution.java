package washbook.samples.sheets;

import static washbook.samples.sheets.Form.plain;
import static washbook.samples.sheets.Form.when;

import washbook.samples.sheets.Book.Look;

/** A bench for spirit: true strength, dilution and blends. */
final class StarterDilution {
  private StarterDilution() {}

  static Book make(boolean portable) {
    Book book = Book.forPaper("Dilution and blending");
    bench(book, portable).done();
    book.widths(book.workbook().getSheetAt(0), 26, 10, 8, 30, 7, 11);
    return book;
  }

  private static Form bench(Book book, boolean portable) {
    Form form = new Form(book, "Dilution and blending", 5, 1, portable);
    form.head(
        "True strength, pure alcohol and dilution",
        "Type into the tinted cells. Strengths are % vol at 20 °C.",
        5);
    form.section("What the alcoholometer means");
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
            form.either(
                when(
                    "VOLUMEAT20(" + measured + "," + celsius + "," + strength + ")",
                    measured,
                    strength,
                    celsius),
                plain(
                    StarterRun.volumeAt20(measured, celsius, strength),
                    measured,
                    strength,
                    celsius)),
            "0.00",
            "L",
            "");
    form.result(
        "Pure alcohol",
        when("PUREALCOHOL(" + litres + "," + strength + ")", litres, strength),
        "0.00",
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
        "0.00",
        "L",
        "at 20 °C; slowly, the mixture warms and shrinks");
    form.result(
        "Spirit then",
        form.either(
            when(
                "DILUTEDVOLUME(" + litres + "," + strength + "," + target + ")",
                litres,
                strength,
                target),
            plain(litres + "*" + strength + "/" + target, litres, strength, target)),
        "0.00",
        "L",
        "less than the sum");
    String wanted = form.input("Or: litres wanted", 5, "0.00", "L", "of the strength wanted");
    form.result(
        "Spirit to take",
        form.either(
            when(
                "SPIRITFORVOLUME(" + wanted + "," + target + "," + strength + ")",
                wanted,
                target,
                strength),
            plain(wanted + "*" + target + "/" + strength, wanted, target, strength)),
        "0.00",
        "L",
        "");
    form.section("Blend");
    int first =
        form.table(
            6,
            new String[] {"What", "Litres", "% vol"},
            new Object[][] {{"Plum 3", 4, 65}, {"Apple 7", 2, 40}, {"water", 1, 0}},
            "General",
            "0.00",
            "0.0");
    String litresOf = "$B$" + first + ":$B$" + (first + 5);
    String strengths = "$C$" + first + ":$C$" + (first + 5);
    form.between(litresOf, 0, 100000, "Litres at 20 °C");
    form.between(strengths, 0, 100, "% vol at 20 °C; water is 0");
    if (portable) {
      masses(book, form, first);
      String kilograms = "SUM($E$" + first + ":$E$" + (first + 5) + ")";
      String alcohol = "SUM($F$" + first + ":$F$" + (first + 5) + ")";
      String blend =
          form.result(
              "Strength of the blend",
              "IF("
                  + alcohol
                  + "=0,\"\",WASHBOOK.CONVERT(100*"
                  + alcohol
                  + "/"
                  + kilograms
                  + ",\"ABW\",\"ABV\"))",
              "0.00",
              "% vol",
              "");
      form.result(
          "Litres of the blend", plain(alcohol + "/0.78924*100/" + blend, blend), "0.00", "L", "");
      return form;
    }
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
        "0.00",
        "L",
        "");
    return form;
  }

  /** Kilograms of each spirit and of the alcohol in it; 789.24 kg/m3 is pure alcohol at 20 °C. */
  private static void masses(Book book, Form form, int first) {
    book.put(form.sheet(), first - 2, 4, "kg", Form.head("0.000"));
    book.put(form.sheet(), first - 2, 5, "kg alcohol", Form.head("0.000"));
    for (int row = first; row < first + 6; row++) {
      String litres = "B" + row;
      String strength = "C" + row;
      String density =
          "IF("
              + strength
              + "=0,998.2,789.24*"
              + strength
              + "/WASHBOOK.CONVERT("
              + strength
              + ",\"ABV\",\"ABW\"))";
      book.put(form.sheet(), row - 1, 4, null, Look.cell("0.000;-0.000;"))
          .setCellFormula(
              "IF(COUNT(" + litres + "," + strength + ")<2,0," + litres + "*" + density + "/1000)");
      book.put(form.sheet(), row - 1, 5, null, Look.cell("0.000;-0.000;"))
          .setCellFormula(
              "IF(COUNT("
                  + litres
                  + ","
                  + strength
                  + ")<2,0,"
                  + litres
                  + "*"
                  + strength
                  + "/100*0.78924)");
    }
  }
}
