package washbook.samples.sheets;

import java.util.List;
import washbook.samples.sheets.Book.Look;

/** The batches of a ready log beside each other, a line for each of its sheets. */
final class StarterBatches {
  private static final String[] HEADS = {
    "Sheet",
    "Batch",
    "Begun",
    "Days to date",
    "Original gravity",
    "Latest gravity",
    "Alcohol to date (% vol)",
    "Sugar left (g/L)",
    "State"
  };

  private StarterBatches() {}

  /**
   * @param first the first row of each log, from 1
   */
  static void add(Book book, boolean portable, List<String> logs, int first, int last) {
    Form form = new Form(book, "Batches", HEADS.length - 1, 1, portable);
    form.head(
        "All batches",
        "What the sheets of this workbook hold: nothing is typed here. For more batches than it has"
            + " sheets begin another copy of the file: a sheet copied inside it would go on drawing"
            + " the charts of the old one.",
        3);
    int row = form.row();
    String[] formats = {
      "General", "General", "yyyy-mm-dd", "0.0", "0.0000", "0.0000", "0.00", "0.0", "General"
    };
    int columns = portable ? HEADS.length - 1 : HEADS.length;
    for (int column = 0; column < columns; column++) {
      book.put(form.sheet(), row, column, Form.headText(HEADS[column]), Form.head(formats[column]));
    }
    form.sheet().getRow(row).setHeightInPoints(40);
    for (String log : logs) {
      row++;
      book.put(form.sheet(), row, 0, log, Form.cell("General", false));
      String[] formulas = {
        "IF(" + cell(log, "$D$5") + "=\"\",\"\"," + cell(log, "$D$5") + ")",
        number(log, "$A$" + first),
        latest(log, "E", first, last),
        number(log, "$D$10"),
        latest(log, "F", first, last),
        latest(log, "G", first, last),
        latest(log, "K", first, last),
        cell(log, "$D$11") + "&\"\""
      };
      for (int column = 1; column < columns; column++) {
        Look look = Form.cell(formats[column], false);
        book.put(form.sheet(), row, column, null, look).setCellFormula(formulas[column - 1]);
      }
      form.sheet().getRow(row).setHeightInPoints(18);
    }
    form.warn(
        "I" + (row - logs.size() + 2) + ":I" + (row + 1),
        "$I" + (row - logs.size() + 2) + "=\"stuck\"");
    book.widths(form.sheet(), 12, 22, 13, 12, 14, 14, 14, 14, 18);
    form.done();
  }

  private static String cell(String log, String address) {
    return "'" + log + "'!" + address;
  }

  private static String number(String log, String address) {
    String cell = cell(log, address);
    return "IF(ISNUMBER(" + cell + ")," + cell + ",\"\")";
  }

  /** The last number in a column of the log. */
  private static String latest(String log, String column, int first, int last) {
    String cells = cell(log, "$" + column + "$" + first + ":$" + column + "$" + last);
    return "IF(COUNT(" + cells + ")=0,\"\",LOOKUP(1000000," + cells + "))";
  }
}
