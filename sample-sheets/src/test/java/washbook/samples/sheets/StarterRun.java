package washbook.samples.sheets;

import static washbook.samples.sheets.Form.when;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import washbook.samples.sheets.Book.Look;

/** A log of one still run, jar by jar, with an example, and a sheet to plan it. */
final class StarterRun {
  private static final int ROWS = 30;
  private static final String[] HEADS = {
    "Jar",
    "Minutes",
    "Vapour (°C)",
    "Reading (% vol)",
    "Spirit (°C)",
    "Litres",
    "True strength (% vol)",
    "Pure alcohol (L)",
    "Total to date (L)",
    "Of the charge (%)",
    "Cut",
    "Notes"
  };
  private static final List<String> CUTS = List.of("heads", "hearts", "tails", "back to the still");

  /** Hidden, and not printed: the jar's litres at 20 °C. */
  private static final int AT_20 = 12;

  private static final String[] FORMATS = {
    "0", "0", "0.0", "0.0", "0.0", "0.00", "0.0", "0.000", "0.00", "0", "General", "General"
  };

  /** Invented: minutes, vapour, reading, sample, litres. */
  private static final double[][] EXAMPLE = {
    {0, 78.9, 81.5, 22, 0.15},
    {12, 80.2, 79.0, 23, 0.5},
    {30, 82.1, 75.5, 23.5, 0.5},
    {48, 84.6, 70.0, 24, 0.5},
    {66, 87.3, 62.5, 24, 0.5},
    {84, 90.2, 51.5, 24.5, 0.5},
    {102, 93.1, 37.0, 25, 0.5},
    {120, 95.6, 23.5, 25, 0.5},
    {138, 97.6, 13.0, 25, 0.5},
  };

  private StarterRun() {}

  static Book make(boolean portable) {
    Book book = Book.forPaper("Still-run log");
    for (String name : List.of("Run", "Run 2", "Run 3")) {
      sheet(book, name, false, portable);
    }
    sheet(book, "Example", true, portable);
    if (!portable) {
      plan(book);
      book.widths(book.workbook().getSheet("Plan"), 29, 10, 9, 45);
    }
    return book;
  }

  private static final List<CurvePage.Curve> CURVES =
      List.of(
          new CurvePage.Curve("G", "True strength (% vol)", "0.00", "0", 0, Double.NaN, "9C3D10"),
          new CurvePage.Curve("C", "Vapour (°C)", "0.0", "0", 60, 100, "3F6B1F"),
          new CurvePage.Curve("I", "Pure alcohol to date (L)", "0.000", "0.0", 0, 1, "1F4E5F"));

  /** The first row of the table, from 1. */
  private static final int FIRST = 14;

  /** Where the cuts stand, from 0. */
  private static final int CUTS_ROW = 3;

  private static final int NOTES = 11;
  private static final int CUTS_COLUMN = 6;

  private static void sheet(Book book, String name, boolean example, boolean portable) {
    Form form = new Form(book, name, HEADS.length - 1, 3, portable);
    form.head(
        "Still-run log",
        "Type into the tinted cells, a line a jar: what the alcoholometer shows in the spirit, how"
            + " warm the spirit is, and the litres in the jar at that temperature. Each run has a"
            + " sheet of its own, with its charts at the right: Run, Run 2, Run 3.",
        3);
    String batch = form.input("Batch", example ? "Plum 3" : null, "General", "", "");
    String litres = form.input("Wash in the still", example ? 25 : null, "0.0", "L", "");
    String og = form.input("Original gravity", example ? 1.0837 : null, "0.0000", "SG", "");
    String fg = form.input("Gravity at the end", example ? 0.9989 : null, "0.0000", "SG", "");
    form.between(litres, 0.1, 100000, "Litres at 20 °C; leave head space for foam");
    form.between(og, 0.98, 1.19, "Corrected gravity, 0.980 to 1.190");
    form.between(fg, 0.98, 1.19, "Corrected gravity, 0.980 to 1.190");
    String charge =
        form.result(
            "Pure alcohol in the charge",
            form.either(
                when("CHARGEALCOHOL(" + litres + "," + og + "," + fg + ")", litres, og, fg),
                "IF(COUNT("
                    + String.join(",", litres, og, fg)
                    + ")<3,\"\","
                    + litres
                    + "*WASHBOOK.ABV("
                    + og
                    + ","
                    + fg
                    + ")/100)"),
            "0.00",
            "L",
            "");
    book.put(
        form.sheet(), form.row(), 0, "For your own books: excise has its own rules.", Look.PLAIN);
    cuts(book, form, charge);
    int header = FIRST - 2;
    for (int column = 0; column < HEADS.length; column++) {
      book.put(
          form.sheet(), header, column, Form.headText(HEADS[column]), Form.head(FORMATS[column]));
    }
    form.sheet().getRow(header).setHeightInPoints(40);
    for (int row = FIRST; row < FIRST + ROWS; row++) {
      line(book, form, row, charge);
    }
    if (example) {
      example(book, form);
    }
    form.between(cells("B"), 0, 100000, "Minutes since the first drop");
    form.between(cells("C"), 0, 110, "Temperature of the vapour in °C");
    form.between(cells("D"), 0, 100, "% vol as read, 0 to 100");
    form.between(cells("E"), -20, 40, "Temperature of the spirit in °C, -20 to 40");
    form.between(cells("F"), 0, 10000, "Litres in the jar");
    form.choose(cells("K"), CUTS.toArray(String[]::new));
    form.caution(
        "K" + (FIRST - 1),
        "Where to divide is yours to judge. No figure here says that a spirit is safe to drink:"
            + " methanol cannot be tasted.");
    form.caution(
        "C" + (FIRST - 1),
        "Vapour burns: keep flames and sparks away, ventilate well; never a closed still.");
    book.widths(form.sheet(), 6, 8, 8, 9, 8, 7, 16, 11, 11, 11, 14, 26);
    for (int column = AT_20; column < CurvePage.FIRST_COLUMN - 1; column++) {
      form.sheet().setColumnHidden(column, true);
    }
    form.done();
    form.sheet().createFreezePane(0, header + 1);
    form.sheet().setRepeatingRows(new CellRangeAddress(header, header, -1, -1));
    new CurvePage(book, form.sheet(), FIRST - 1, ROWS, "B", CURVES)
        .add(batch, "Minutes since the first drop", 60);
  }

  private static String cells(String column) {
    return column + FIRST + ":" + column + (FIRST + ROWS - 1);
  }

  /** Beside the settings: litres, mean strength and pure alcohol of each cut, and of all. */
  private static void cuts(Book book, Form form, String charge) {
    String[] heads = {"Cut", "Total", "Mean strength", "Total pure alcohol", "Of the charge", ""};
    String[] formats = {
      "General", "0.00\" L\"", "0.0\" % vol\"", "0.00\" L\"", "0\" %\"", "General"
    };
    int row = CUTS_ROW;
    for (int i = 0; i < heads.length; i++) {
      book.put(form.sheet(), row, CUTS_COLUMN + i, Form.headText(heads[i]), Form.head(formats[i]));
    }
    form.sheet().getRow(row).setHeightInPoints(40);
    for (String cut : CUTS) {
      cut(book, form, ++row, cut, "(" + fixed("K") + "=\"" + cut + "\")*1", charge, formats);
    }
    cut(book, form, ++row, "no cut named", "(" + fixed("K") + "=\"\")*1", charge, formats);
    cut(book, form, ++row, "Total", "(" + fixed("A") + "<>\"\")*1", charge, formats);
  }

  /**
   * @param chosen 1 for each jar that counts, else 0
   */
  private static void cut(
      Book book, Form form, int row, String name, String chosen, String charge, String[] formats) {
    Look word = Form.cell("General", false);
    book.put(form.sheet(), row, CUTS_COLUMN, name, name.equals("Total") ? word.strong() : word);
    String jars = "SUMPRODUCT(" + chosen + ",ISNUMBER(" + fixed("F") + ")*1)";
    String known = "SUMPRODUCT(" + chosen + ",ISNUMBER(" + fixed("M") + ")*1)";
    String pure = "J" + (row + 1);
    String[] formulas = {
      "IF(" + jars + "=0,\"\",SUMPRODUCT(" + chosen + "," + fixed("F") + "))",
      "IF(N(" + pure + ")<=0,\"\",100*" + pure + "/SUMPRODUCT(" + chosen + "," + fixed("M") + "))",
      "IF(OR("
          + jars
          + "=0,"
          + jars
          + "<>"
          + known
          + "),\"\",SUMPRODUCT("
          + chosen
          + ","
          + fixed("H")
          + "))",
      "IF(COUNT(" + pure + "," + charge + ")<2,\"\",100*" + pure + "/" + charge + ")",
      "IF(" + jars + "=" + known + ",\"\",\"a jar has no strength yet\")"
    };
    for (int i = 0; i < formulas.length; i++) {
      Look look = Form.cell(formats[i + 1], false);
      book.put(
              form.sheet(),
              row,
              CUTS_COLUMN + 1 + i,
              null,
              name.equals("Total") ? look.strong() : look)
          .setCellFormula(formulas[i]);
    }
  }

  private static String fixed(String column) {
    return "$" + column + "$" + FIRST + ":$" + column + "$" + (FIRST + ROWS - 1);
  }

  private static void line(Book book, Form form, int row, String charge) {
    for (int column = 0; column < HEADS.length; column++) {
      boolean typed = column < 6 || column > 9;
      book.put(
          form.sheet(),
          row - 1,
          column,
          column == 0 ? row - FIRST + 1 : null,
          column == NOTES
              ? Form.cell(FORMATS[column], typed).wrapping()
              : Form.cell(FORMATS[column], typed));
    }
    String both = "IF(COUNT(D" + row + ",E" + row + ")<2,\"\",";
    formula(form, row, "G", both + "WASHBOOK.TRUESTRENGTH(D" + row + ",E" + row + "))");
    String litres =
        form.either(
            "WASHBOOK.VOLUMEAT20(F" + row + ",E" + row + ",G" + row + ")",
            volumeAt20("F" + row, "E" + row, "G" + row));
    book.put(form.sheet(), row - 1, AT_20, null, Look.PLAIN)
        .setCellFormula("IF(COUNT(F" + row + ",G" + row + ")<2,\"\"," + litres + ")");
    formula(form, row, "H", "IF(ISNUMBER(M" + row + "),M" + row + "*G" + row + "/100,\"\")");
    formula(form, row, "I", "IF(ISNUMBER(H" + row + "),SUM(H$" + FIRST + ":H" + row + "),\"\")");
    formula(
        form,
        row,
        "J",
        "IF(COUNT(I" + row + "," + charge + ")<2,\"\",100*I" + row + "/" + charge + ")");
  }

  /** Plain formulas have the expansion in the pure alcohol, which is none in water. */
  static String volumeAt20(String litres, String celsius, String strength) {
    return "IF("
        + strength
        + ">0,WASHBOOK.PUREALCOHOL("
        + String.join(",", litres, strength, celsius)
        + ")*100/"
        + strength
        + ","
        + litres
        + ")";
  }

  private static void formula(Form form, int row, String column, String text) {
    form.sheet().getRow(row - 1).getCell(column.charAt(0) - 'A').setCellFormula(text);
  }

  private static void example(Book book, Form form) {
    for (int i = 0; i < EXAMPLE.length; i++) {
      for (int j = 0; j < EXAMPLE[i].length; j++) {
        book.put(
            form.sheet(), FIRST - 1 + i, j + 1, EXAMPLE[i][j], Form.cell(FORMATS[j + 1], true));
      }
      String cut = CUTS.get(i == 0 ? 0 : i < 5 ? 1 : 2);
      book.put(form.sheet(), FIRST - 1 + i, 10, cut, Form.cell("General", true));
    }
    book.put(
        form.sheet(), FIRST - 1, 11, "invented figures", Form.cell("General", true).wrapping());
  }

  private static void plan(Book book) {
    Form form = new Form(book, "Plan", 3, 1, false);
    form.head(
        "What a charge holds and what a plain pot run gives",
        "Type into the tinted cells. An estimate for planning: a real still differs. It does not"
            + " say where to cut.",
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
        "Share of the alcohol",
        when("RUNRECOVERY(" + abv + "," + stop + ")", abv, stop),
        "0.0",
        "%",
        "what stays behind is weaker than the stop");
    form.done();
  }
}
