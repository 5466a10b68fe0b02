package washbook.functions.log;

import java.util.ArrayList;
import java.util.List;

/**
 * Understands the log in a sheet: its tables, what their columns hold, their batches and what is
 * said above them. Nothing is assumed that the sheet does not settle: what is open becomes a doubt
 * with a question, and a table whose readings are in doubt is not filled.
 */
public final class LogReader {
  private LogReader() {}

  /** Understands a sheet; what the map says holds before anything that the sheet says. */
  public static Understanding understand(Grid grid, LogMap map) {
    List<Header> headers = new HeaderFinder(grid).find();
    List<LogTable> tables = new ArrayList<>();
    List<Doubt> doubts = new ArrayList<>();
    List<Integer> lastRows = new ArrayList<>();
    for (int i = 0; i < headers.size(); i++) {
      Header header = headers.get(i);
      TableRows rows = new TableRows(grid, header, end(grid, headers, header));
      lastRows.add(rows.lastRow());
      if (rows.lastRow() < rows.firstRow()) {
        continue;
      }
      int above = 0;
      for (int j = 0; j < i; j++) {
        Header other = headers.get(j);
        if (other.topRow() < header.topRow() && other.overlaps(header)) {
          above = Math.max(above, Math.max(other.bottomRow(), lastRows.get(j)) + 1);
        }
      }
      tables.add(new TableMaker(grid, header, rows, headers, above, doubts).make());
    }
    return new Understanding(grid.name(), List.copyOf(tables), List.copyOf(doubts));
  }

  /** One past the last row that can belong to a header: where the next header over it begins. */
  private static int end(Grid grid, List<Header> headers, Header header) {
    int end = grid.rowCount();
    for (Header other : headers) {
      if (other.topRow() > header.bottomRow() && other.overlaps(header)) {
        end = Math.min(end, other.topRow());
      }
    }
    return end;
  }
}
