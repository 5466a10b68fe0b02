package washbook.log.understand;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.Doubts;
import washbook.log.LogSettings;
import washbook.log.LogTable;
import washbook.log.MapAnswer;
import washbook.log.OriginalGravity;
import washbook.log.Role;
import washbook.log.StatedWash;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.layout.Header;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.layout.HeaderRoles;
import washbook.log.layout.KeyLine;
import washbook.log.layout.KeyLines;
import washbook.log.layout.OriginalGravityInHeader;
import washbook.log.layout.TableRows;
import washbook.log.layout.VesselLines;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.words.BatchNameText;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;

/** Makes one table of a sheet from its header and rows. */
final class TableUnderstanding {
  private static final int LONGEST_TITLE = 40;

  /** Rows below a table in which something may be said of its instrument. */
  private static final int LINES_BELOW = 20;

  /** One that begins higher is taken for a blend of fresh musts, SG; common practice, no source. */
  private static final double HIGHEST_BLEND = 1.045;

  private final Grid grid;
  private final Header header;
  private final TableRows rows;
  private final List<Header> headers;
  private final int above;
  private final TableMap said;
  private final Doubts doubts;
  private final VesselLines vessel;

  /**
   * @param headers all headers of the sheet
   * @param above first row that can hold this table's key lines
   * @param said what a map says about this table
   * @param doubts where new doubts go
   */
  TableUnderstanding(
      Grid grid,
      Header header,
      TableRows rows,
      List<Header> headers,
      int above,
      TableMap said,
      Doubts doubts) {
    this.grid = grid;
    this.header = header;
    this.rows = rows;
    this.headers = headers;
    this.above = above;
    this.said = said;
    this.doubts = doubts;
    this.vessel = new VesselLines(grid, header, headers);
  }

  LogTable make() {
    List<KeyLine> lines = keyLines();
    ColumnRoles settler = new ColumnRoles(grid, header, rows, said, doubts);
    settler.settle(lines);
    StatedSettings reader = new StatedSettings(said, doubts);
    LogSettings settings = said.over(reader.read(lines, settler, wash()), reader.correctedToC);
    ColumnAssignment columns = settler.columns;
    refuseDensityAtOtherTemperature(columns, settings);
    askAboutTemperature(columns, settings);
    int[] between = columnsAbove();
    OriginalAbove original =
        new OriginalAbove(
            grid, header, lines, above, between[0], between[1], vessel.columnsOfOthers(), doubts);
    OriginalsList list = OriginalsList.of(grid, above, header.topRow(), between[0], between[1]);
    original.askAboutOpen(columns, list, said);
    LogTable bare = table(columns, settings, List.of());
    if (!columns.isSettled()) {
      return bare;
    }
    Batches batches =
        new Batches(
            grid,
            bare,
            rows,
            name(lines),
            said.firstReadingIsOriginal() ? null : original.stated(),
            list,
            said,
            vessel.names(),
            doubts);
    List<Batch> made = withoutBlendedStart(batches.make(), lines);
    return table(
        columns,
        settings,
        said.firstReadingIsOriginal()
            ? made
            : new LateStart(grid, bare, doubts)
                .without(made, above, header.topRow(), nextTable(), between));
  }

  /** A blend that a line above tells of, and that begins low, goes on where its parts stood. */
  private List<Batch> withoutBlendedStart(List<Batch> batches, List<KeyLine> lines) {
    KeyLine blended = lines.stream().filter(l -> l.has(Concept.BLENDED)).findFirst().orElse(null);
    if (blended == null || said.firstReadingIsOriginal()) {
      return batches;
    }
    List<Batch> checked = new ArrayList<>();
    for (Batch batch : batches) {
      if (batch.original() instanceof OriginalGravity.FirstReading first
          && first.sg() < HIGHEST_BLEND) {
        doubts.ask(
            blended.cell(),
            Message.of("ask.blended", batch.name()),
            MapAnswer.like("original gravity = 1.055 SG"),
            MapAnswer.of("original gravity = first reading"));
        checked.add(
            batch.withoutOriginal(blended.cell(), Message.of("why.blended", blended.cell())));
      } else {
        checked.add(batch);
      }
    }
    return checked;
  }

  private StatedWash wash() {
    int[] columns = columnsAbove();
    return WashAbove.stated(grid, above, header.topRow() - 1, columns[0], columns[1]);
  }

  private LogTable table(ColumnAssignment columns, LogSettings settings, List<Batch> batches) {
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
            Message.of(
                "remark.calibrated",
                new Figure(Numbers.round(settings.calibrationC(), 2)),
                settings.calibrationWhy()),
            settings
                .wash()
                .remark(
                    batches.isEmpty() ? OptionalDouble.empty() : batches.get(0).originalGravity())),
        columns.isSettled(),
        rows.setAside());
  }

  /** One question where nothing says at what temperature was read, not a refusal in each row. */
  private void askAboutTemperature(ColumnAssignment columns, LogSettings settings) {
    if (!columns.isSettled()
        || settings.hasTemperature()
        || settings.correctedAlready()
        || columns.has(Role.TEMPERATURE)
        || columns.has(Role.REFRACTOMETER)) {
      return;
    }
    for (HeaderCell cell : columns.with(Role.GRAVITY)) {
      if (columns.facts(cell).numbers() > 0
          && !ColumnValues.haveTemperatures(grid, rows, cell.column())) {
        columns.unsettle();
        columns.doubt(
            cell,
            Message.of("ask.temperature", CellAddress.letters(cell.column()), cell.text()),
            answersAboutTemperature().toArray(MapAnswer[]::new));
      }
    }
  }

  /** Also a column of the room's temperature, for those who read at that. */
  private List<MapAnswer> answersAboutTemperature() {
    List<MapAnswer> answers = new ArrayList<>();
    answers.add(MapAnswer.like("temperature = 20 C"));
    answers.add(MapAnswer.of("corrected = yes"));
    for (HeaderCell cell : header.cells()) {
      if (cell.meanings().containsAll(Set.of(Concept.TEMPERATURE, Concept.AMBIENT))) {
        String unit = cell.meanings().contains(Concept.F) ? "F" : "C";
        answers.add(MapAnswer.of(MapPrinter.column(cell.column()) + " = TEMPERATURE in " + unit));
      }
    }
    return answers;
  }

  /** A density is counted as one at 20 °C; of an instrument for another temperature it is not. */
  private void refuseDensityAtOtherTemperature(ColumnAssignment columns, LogSettings settings) {
    boolean usual = Math.abs(settings.calibrationC() - LogSettings.USUAL_CALIBRATION) < 0.05;
    for (HeaderCell cell : columns.with(Role.GRAVITY)) {
      if (!usual && ReadingScale.of(columns.of(cell).unit()).isDensity()) {
        columns.unsettle();
        columns.doubt(cell, Message.of("ask.density"), MapAnswer.of("calibration = 20 C"));
      }
    }
  }

  /**
   * Lines above the header, and what the header states; of tables side by side each has those over
   * its own columns.
   */
  private List<KeyLine> keyLines() {
    List<KeyLine> lines = new ArrayList<>(linesAbove());
    for (HeaderCell cell : header.cells()) {
      KeyLine start =
          OriginalGravityInHeader.stated(cell.text(), header.bottomRow(), cell.column());
      if (start != null) {
        lines.add(start);
      }
    }
    lines.addAll(restOfHeader());
    if (lines.stream().noneMatch(TableUnderstanding::isAboutInstrument)) {
      lines.addAll(linesOfTheSheet());
    }
    if (lines.stream().noneMatch(TableUnderstanding::isAboutInstrument)) {
      lines.addAll(linesBelow());
    }
    if (lines.stream().anyMatch(TableUnderstanding::saysUncorrected)) {
      lines.removeIf(KeyLine::saysCorrected);
    }
    lines.removeIf(l -> l.saysCorrected() && isBesideOriginal(l, lines));
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
                        && o.column() < line.column());
  }

  /** What is said of the instrument above all tables of the sheet holds for each of them. */
  private List<KeyLine> linesOfTheSheet() {
    int top = headers.stream().mapToInt(Header::topRow).min().orElse(0);
    return headers.size() < 2 ? List.of() : ofInstrument(0, top - 1, 0, grid.columnCount() - 1);
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
    int end = Math.min(nextTable(), rows.lastRow() + 1 + LINES_BELOW);
    int[] columns = columnsAbove();
    return ofInstrument(rows.lastRow() + 1, end - 1, columns[0], columns[1]);
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
        .find(from, to, first, last).stream()
            .filter(TableUnderstanding::isAboutInstrument)
            .toList();
  }

  /** Where the next table over these columns begins, else the end of the sheet. */
  private int nextTable() {
    int end = grid.rowCount();
    for (Header other : headers) {
      if (other.topRow() > rows.lastRow() && other.overlaps(header)) {
        end = Math.min(end, other.topRow());
      }
    }
    return end;
  }

  private List<KeyLine> linesAbove() {
    if (header.topRow() == 0) {
      return List.of();
    }
    int[] columns = columnsAbove();
    return vessel.of(new KeyLines(grid).find(above, header.topRow() - 1, columns[0], columns[1]));
  }

  /** First and last column whose cells above the header may speak of this table. */
  private int[] columnsAbove() {
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

  /** The batch's name: by the map, a line that names it, a title, its vessel, else the sheet. */
  private String name(List<KeyLine> lines) {
    if (!said.batch().isEmpty()) {
      return said.batch();
    }
    if (!header.vessel().isEmpty()) {
      return header.vessel();
    }
    String name = stated(lines, Concept.BATCH);
    if (name.isEmpty()) {
      name = title();
    }
    if (name.isEmpty()) {
      name = stated(lines, Concept.VESSEL);
    }
    return name.isEmpty() ? grid.name() : name;
  }

  private static String stated(List<KeyLine> lines, Concept what) {
    for (int i = lines.size() - 1; i >= 0; i--) {
      KeyLine line = lines.get(i);
      boolean names =
          HeaderRoles.role(line.meanings()) == Role.BATCH && line.has(what) && line.hasValue();
      if (names && line.text().length() <= LONGEST_TITLE) {
        return line.text().isEmpty() ? Numbers.show(line.value()) : line.text();
      }
    }
    return "";
  }

  /**
   * The nearest name above in the table's columns that begins a row; of several tables also a short
   * title that stands alone right above.
   */
  private String title() {
    String alone = "";
    boolean direct = headers.size() > 1;
    for (int row = header.topRow() - 1; row >= above; row--) {
      String first = "";
      int filled = 0;
      for (int column = header.firstColumn(); column <= header.lastColumn(); column++) {
        if (grid.kind(row, column) != Grid.Kind.BLANK) {
          filled++;
          first = filled == 1 ? grid.text(row, column).strip() : first;
        }
      }
      String name = BatchNameText.of(first);
      if (!name.isEmpty()) {
        return name;
      }
      if (direct && filled == 1 && isTitle(first)) {
        alone = first;
      }
      direct &= filled == 0;
    }
    return alone;
  }

  /** Whether a text that stands alone can be a title: short, begun with a capital, no sentence. */
  private static boolean isTitle(String text) {
    return text.length() <= LONGEST_TITLE
        && !text.isEmpty()
        && Character.isUpperCase(text.charAt(0))
        && ".?!".indexOf(text.charAt(text.length() - 1)) < 0
        && text.indexOf(':') < 0
        && text.split("\\s+").length <= 4;
  }
}
