package washbook.log.understand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import washbook.log.Doubts;
import washbook.log.LeftAlone;
import washbook.log.LogTable;
import washbook.log.MapAnswer;
import washbook.log.Understanding;
import washbook.log.evidence.Evidence;
import washbook.log.language.Message;
import washbook.log.layout.AcrossDoubts;
import washbook.log.layout.Header;
import washbook.log.layout.Headers;
import washbook.log.layout.RepeatedHeaders;
import washbook.log.layout.TableRows;
import washbook.log.layout.TransposedLog;
import washbook.log.layout.UnnamedColumns;
import washbook.log.layout.Vessels;
import washbook.log.reading.TimesOfDay;
import washbook.log.run.StillRuns;
import washbook.log.sheet.AcrossGrid;
import washbook.log.sheet.Grid;
import washbook.log.words.Vocabulary;

/**
 * Understands the log in a sheet: its tables, what their columns hold, their batches and what is
 * said above them. Nothing is assumed that the sheet does not settle: what is open becomes a doubt
 * with a question, and a table whose readings are in doubt is not filled.
 */
public final class SheetUnderstanding {
  private SheetUnderstanding() {}

  /** Understands a sheet; what the map says holds before anything that the sheet says. */
  public static Understanding understand(Grid grid, LogMap map) {
    if (ChartsSheet.isOne(grid) || SeasonSheet.isOne(grid)) {
      return new Understanding(grid.name(), List.of(), List.of(), List.of());
    }
    StillRuns runs = StillRuns.in(grid, RunMaps.of(grid, map));
    return RunMaps.joined(ferments(runs.rest(), map, runs.runs().isEmpty()), runs);
  }

  /** A table that speaks of no ferment by itself; a vessel beside it may. */
  private record Alone(Header header, LogTable table, Doubts doubts, Evidence evidence) {}

  /** Where the first table of a row of vessels stands. */
  private static int firstOf(Header header, List<LogTable> tables) {
    int at = 0;
    while (at < tables.size() && tables.get(at).headerRow() < header.bottomRow()) {
      at++;
    }
    return at;
  }

  /**
   * @param asksWithoutHeaders whether figures that no header names may be readings, and a log may
   *     run across
   */
  private static Understanding ferments(Grid grid, LogMap map, boolean asksWithoutHeaders) {
    RepeatedHeaders repeated = new RepeatedHeaders(grid);
    List<LogTable> tables = new ArrayList<>();
    Doubts doubts = new Doubts();
    List<LeftAlone> leftAlone = new ArrayList<>();
    List<Alone> alone = new ArrayList<>();
    List<Header> found = new Headers(grid).find();
    List<Header> named = repeated.without(withMap(grid, found, map, doubts));
    List<Header> headers = vesselsApart(grid, map, new UnnamedColumns(grid, named).added());
    List<Integer> lastRows = new ArrayList<>();
    for (int i = 0; i < headers.size(); i++) {
      Header header = headers.get(i);
      TableMap said = map.about(grid.name(), header).orElse(TableMap.of("", -1, Map.of()));
      int end = header.nextBelow(header.bottomRow(), headers, grid.rowCount());
      if (said.headerRow() >= 0 && said.lastRow() >= 0) {
        end = Math.min(end, said.lastRow() + 1);
      }
      TableRows rows = new TableRows(grid, withColumns(header, said), end, repeated.of(header));
      lastRows.add(rows.lastRow());
      if (said.ignored()) {
        continue;
      }
      header = withColumns(header, said);
      if (rows.lastRow() < rows.firstRow()) {
        continue;
      }
      int above = 0;
      for (int j = 0; j < i; j++) {
        Header other = headers.get(j);
        boolean heads = lastRows.get(j) > other.bottomRow();
        if (heads && other.topRow() < header.topRow() && other.overlaps(header)) {
          above = Math.max(above, lastRows.get(j) + 1);
        }
      }
      Doubts own = new Doubts();
      LogTable table = new TableUnderstanding(grid, header, rows, headers, above, said, own).make();
      boolean told =
          said.headerRow() >= 0 || !said.columns().isEmpty() || isBesideFerment(header, tables);
      Evidence evidence = Evidence.of(grid, table, above, header.topRow(), tables);
      switch (told ? Evidence.Verdict.FERMENT : evidence.verdict()) {
        case FERMENT -> {
          tables.add(table);
          takeOver(own, header, doubts);
        }
        case OPEN -> {
          tables.add(unsettled(table));
          if (own.all().isEmpty()) {
            askAboutOpen(grid, header, evidence, own);
          }
          takeOver(own, header, doubts);
        }
        case OTHER -> alone.add(new Alone(header, table, own, evidence));
      }
    }
    for (Alone other : alone) {
      if (isBesideFerment(other.header, tables)) {
        tables.add(firstOf(other.header, tables), other.table);
        takeOver(other.doubts, other.header, doubts);
      } else {
        leftAlone.add(leftAlone(grid, other.header, other.evidence));
      }
    }
    askAboutRowsOfNoTable(grid, map, tables, doubts);
    if (headers.isEmpty()) {
      Optional<TransposedLog> across =
          map.ignores(grid.name()) ? Optional.empty() : TransposedLog.in(grid);
      Optional<Understanding> turned =
          asksWithoutHeaders
              ? across.flatMap(TransposedLog::turned).flatMap(g -> turned(g, map))
              : Optional.empty();
      if (turned.isPresent()) {
        return turned.get();
      }
      across.ifPresent(log -> log.askToTurn(doubts));
    }
    boolean nothing = tables.isEmpty() && leftAlone.isEmpty() && doubts.all().isEmpty();
    if (asksWithoutHeaders && nothing && map.isSilentAbout(grid.name())) {
      new LogWithoutHeaders(grid).askAbout(doubts);
    }
    return new Understanding(
        grid.name(),
        new PartedTables(grid, TimesOfDay.withOneStart(tables)).withoutTheirStart(),
        doubts.all(),
        List.copyOf(leftAlone));
  }

  /** A log that runs across; empty where only turning it in the sheet would help. */
  private static Optional<Understanding> turned(AcrossGrid grid, LogMap map) {
    Optional<LogMap> said = map.turned(grid);
    if (said.isEmpty()) {
      return Optional.empty();
    }
    Understanding seen = ferments(grid, said.get(), false);
    boolean other = seen.tables().stream().anyMatch(t -> t.headerRow() != grid.headerRow());
    if (other || seen.tables().isEmpty() && seen.leftAlone().isEmpty()) {
      return Optional.empty();
    }
    return new AcrossDoubts(grid)
        .of(seen.doubts())
        .map(
            doubts ->
                new Understanding(
                    seen.sheet(),
                    seen.tables(),
                    doubts,
                    seen.leftAlone(),
                    List.of(),
                    Optional.of(grid)));
  }

  /** A map that names no table speaks of a row that is in none. */
  private static void askAboutRowsOfNoTable(
      Grid grid, LogMap map, List<LogTable> tables, Doubts doubts) {
    for (int row : map.rowsOfAnyTable(grid.name())) {
      boolean inTable = tables.stream().anyMatch(t -> row >= t.firstRow() && row <= t.lastRow());
      if (!inTable && (!tables.isEmpty() || map.sheets().contains(grid.name()))) {
        doubts.ask(grid.address(row, 0), Message.of("ask.otherRow", row + 1));
      }
    }
  }

  /** Whether another vessel of the same rows is known as a ferment. */
  private static boolean isBesideFerment(Header header, List<LogTable> tables) {
    return !header.vessel().isEmpty()
        && tables.stream().anyMatch(t -> t.headerRow() == header.bottomRow() && t.settled());
  }

  /** A header for each of several vessels side by side, where no map says which is the reading. */
  private static List<Header> vesselsApart(Grid grid, LogMap map, List<Header> headers) {
    List<Header> apart = new ArrayList<>();
    for (Header header : headers) {
      Header with =
          map.about(grid.name(), header).map(said -> withColumns(header, said)).orElse(header);
      apart.addAll(Vessels.of(grid, with, map.readings(grid.name(), header)));
    }
    return apart;
  }

  /** The header with what a map says of columns without naming a header's row. */
  private static Header withColumns(Header header, TableMap said) {
    if (said.headerRow() >= 0 || said.columns().isEmpty()) {
      return header;
    }
    List<Header.HeaderCell> cells = new ArrayList<>();
    for (Header.HeaderCell cell : header.cells()) {
      TableMap.ColumnMap column = said.columns().get(cell.column());
      cells.add(
          column == null
              ? cell
              : new Header.HeaderCell(cell.column(), cell.text(), cell.meanings(), column.role()));
    }
    return new Header(header.topRow(), header.bottomRow(), List.copyOf(cells), header.vessel());
  }

  private static void takeOver(Doubts own, Header header, Doubts doubts) {
    if (header.vessel().isEmpty()) {
      doubts.takeOver(own, header.bottomRow());
    } else {
      doubts.takeOverNew(own, header.bottomRow());
    }
  }

  /** The table as one that waits for an answer. */
  private static LogTable unsettled(LogTable table) {
    return new LogTable(
        table.headerRow(),
        table.firstRow(),
        table.lastRow(),
        table.firstColumn(),
        table.lastColumn(),
        table.columns(),
        List.of(),
        table.settings(),
        table.remarks(),
        false,
        table.setAside());
  }

  private static void askAboutOpen(Grid grid, Header header, Evidence evidence, Doubts doubts) {
    String row = String.valueOf(header.bottomRow() + 1);
    Message against = evidence.mostly(true);
    doubts.ask(
        grid.address(header.bottomRow(), header.firstColumn()),
        Message.of(
            "ask.isFerment",
            row,
            evidence.mostly(false),
            against.isBlank() ? Message.of("ask.nothingElse") : against),
        MapAnswer.of("header row = " + row),
        MapAnswer.of("header row = " + row, "ignore = yes"));
  }

  /** Why a table is not filled that nobody has to be asked about. */
  private static LeftAlone leftAlone(Grid grid, Header header, Evidence evidence) {
    String row = String.valueOf(header.bottomRow() + 1);
    Message why = evidence.mostly(true);
    return new LeftAlone(
        grid.address(header.bottomRow(), header.firstColumn()),
        Message.of(
            "alone.ferment",
            row,
            why.isBlank() ? Message.of("alone.nothing") : why,
            "header row = " + row));
  }

  /** The headers found, with those in their place that the map names. */
  private static List<Header> withMap(Grid grid, List<Header> found, LogMap map, Doubts doubts) {
    List<Header> headers = new ArrayList<>(found);
    for (TableMap table : map.placed(grid.name())) {
      if (table.columns().isEmpty()) {
        continue;
      }
      Header header = mapped(grid, headers, table);
      if (headsNothing(grid, found, header)) {
        askAboutHeader(grid, header, doubts);
        continue;
      }
      headers.removeIf(
          h ->
              h.topRow() <= table.headerRow()
                  && h.bottomRow() >= table.headerRow()
                  && h.overlaps(header));
      headers.add(header);
    }
    if (headers.size() > 1) {
      headers.sort(Comparator.comparing(Header::bottomRow).thenComparing(Header::firstColumn));
    }
    return headers;
  }

  /** Whether the next header begins before anything stands below one that a map names. */
  private static boolean headsNothing(Grid grid, List<Header> found, Header header) {
    int next = header.nextBelow(header.bottomRow(), found, Integer.MAX_VALUE);
    for (int row = header.bottomRow() + 1; row < Math.min(next, grid.rowCount()); row++) {
      for (Header.HeaderCell cell : header.cells()) {
        if (grid.kind(row, cell.column()) != Grid.Kind.BLANK) {
          return false;
        }
      }
    }
    return next < Integer.MAX_VALUE;
  }

  private static void askAboutHeader(Grid grid, Header header, Doubts doubts) {
    doubts.ask(
        grid.address(header.bottomRow(), header.firstColumn()),
        Message.of("ask.header", header.bottomRow() + 1));
  }

  private static Header mapped(Grid grid, List<Header> headers, TableMap table) {
    TreeMap<Integer, Header.HeaderCell> cells = new TreeMap<>();
    int top = table.headerRow();
    int bottom = table.headerRow();
    for (Header header : headers) {
      boolean same =
          header.topRow() <= table.headerRow()
              && header.bottomRow() >= table.headerRow()
              && table.columns().keySet().stream()
                  .anyMatch(c -> c >= header.firstColumn() && c <= header.lastColumn());
      if (same) {
        header.cells().forEach(c -> cells.put(c.column(), c));
        top = header.topRow();
        bottom = header.bottomRow();
      }
    }
    table
        .columns()
        .forEach(
            (column, use) -> {
              Header.HeaderCell before = cells.get(column);
              String text = before == null ? grid.text(table.headerRow(), column) : before.text();
              cells.put(
                  column,
                  new Header.HeaderCell(
                      column,
                      text,
                      before == null ? Vocabulary.meanings(text) : before.meanings(),
                      use.role()));
            });
    return new Header(top, bottom, List.copyOf(cells.values()));
  }
}
