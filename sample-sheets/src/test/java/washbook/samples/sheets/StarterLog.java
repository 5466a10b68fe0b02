package washbook.samples.sheets;

import java.math.BigDecimal;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.util.CellRangeAddress;
import washbook.log.sheet.CellAddress;
import washbook.samples.ferment.Entry;
import washbook.samples.ferment.Ferment;
import washbook.samples.ferment.Instrument;
import washbook.samples.sheets.Book.Look;

/** A log sheet ready to be filled in, and the same with a batch as an example. */
final class StarterLog {
  /** A sheet each for the batches of one workbook. */
  private static final List<String> BATCHES = List.of("Log", "Log 2", "Log 3");

  private static final int ROWS = 60;
  private static final int PLUS_OR_MINUS = 7;
  private static final int READING = 2;
  private static final int WASH = 3;
  private static final int APPARENT = 8;
  private static final int NOTES = 11;

  /** Hidden, and not printed: readings as SG and temperatures in °C. */
  private static final int GRAVITY = 13;

  private static final int CELSIUS = 14;
  private static final String[] HEADS = {
    "Date",
    "Time",
    "Reading",
    "Wash",
    "Day",
    "Corrected gravity",
    "Alcohol to date (% vol)",
    "Plus or minus (% vol)",
    "Apparent attenuation (%)",
    "Real attenuation (%)",
    "Sugar left (g/L)",
    "Notes",
    "Reason if missing"
  };
  private static final String[] FORMATS = {
    "yyyy-mm-dd",
    "hh:mm",
    "0.000",
    "0.0",
    "0.0",
    "0.0000",
    "0.00",
    "0.00",
    "0",
    "0",
    "0",
    "General",
    "General"
  };

  /** The first row of the table, from 1. */
  private static final int FIRST = 14;

  private final Book book;
  private final LogScale scale;

  private StarterLog(Book book, LogScale scale) {
    this.book = book;
    this.scale = scale;
  }

  static Book make(boolean portable, LogScale scale) {
    Book book = Book.forPaper("Ferment log");
    StarterLog starter = new StarterLog(book, scale);
    for (String name : BATCHES) {
      starter.sheet(name, null, portable);
    }
    starter.sheet("Example", Ferment.PLUM_3, portable);
    StarterBatches.add(book, portable, BATCHES, FIRST, FIRST + ROWS - 1);
    return book;
  }

  private void sheet(String name, Ferment ferment, boolean portable) {
    Form form = new Form(book, name, HEADS.length - 1, 3, portable);
    form.head(
        "Ferment log",
        "Type into the tinted cells: what you read, at the temperature of the wash. The rest is"
            + " calculated. A time left blank counts as noon. Each batch has a sheet of its"
            + " own, with its charts at the right: Log, Log 2, Log 3, and all of them together in"
            + " Batches.",
        3);
    String batch = form.input("Batch", ferment == null ? null : ferment.name(), "General", "", "");
    double usual = scale.isFahrenheit() ? 60 : 20;
    String calibration = form.input("Hydrometer calibrated at", usual, "0.0", scale.degrees(), "");
    String calibratedC = helper(form, scale.celsius(calibration));
    String stated =
        form.input("Original gravity, if known", null, "0.0000", "", "SG; else the first reading");
    String end = form.input("Gravity expected at the end", 1.0, "0.000", "SG", "");
    String warm =
        form.input("Too warm above", scale.shown(30), "0.0", scale.degrees(), "your yeast decides");
    if (scale == LogScale.BRIX) {
      form.between(calibration, 20, 20, "For degrees Brix of 20 °C; convert others to SG");
    } else {
      form.between(
          calibration,
          scale.shown(0),
          scale.shown(60),
          scale.isFahrenheit() ? "Usually 60 or 68 °F" : "Usually 20, 15 or 15.56 (60 °F)");
    }
    form.between(stated, 0.98, 1.19, "Corrected gravity, 0.980 to 1.190");
    form.between(end, 0.98, 1.19, "Gravity, 0.980 to 1.190");
    int header = FIRST - 2;
    int first = FIRST;
    int last = first + ROWS - 1;
    String gravities = "$F$" + first + ":$F$" + last;
    String days = "$E$" + first + ":$E$" + last;
    String original =
        form.result(
            "Original gravity used",
            "IF(ISNUMBER("
                + stated
                + "),"
                + stated
                + ",IF(ISNUMBER($F$"
                + first
                + "),$F$"
                + first
                + ",\"\"))",
            "0.0000",
            "SG",
            "");
    String enough = "IF(COUNT(" + gravities + ")<3,\"\",WASHBOOK.";
    if (portable) {
      form.result("Days to date", Form.plain("MAX(" + days + ")", "$E$" + first), "0.0", "", "");
      form.result(
          "Fallen in all",
          Form.plain("1000*(" + original + "-MIN(" + gravities + "))", original, "$F$" + first),
          "0",
          "points",
          "");
    } else {
      form.result(
          "State",
          enough + "FERMENTSTATE(" + days + "," + gravities + "," + end + "))",
          "General",
          "",
          "");
      String state = "D" + form.row();
      form.warn(state + ":" + state, "$" + state + "=\"stuck\"");
      form.result(
          "Falling by",
          "IF(COUNT("
              + gravities
              + ")<2,\"\",WASHBOOK.FERMENTRATE("
              + days
              + ","
              + gravities
              + "))",
          "0.0",
          "points a day",
          "");
    }
    if (form.row() > header) {
      throw new IllegalStateException("the table begins too early");
    }
    for (int column = 0; column < HEADS.length; column++) {
      String head = portable && column == PLUS_OR_MINUS ? "Points fallen" : HEADS[column];
      head = column == READING ? scale.head : head;
      head = column == WASH ? "Wash (" + scale.degrees() + ")" : head;
      book.put(form.sheet(), header, column, Form.headText(head), Form.head(FORMATS[column]));
    }
    form.between(
        "C" + first + ":C" + last,
        scale.least,
        scale.most,
        scale.head + ", " + plain(scale.least) + " to " + plain(scale.most));
    form.between(
        "D" + first + ":D" + last,
        scale.shown(0),
        scale.shown(60),
        "Temperature of the wash in "
            + scale.degrees()
            + ", "
            + plain(scale.shown(0))
            + " to "
            + plain(scale.shown(60)));
    form.caution(
        "C" + (header + 1), "Take the gas out of the sample first: bubbles lift the hydrometer.");
    form.caution(
        "D" + (header + 1),
        "A ferment gives off carbon dioxide, which gathers unseen in low and closed rooms: air the"
            + " room before you go in.");
    form.sheet().setRepeatingRows(new CellRangeAddress(header, header, -1, -1));
    form.sheet().getRow(header).setHeightInPoints(46);
    for (int row = first; row <= last; row++) {
      line(form, row, first, calibratedC, stated, original, warm);
    }
    if (ferment != null) {
      example(form, first, ferment);
    }
    form.warn("M" + first + ":M" + last, "ISNUMBER(SEARCH(\"too warm\",$M" + first + "))");
    book.widths(form.sheet(), 11, 6, 8, 8, 6, 10, 9, 8, 11, 11, 9, 18, 20, 9, 9);
    form.sheet().setColumnHidden(GRAVITY, true);
    form.sheet().setColumnHidden(CELSIUS, true);
    form.done();
    form.sheet().createFreezePane(0, header + 1);
    new CurvePage(book, form.sheet(), first - 1, ROWS, "E", curves())
        .add(batch, "Days since the first reading", 7);
  }

  private List<CurvePage.Curve> curves() {
    return List.of(
        new CurvePage.Curve("F", "Corrected gravity (SG)", "0.0000", "0.000", 0.98, 1.04, "1F4E5F"),
        new CurvePage.Curve("G", "Alcohol to date (% vol)", "0.00", "0", 0, 5, "9C3D10"),
        new CurvePage.Curve(
            "D",
            "Wash (" + scale.degrees() + ")",
            "0.0",
            "0",
            scale.shown(0),
            scale.shown(30),
            "3F6B1F"));
  }

  /** A calculated cell in the hidden column beside the line written last. */
  private String helper(Form form, String formula) {
    book.put(form.sheet(), form.row() - 1, CELSIUS, null, Look.PLAIN).setCellFormula(formula);
    return "$" + CellAddress.letters(CELSIUS) + "$" + form.row();
  }

  private static String plain(double number) {
    return new BigDecimal(Double.toString(number)).stripTrailingZeros().toPlainString();
  }

  private void line(
      Form form,
      int row,
      int first,
      String calibratedC,
      String stated,
      String original,
      String warm) {
    for (int column = 0; column < HEADS.length; column++) {
      boolean typed = column < 4 || column == NOTES;
      book.put(
          form.sheet(),
          row - 1,
          column,
          null,
          column >= NOTES
              ? Form.cell(format(column), typed).wrapping()
              : Form.cell(format(column), typed));
    }
    book.put(form.sheet(), row - 1, GRAVITY, null, Look.PLAIN)
        .setCellFormula(number("C" + row, scale.gravity("C" + row)));
    book.put(form.sheet(), row - 1, CELSIUS, null, Look.PLAIN)
        .setCellFormula(number("D" + row, scale.celsius("D" + row)));
    String reading = "N" + row + ",O" + row + "," + calibratedC;
    String corrected = "WASHBOOK.CORRECTEDGRAVITY(" + reading;
    String gravity =
        row == first
            ? "IF(ISNUMBER(" + stated + ")," + corrected + "," + stated + ")," + corrected + "))"
            : "IF(ISNUMBER(" + original + ")," + corrected + "," + original + "),\"\")";
    formula(
        form,
        row,
        "E",
        "IF(COUNT(A"
            + row
            + ")<1,\"\",(A"
            + row
            + "-$A$"
            + first
            + ")+("
            + noon("B" + row)
            + "-"
            + noon("$B$" + first)
            + "))");
    formula(form, row, "F", "IF(COUNT(" + reading + ")<3,\"\",IFERROR(" + gravity + ",\"\"))");
    String two = "(" + original + ",F" + row + ")";
    String both = "IF(COUNT" + two + "<2,\"\",IFERROR(WASHBOOK.";
    formula(form, row, "G", both + "ABV" + two + ",\"\"))");
    String alcohol = "IF(COUNT(G" + row + ")<1,\"\",";
    String fallen = "1000*(" + original + "-F" + row + ")";
    formula(form, row, "H", alcohol + form.either("WASHBOOK.ABVPLUSMINUS" + two, fallen) + ")");
    formula(form, row, "I", alcohol + "WASHBOOK.APPARENTATTENUATION" + two + ")");
    formula(form, row, "J", alcohol + "WASHBOOK.REALATTENUATION" + two + ")");
    formula(form, row, "K", alcohol + "WASHBOOK.SUGARLEFT" + two + ")");
    String because = why(form, row, reading + (row == first ? "" : "," + original), two);
    formula(
        form,
        row,
        "M",
        "IF(AND(ISNUMBER(D" + row + "),D" + row + ">" + warm + "),\"too warm\"," + because + ")");
  }

  /** A number turned into another; blank where there is none. */
  private static String number(String cell, String formula) {
    return "IF(ISNUMBER(" + cell + ")," + formula + ",\"\")";
  }

  private static String noon(String cell) {
    return "IF(ISNUMBER(" + cell + ")," + cell + ",0.5)";
  }

  /** Why a reading has no corrected gravity or no alcohol. */
  private static String why(Form form, int row, String reading, String two) {
    return "IF(NOT(ISNUMBER(C"
        + row
        + ")),IF(C"
        + row
        + "=\"\",\"\",\"the reading is text, not a number\"),IF(NOT(ISNUMBER(D"
        + row
        + ")),IF(D"
        + row
        + "=\"\",\"no temperature\",\"the temperature is text, not a number\"),IF(NOT(ISNUMBER(F"
        + row
        + ")),"
        + form.either(
            "WASHBOOK.REASON(\"CORRECTEDGRAVITY\"," + reading + ")",
            "\"reading or temperature out of range\"")
        + ",IF(NOT(ISNUMBER(G"
        + row
        + ")),"
        + form.either(
            "WASHBOOK.REASON(\"ABV\"," + two.substring(1),
            "\"does not go with the original gravity\"")
        + ",\"\"))))";
  }

  private static void formula(Form form, int row, String column, String text) {
    Cell cell = form.sheet().getRow(row - 1).getCell(column.charAt(0) - 'A');
    cell.setCellFormula(text);
  }

  private void example(Form form, int first, Ferment ferment) {
    List<Entry> entries =
        Entry.readings(ferment, hydrometer(), scale.thermometer, 0, 1, 2, 3, 4, 5, 7, 9, 12);
    int row = first - 1;
    for (Entry e : entries) {
      Object[] typed = {e.time().toLocalDate(), e.time().toLocalTime(), e.shown(), e.temperature()};
      for (int column = 0; column < typed.length; column++) {
        book.put(form.sheet(), row, column, typed[column], Form.cell(format(column), true));
      }
      row++;
    }
    book.put(
        form.sheet(), first - 1, NOTES, "invented figures", Form.cell("General", true).wrapping());
  }

  private String format(int column) {
    if (scale == LogScale.BRIX && (column == APPARENT || column == APPARENT + 1)) {
      // The reading's tenths are half a per cent of it.
      return "0.0";
    }
    return column == READING ? scale.format : FORMATS[column];
  }

  /** As the sheet's own is calibrated. */
  private Instrument hydrometer() {
    Instrument instrument = scale.hydrometer();
    return scale.isFahrenheit() ? instrument.calibratedAt(Instrument.SIXTY_F) : instrument;
  }
}
