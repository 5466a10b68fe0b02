package washbook.log;

/**
 * A header that an earlier run has written.
 *
 * @param column which computed column it is
 * @param label name of the table it belongs to when it does not stand beside that table, else ""
 */
public record ComputedHeader(ComputedColumn column, String label) {

  /** Reads a header; null when it is none of ours. */
  public static ComputedHeader read(String text) {
    for (ComputedColumn column : ComputedColumn.values()) {
      String plain = column.header();
      if (text.equals(plain)) {
        return new ComputedHeader(column, "");
      }
      String mark = column == ComputedColumn.NOTE ? "" : ComputedColumn.MARK;
      String title = plain.substring(0, plain.length() - mark.length());
      if (text.startsWith(title + ", ") && text.endsWith(mark)) {
        return new ComputedHeader(
            column, text.substring(title.length() + 2, text.length() - mark.length()));
      }
    }
    return null;
  }

  /** The header as it is written. */
  public String text() {
    if (label.isEmpty()) {
      return column.header();
    }
    String mark = column == ComputedColumn.NOTE ? "" : ComputedColumn.MARK;
    String plain = column.header();
    return plain.substring(0, plain.length() - mark.length()) + ", " + label + mark;
  }
}
