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
import washbook.log.layout.TableLines;
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
  private final TableLines around;

  /** Of a date that is read in another year than it says. */
  private Message year = Message.NONE;

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
    this.around = new TableLines(grid, header, rows, headers, above);
  }

  LogTable make() {
    List<KeyLine> lines = around.all();
    ColumnRoles settler = new ColumnRoles(grid, header, rows, said, doubts);
    settler.settle(lines);
    StatedSettings reader = new StatedSettings(said, doubts);
    LogSettings settings = said.over(reader.read(lines, settler, wash()), reader.correctedToC);
    ColumnAssignment columns = settler.columns;
    refuseDensityAtOtherTemperature(columns, settings);
    askAboutTemperature(columns, settings);
    int[] between = around.columnsAbove();
    OriginalAbove original =
        new OriginalAbove(
            grid, header, lines, above, between[0], between[1], vessel.columnsOfOthers(), doubts);
    OriginalsList list = OriginalsList.of(grid, above, header.topRow(), between[0], between[1]);
    list.add(grid, original.allStated());
    original.askAboutOpen(columns, list, said, settings);
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
            bare.column(Role.NOTE).stream().anyMatch(note -> vessel.isShared(note.column())),
            doubts);
    List<Batch> made = withoutBlendedStart(batches.make(), lines);
    year = batches.yearRemark();
    return table(
        columns,
        settings,
        said.firstReadingIsOriginal()
            ? made
            : new LateStart(grid, bare, doubts)
                .without(made, above, header.topRow(), around.nextTable(), between));
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
    int[] columns = around.columnsAbove();
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
        remarks(settings, batches),
        columns.isSettled(),
        rows.setAside());
  }

  private List<Message> remarks(LogSettings settings, List<Batch> batches) {
    List<Message> remarks = new ArrayList<>();
    remarks.add(
        Message.of(
            "remark.calibrated",
            new Figure(Numbers.round(settings.calibrationC(), 2)),
            settings.calibrationWhy()));
    remarks.add(
        settings
            .wash()
            .remark(batches.isEmpty() ? OptionalDouble.empty() : batches.get(0).originalGravity()));
    if (!year.isBlank()) {
      remarks.add(year);
    }
    return List.copyOf(remarks);
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
