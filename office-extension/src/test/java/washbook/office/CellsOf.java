package washbook.office;

import java.util.List;
import java.util.StringJoiner;
import washbook.functions.Answer;
import washbook.office.testing.Book;

/** Arguments of a call laid out in cells from row 3 down, one column for each. */
record CellsOf(String references) {
  private static final int FIRST_ROW = 3;

  static CellsOf put(Book book, List<Object> values) {
    StringJoiner references = new StringJoiner(";");
    for (int i = 0; i < values.size(); i++) {
      String column = String.valueOf((char) ('A' + i));
      references.add(place(book, column, values.get(i)));
    }
    return new CellsOf(references.toString());
  }

  private static String place(Book book, String column, Object value) {
    if (value == null) {
      return "";
    }
    if (value instanceof List<?> list) {
      for (int i = 0; i < list.size(); i++) {
        placeOne(book, column + (FIRST_ROW + i), list.get(i));
      }
      return column + FIRST_ROW + ":" + column + (FIRST_ROW + list.size() - 1);
    }
    placeOne(book, column + FIRST_ROW, value);
    return column + FIRST_ROW;
  }

  private static void placeOne(Book book, String address, Object value) {
    if (value instanceof Double number) {
      book.number(address, number);
    } else {
      book.text(address, value.toString());
    }
  }

  /** What a cell shows for a refusal of that code. */
  static String shownFor(Answer.Code code) {
    return switch (code) {
      case BLANK -> "";
      case NOT_A_NUMBER, UNKNOWN_WORD -> "#VALUE!";
      case TOO_LOW, TOO_HIGH, CONTRADICTION -> "#NUM!";
    };
  }
}
