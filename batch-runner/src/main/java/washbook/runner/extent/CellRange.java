package washbook.runner.extent;

import static washbook.runner.markup.XmlScanner.ascii;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid.Area;
import washbook.runner.sheet.CellReference;

/** A range such as {@code A1:E13} or {@code $A$1:$E$13} as a text that can be widened. */
record CellRange(String text, Area area) {
  private static final Pattern RANGE =
      Pattern.compile("\\$?([A-Za-z]{1,3})\\$?(\\d{1,7}):\\$?([A-Za-z]{1,3})\\$?(\\d{1,7})");

  /** Null where the text is no range of more than one cell. */
  static CellRange of(String text) {
    Matcher range = RANGE.matcher(text);
    if (!range.matches()) {
      return null;
    }
    byte[] first = ascii(range.group(1) + range.group(2));
    byte[] last = ascii(range.group(3) + range.group(4));
    long from = CellReference.parse(first, 0, first.length);
    long to = CellReference.parse(last, 0, last.length);
    if (from < 0 || to < 0) {
      return null;
    }
    return new CellRange(
        text,
        new Area(
            CellReference.row(from),
            CellReference.column(from),
            CellReference.row(to),
            CellReference.column(to)));
  }

  /** The same range up to another column. */
  String upTo(int column) {
    Matcher range = RANGE.matcher(text);
    return range.matches()
        ? text.substring(0, range.start(3))
            + CellAddress.letters(column)
            + text.substring(range.end(3))
        : text;
  }
}
