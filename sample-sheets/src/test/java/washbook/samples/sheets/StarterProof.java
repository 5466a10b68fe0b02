package washbook.samples.sheets;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import washbook.functions.Answer;
import washbook.functions.Numbers;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;
import washbook.functions.portable.PortableFormulas;
import washbook.functions.portable.form.NotPortableException;
import washbook.log.sheet.CellAddress;
import washbook.samples.sheets.Book.Look;

/** Every published value that the tests check, with the live formula beside it. */
final class StarterProof {
  static final int FUNCTION = 0;
  static final int PUBLISHED = 2;
  static final int CALCULATED = 3;
  static final int WITHIN = 6;
  private static final int SOURCE = 7;

  /** Numbers of an argument that is a range of cells stand from here on. */
  private static final int RANGES = 9;

  private static final String[] HEADS = {
    "Function", "Arguments", "Published", "Calculated", "Difference", "Allowed", "Within", "Source"
  };

  /** One line of the table. */
  private record Line(
      String function, List<String> arguments, double published, double allowed, String source) {
    static Line of(String text) {
      String[] cells = text.split("\t", -1);
      return new Line(
          cells[0],
          List.of(cells[1].split(";", -1)),
          Double.parseDouble(cells[2]),
          Double.parseDouble(cells[3]),
          cells[4]);
    }
  }

  private static final int SOURCE_WIDTH = 50;
  private static final int ARGUMENTS_WIDTH = 30;

  private StarterProof() {}

  /**
   * @param table the published values that the tests of the functions check and keep current
   */
  static Book make(boolean portable, Path table) {
    Book book = Book.forPaper("Proof");
    Form form = new Form(book, "Proof", SOURCE, 1, portable);
    form.head(
        "Are the functions right?",
        "Each line is a published figure, the call that must give it, and what it gives here and"
            + " now. Nothing is to be typed.",
        4);
    List<Line> lines = lines(portable, table);
    int first = form.row() + 4;
    String within = "$G$" + first + ":$G$" + (first + lines.size() - 1);
    form.result("Lines that agree", "COUNTIF(" + within + ",\"yes\")", "0", "", "");
    form.result("Lines", "ROWS(" + within + ")", "0", "", "");
    form.table(0, HEADS, new Object[0][]);
    int row = first - 1;
    for (Line line : lines) {
      put(book, form, row++, line);
    }
    form.done();
    book.widths(
        book.workbook().getSheetAt(0), 22, ARGUMENTS_WIDTH, 11, 11, 10, 10, 7, SOURCE_WIDTH);
    return book;
  }

  private static void put(Book book, Form form, int row, Line line) {
    CatalogueFunction function = Catalogue.get(line.function);
    List<String> words = new ArrayList<>();
    int column = RANGES;
    for (int i = 0; i < line.arguments.size(); i++) {
      String argument = line.arguments.get(i);
      if (function.parameters().get(i).kind() == Parameter.Kind.NUMBERS) {
        int from = column;
        for (String number : argument.split(",")) {
          book.put(form.sheet(), row, column++, Double.valueOf(number), Look.PLAIN);
        }
        words.add(
            CellAddress.letters(from)
                + (row + 1)
                + ":"
                + CellAddress.letters(column - 1)
                + (row + 1));
      } else {
        words.add(word(argument));
      }
    }
    String at = Integer.toString(row + 1);
    book.put(form.sheet(), row, FUNCTION, line.function, Look.PLAIN);
    book.put(form.sheet(), row, 1, String.join("; ", line.arguments), Look.WRAPPED);
    book.put(form.sheet(), row, PUBLISHED, line.published, Look.number("General"));
    book.put(form.sheet(), row, CALCULATED, null, Look.number("0.00000"))
        .setCellFormula("WASHBOOK." + line.function + "(" + String.join(",", words) + ")");
    book.put(form.sheet(), row, 4, null, Look.number("0.000000"))
        .setCellFormula("D" + at + "-C" + at);
    book.put(form.sheet(), row, 5, line.allowed, Look.number("0.000000"));
    book.put(form.sheet(), row, WITHIN, null, Look.PLAIN)
        .setCellFormula("IF(ABS(E" + at + ")<=F" + at + ",\"yes\",\"no\")");
    book.put(form.sheet(), row, SOURCE, line.source, Look.WRAPPED);
    int lines =
        Math.max(
            line.source.length() / SOURCE_WIDTH,
            String.join("; ", line.arguments).length() / ARGUMENTS_WIDTH);
    form.sheet().getRow(row).setHeightInPoints((float) (Book.LINE_POINTS * (1 + lines)));
  }

  private static String word(String argument) {
    return argument.equals("-")
        ? ""
        : Numbers.parse(argument) == null ? "\"" + argument + "\"" : argument;
  }

  /** All lines, or those that a plain formula gives. */
  private static List<Line> lines(boolean portable, Path table) {
    try {
      return Files.readAllLines(table).stream()
          .skip(1)
          .map(Line::of)
          .filter(line -> !portable || isPlain(line))
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static boolean isPlain(Line line) {
    CatalogueFunction function = Catalogue.get(line.function);
    if (!PortableFormulas.exists(function)) {
      return false;
    }
    try {
      List<String> words = line.arguments.stream().map(StarterProof::word).toList();
      return PortableFormulas.answer(function, words, Numbers::parse) instanceof Answer.Number;
    } catch (NotPortableException none) {
      return false;
    }
  }
}
