package washbook.log.layout;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;
import washbook.log.words.Concept;
import washbook.log.words.Vocabulary;

/** What is said of a table outside its rows: above it, in its header, below it. */
public final class TableLines {
  /** Rows below a table in which something may be said of its instrument. */
  private static final int LINES_BELOW = 20;

  /** Cells within which one thing is said of another. */
  private static final int BESIDE = 3;

  private static final Set<Concept> VOLUMES =
      EnumSet.of(Concept.L, Concept.GAL, Concept.GALUS, Concept.GALUK);

  private final Grid grid;
  private final Header header;
  private final TableRows rows;
  private final List<Header> headers;
  private final int above;
  private final VesselLines vessel;

  /**
   * @param headers all headers of the sheet
   * @param above first row that can hold this table's key lines
   */
  public TableLines(Grid grid, Header header, TableRows rows, List<Header> headers, int above) {
    this.grid = grid;
    this.header = header;
    this.rows = rows;
    this.headers = headers;
    this.above = above;
    this.vessel = new VesselLines(grid, header, headers);
  }

  /**
   * Lines above the header, and what the header states; of tables side by side each has those over
   * its own columns.
   */
  public List<KeyLine> all() {
    List<KeyLine> lines = new ArrayList<>(linesAbove());
    for (HeaderCell cell : header.cells()) {
      KeyLine start =
          OriginalGravityInHeader.stated(cell.text(), header.bottomRow(), cell.column());
      if (start != null) {
        lines.add(start);
      }
    }
    lines.addAll(restOfHeader());
    if (lines.stream().noneMatch(TableLines::isAboutInstrument)) {
      lines.addAll(linesOfTheSheet());
    }
    if (lines.stream().noneMatch(TableLines::isAboutInstrument)) {
      lines.addAll(linesBelow());
    }
    if (lines.stream().anyMatch(TableLines::saysUncorrected)) {
      lines.removeIf(KeyLine::saysCorrected);
    }
    lines.removeIf(l -> l.saysCorrected() && isBesideOriginal(l, lines));
    if (lines.stream().noneMatch(KeyLine::isOriginalGravity)) {
      lines.addAll(vessel.originalOfAll(above));
    }
    return lines;
  }

  /** What stands behind an original gravity is said of it, not of the readings. */
  private static boolean isBesideOriginal(KeyLine line, List<KeyLine> lines) {
    return !line.has(Concept.READING)
        && lines.stream()
            .anyMatch(
                o ->
                    o.isOriginalGravity()
                        && !Double.isNaN(o.value())
                        && o.row() == line.row()
                        && o.column() < line.column()
                        && o.column() >= line.column() - BESIDE);
  }

  /** What is said of the instrument above all tables of the sheet holds for each of them. */
  private List<KeyLine> linesOfTheSheet() {
    int top = headers.stream().mapToInt(Header::topRow).min().orElse(0);
    return headers.size() < 2
        ? List.of()
        : new KeyLines(grid)
            .find(0, top - 1, 0, grid.columnCount() - 1).stream()
                .filter(l -> isAboutInstrument(l) || l.has(Concept.HYDROMETER))
                .map(l -> header.topRow() > top && isOfOneBatch(l) ? onlyCalibration(l) : l)
                .toList();
  }

  /** Whether a line begins a table with its litres: the instrument in it is that table's. */
  private boolean isOfOneBatch(KeyLine line) {
    Set<Concept> meanings = Vocabulary.meanings(grid.text(line.row(), line.column()));
    return VOLUMES.stream().anyMatch(meanings::contains);
  }

  /** Not by which instrument was read, only what the keeper's hydrometer is calibrated at. */
  private static KeyLine onlyCalibration(KeyLine line) {
    return new KeyLine(
        EnumSet.of(Concept.CALIBRATION, Concept.OTHERTHING),
        line.label(),
        line.row(),
        line.column(),
        line.cell(),
        line.text(),
        line.value(),
        line.units(),
        line.temperatureC(),
        line.numberCell());
  }

  private static boolean saysUncorrected(KeyLine line) {
    return line.has(Concept.UNCORRECTED)
        || line.has(Concept.CORRECTED) && line.has(Concept.NEGATION);
  }

  private static boolean isAboutInstrument(KeyLine line) {
    return line.isCalibration() || line.saysCorrected() || line.has(Concept.REFRACTOMETER);
  }

  /** What a remark below says of the instrument: before the next table, or at the sheet's end. */
  private List<KeyLine> linesBelow() {
    int next = nextTable();
    int[] columns = columnsAbove();
    int end = next < grid.rowCount() ? aboveNext(next, columns) : next;
    end = Math.min(end, rows.lastRow() + 1 + LINES_BELOW);
    return ofInstrument(rows.lastRow() + 1, end - 1, columns[0], columns[1]);
  }

  /** Where the lines begin that stand right over the next table: a blank row parts them. */
  private int aboveNext(int next, int[] columns) {
    int row = next - 1;
    while (row > rows.lastRow() && !isBlank(row, columns)) {
      row--;
    }
    return row > rows.lastRow() ? row : next;
  }

  private boolean isBlank(int row, int[] columns) {
    for (int column = columns[0]; column <= columns[1]; column++) {
      if (grid.kind(row, column) != Grid.Kind.BLANK) {
        return false;
      }
    }
    return true;
  }

  /** What is said of the instrument between the header and the first reading. */
  private List<KeyLine> restOfHeader() {
    int end = rows.firstRow();
    while (end < rows.lastRow() && rows.isSkipped(end)) {
      end++;
    }
    return ofInstrument(rows.firstRow(), end - 1, header.firstColumn(), header.lastColumn());
  }

  private List<KeyLine> ofInstrument(int from, int to, int first, int last) {
    return new KeyLines(grid)
        .find(from, to, first, last).stream().filter(TableLines::isAboutInstrument).toList();
  }

  /** Where the next table over these columns begins, else the end of the sheet. */
  public int nextTable() {
    return header.nextBelow(rows.lastRow(), headers, grid.rowCount());
  }

  private List<KeyLine> linesAbove() {
    if (header.topRow() == 0) {
      return List.of();
    }
    int[] columns = columnsAbove();
    return vessel.of(new KeyLines(grid).find(above, header.topRow() - 1, columns[0], columns[1]));
  }

  /** First and last column whose cells above the header may speak of this table. */
  public int[] columnsAbove() {
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
    return new int[] {first, last};
  }
}
