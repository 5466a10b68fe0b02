package washbook.functions.log;

/**
 * A header that an earlier run has written.
 *
 * @param column which computed column it is
 * @param label name of the table it belongs to when it does not stand beside that table, else ""
 */
record ComputedHeader(Computed column, String label) {

  /** Reads a header; null when it is none of ours. */
  static ComputedHeader read(String text) {
    for (Computed column : Computed.values()) {
      String plain = column.header();
      if (text.equals(plain)) {
        return new ComputedHeader(column, "");
      }
      String mark = column == Computed.NOTE ? "" : Computed.MARK;
      String title = plain.substring(0, plain.length() - mark.length());
      if (text.startsWith(title + ", ") && text.endsWith(mark)) {
        return new ComputedHeader(
            column, text.substring(title.length() + 2, text.length() - mark.length()));
      }
    }
    return null;
  }

  /** The header as it is written. */
  String text() {
    if (label.isEmpty()) {
      return column.header();
    }
    String mark = column == Computed.NOTE ? "" : Computed.MARK;
    String plain = column.header();
    return plain.substring(0, plain.length() - mark.length()) + ", " + label + mark;
  }
}
