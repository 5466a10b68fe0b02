package washbook.functions.log;

import java.util.List;
import java.util.Locale;
import washbook.functions.Numbers;

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
    List<KeyLine> lines = keyLines();
    ColumnSettler settler = new ColumnSettler(grid, header, rows, said);
    settler.settle(lines);
    SettingsReader reader = new SettingsReader();
    Settings settings = said.over(reader.read(lines, settler));
    ColumnUses columns = settler.columns;
    refuseDensityAtOtherTemperature(columns, settings);
    doubts.addAll(columns.doubts());
    doubts.addAll(reader.doubts);
    LogTable bare = table(columns, settings, List.of());
    if (!columns.isSettled()) {
      return bare;
    }
    BatchMaker batches =
        new BatchMaker(grid, bare, rows, name(lines), originalGravity(lines), said);
    LogTable made = table(columns, settings, batches.make());
    doubts.addAll(batches.doubts);
    return made;
  }

  private LogTable table(ColumnUses columns, Settings settings, List<Batch> batches) {
    return new LogTable(
        header.bottomRow(),
        rows.firstRow(),
        rows.lastRow(),
        header.firstColumn(),
        header.lastColumn(),
        columns.all(),
        batches,
        settings,
        List.of(
            String.format(
                Locale.ROOT,
                "instrument right at %s \u00b0C: %s",
                Numbers.round(settings.calibrationC(), 2),
                settings.calibrationWhy())),
        columns.isSettled());
  }

  /** A density is counted as one at 20 °C; of an instrument for another temperature it is not. */
  private void refuseDensityAtOtherTemperature(ColumnUses columns, Settings settings) {
    boolean usual = Math.abs(settings.calibrationC() - Settings.USUAL_CALIBRATION) < 0.05;
    for (Header.HeaderCell cell : columns.with(Role.GRAVITY)) {
      String unit = columns.of(cell).unit();
      if (!usual && (unit.equals("KGM3") || unit.equals(Units.GRAMS_PER_CUBIC_CENTIMETRE))) {
        columns.unsettle();
        columns.doubt(
            cell,
            "The readings are densities, but the instrument is right at another temperature than"
                + " 20 \u00b0C; such densities are not converted. If it is right at 20 \u00b0C, say in a"
                + " map: calibration = 20 C");
      }
    }
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
        return line.text().isEmpty() ? Numbers.show(line.value()) : line.text();
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
