package washbook.functions.log;

import java.util.ArrayList;
import java.util.List;

/** Makes one table of a sheet from its header and rows. */
final class TableMaker {
  private static final int LONGEST_TITLE = 40;

  private final Grid grid;
  private final Header header;
  private final TableRows rows;
  private final List<Header> headers;
  private final int above;
  private final TableMap said;
  private final List<Doubt> doubts;

  /**
   * @param headers all headers of the sheet
   * @param above first row that can hold this table's key lines
   * @param said what a map says about this table
   * @param doubts where new doubts go
   */
  TableMaker(
      Grid grid,
      Header header,
      TableRows rows,
      List<Header> headers,
      int above,
      TableMap said,
      List<Doubt> doubts) {
    this.grid = grid;
    this.header = header;
    this.rows = rows;
    this.headers = headers;
    this.above = above;
    this.said = said;
    this.doubts = doubts;
  }

  LogTable make() {
    ColumnSettler columns = new ColumnSettler(grid, header, rows, said);
    List<ColumnUse> uses = columns.settle();
    doubts.addAll(columns.doubts);
    List<KeyLine> lines = keyLines();
    SettingsReader reader = new SettingsReader();
    Settings settings = said.over(reader.read(lines, columns));
    doubts.addAll(reader.doubts);
    List<String> remarks = new ArrayList<>(columns.remarks);
    remarks.add("instrument right at " + settings.calibrationWhy());
    LogTable bare =
        new LogTable(
            header.bottomRow(),
            rows.firstRow(),
            rows.lastRow(),
            header.firstColumn(),
            header.lastColumn(),
            uses,
            List.of(),
            settings,
            remarks,
            columns.settled);
    if (!columns.settled) {
      return bare;
    }
    BatchMaker batches =
        new BatchMaker(grid, bare, rows, name(lines), originalGravity(lines), said);
    List<Batch> made = batches.make();
    doubts.addAll(batches.doubts);
    return new LogTable(
        bare.headerRow(),
        bare.firstRow(),
        bare.lastRow(),
        bare.firstColumn(),
        bare.lastColumn(),
        uses,
        made,
        settings,
        remarks,
        true);
  }

  /** Lines above the header; of tables side by side each has those over its own columns. */
  private List<KeyLine> keyLines() {
    if (header.topRow() == 0) {
      return List.of();
    }
    int first = 0;
    int last = grid.columnCount() - 1;
    for (Header other : headers) {
      boolean beside =
          other != header
              && other.topRow() <= rows.lastRow()
              && other.bottomRow() >= above
              && !other.overlaps(header);
      if (beside && other.firstColumn() > header.lastColumn()) {
        last = Math.min(last, other.firstColumn() - 1);
      } else if (beside) {
        first = Math.max(first, header.firstColumn());
      }
    }
    return new KeyLineFinder(grid).find(above, header.topRow() - 1, first, last);
  }

  private String name(List<KeyLine> lines) {
    if (!said.batch().isEmpty()) {
      return said.batch();
    }
    for (int i = lines.size() - 1; i >= 0; i--) {
      KeyLine line = lines.get(i);
      if (HeaderJudge.role(line.meanings()) == Role.BATCH && line.hasValue()) {
        return line.text().isEmpty() ? washbook.functions.Numbers.show(line.value()) : line.text();
      }
    }
    String title = headers.size() > 1 ? title() : "";
    return title.isEmpty() ? grid.name() : title;
  }

  /** The nearest line above that holds one text and nothing else, in the table's columns. */
  private String title() {
    for (int row = header.topRow() - 1; row >= above; row--) {
      String only = "";
      int filled = 0;
      for (int column = header.firstColumn(); column <= header.lastColumn(); column++) {
        if (grid.kind(row, column) != Grid.Kind.BLANK) {
          filled++;
          only = grid.text(row, column).strip();
        }
      }
      if (filled == 1 && !only.isEmpty() && only.length() <= LONGEST_TITLE) {
        return only;
      }
      if (filled > 1) {
        return "";
      }
    }
    return "";
  }

  private static KeyLine originalGravity(List<KeyLine> lines) {
    KeyLine found = null;
    for (KeyLine line : lines) {
      if (line.isOriginalGravity() && !Double.isNaN(line.value())) {
        found = line;
      }
    }
    return found;
  }
}
