package washbook.log.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import washbook.log.Doubts;
import washbook.log.LeftAlone;
import washbook.log.MapAnswer;
import washbook.log.StillRun;
import washbook.log.language.Message;
import washbook.log.sheet.Grid;

/**
 * The still runs of a sheet. Strong evidence makes a table one, weak evidence asks, contrary
 * evidence leaves it alone with a line that says why.
 */
public final class StillRuns {
  private final Grid grid;
  private final List<StillRun> runs = new ArrayList<>();
  private final List<LeftAlone> leftAlone = new ArrayList<>();
  private final Doubts doubts = new Doubts();

  /** Areas that belong to runs and to nothing else. */
  private final List<Grid.Area> areas = new ArrayList<>();

  /** Tables that weak evidence speaks for. */
  private final List<Open> open = new ArrayList<>();

  /** The lines of the last run that state a calibration. */
  private RunLines stated;

  private record Open(RunTable table, RunHeader header, RunEvidence evidence, int above) {}

  private StillRuns(Grid grid) {
    this.grid = grid;
  }

  /** Finds them; what the map says holds before anything that the sheet says. */
  public static StillRuns in(Grid grid, RunMap.Finder maps) {
    StillRuns found = new StillRuns(grid);
    List<RunHeader> headers = new RunHeaders(grid).find();
    for (RunHeader header : headers) {
      RunMap said =
          maps.about(
              header.topRow(), header.bottomRow(), header.firstColumn(), header.lastColumn());
      if (!Boolean.FALSE.equals(said.isRun())) {
        found.look(headers, header, said);
      }
    }
    found.settleOpen();
    if (headers.isEmpty()) {
      JarsAcross.askAbout(grid, found.doubts);
    }
    return found;
  }

  public List<StillRun> runs() {
    return List.copyOf(runs);
  }

  public List<LeftAlone> leftAlone() {
    return List.copyOf(leftAlone);
  }

  public Doubts doubts() {
    return doubts;
  }

  /** The sheet as it is without its runs. */
  public Grid rest() {
    return areas.isEmpty() ? grid : new GridWithoutRuns(grid, List.copyOf(areas));
  }

  private void look(List<RunHeader> headers, RunHeader header, RunMap said) {
    int above = above(header);
    int[] span = span(headers, header);
    Doubts own = new Doubts();
    RunTable table =
        new RunTable(grid, header, above, end(headers, header), span[0], span[1], said, own);
    if (!table.hasJars()) {
      return;
    }
    RunEvidence evidence =
        new RunEvidence(grid, header, table.columns.all(), table.rows, table.lines);
    switch (Boolean.TRUE.equals(said.isRun()) ? RunEvidence.Verdict.RUN : evidence.verdict()) {
      case RUN -> take(table, header, above);
      case OPEN, WEAK -> open.add(new Open(table, header, evidence, above));
      case OTHER -> leaveAlone(table, header, evidence.mostly(true));
      case NOTHING -> {}
    }
  }

  /** One alcoholometer reads all runs of a sheet where the later ones say nothing of it. */
  private void carryCalibration(RunLines lines) {
    if (!Double.isNaN(lines.calibrationC)) {
      stated = lines;
    } else if (stated != null && stated.proofs.equals(lines.proofs)) {
      lines.calibrationC = stated.calibrationC;
    }
  }

  private void take(RunTable table, RunHeader header, int above) {
    carryCalibration(table.lines);
    StillRun run = table.make();
    runs.add(run);
    areas.add(
        new Grid.Area(
            block(header, above),
            header.firstColumn(),
            run.table().lastRow(),
            header.lastColumn()));
    doubts.takeOver(table.doubts, run.table().headerRow());
  }

  /** Beside a sure run on the same sheet weak evidence is enough; else it is asked about. */
  private void settleOpen() {
    boolean sure = !runs.isEmpty();
    for (Open one : open) {
      if (sure) {
        take(one.table(), one.header(), one.above());
      } else if (one.evidence().isWorthAsking()) {
        ask(one);
      } else {
        leaveAlone(one.table(), one.header(), Message.of("alone.little"));
      }
    }
    if (runs.size() > 1) {
      runs.sort(
          Comparator.comparing((StillRun run) -> run.table().headerRow())
              .thenComparing(run -> run.table().firstColumn()));
    }
  }

  private void leaveAlone(RunTable table, RunHeader header, Message why) {
    String row = String.valueOf(header.bottomRow() + 1);
    leftAlone.add(
        new LeftAlone(
            table.address(),
            Message.of("alone.run", row, why, "header row = " + row + ", run = yes")));
  }

  private void ask(Open one) {
    String row = String.valueOf(one.header().bottomRow() + 1);
    Message against = one.evidence().mostly(true);
    Doubts own = new Doubts();
    own.ask(
        one.table().address(),
        Message.of(
            "ask.isRun",
            row,
            one.evidence().mostly(false),
            against.isBlank() ? Message.of("ask.nothingElse") : against,
            "header row = " + row,
            "run = yes",
            "run = no"),
        MapAnswer.of("run = yes"),
        MapAnswer.of("run = no"));
    doubts.takeOver(own, one.header().bottomRow());
  }

  /** One past the last row that can belong to a header: where the next one over it begins. */
  private int end(List<RunHeader> headers, RunHeader header) {
    int end = grid.rowCount();
    for (RunHeader other : headers) {
      if (other.topRow() > header.bottomRow() && other.overlaps(header)) {
        end = Math.min(end, other.topRow());
      }
    }
    return end;
  }

  /**
   * First row that can hold lines about the table: below the run above, and the last lines that
   * stand together right above the header.
   */
  private int above(RunHeader header) {
    int lowest = 0;
    for (Grid.Area area : areas) {
      if (area.lastRow() < header.topRow()
          && area.firstColumn() <= header.lastColumn()
          && header.firstColumn() <= area.lastColumn()) {
        lowest = Math.max(lowest, area.lastRow() + 1);
      }
    }
    int top = header.isMissing() ? header.bottomRow() + 1 : header.topRow();
    int row = top - 1;
    int lines = 0;
    while (row >= lowest && lines < 12) {
      if (isReading(row)) {
        return row + 1;
      }
      lines++;
      row--;
    }
    return Math.max(lowest, row + 1);
  }

  /** First of the lines that stand right above a header without a blank row between. */
  private int block(RunHeader header, int above) {
    int row = header.topRow();
    while (row - 1 >= above && !isBlank(row - 1)) {
      row--;
    }
    return row;
  }

  private boolean isBlank(int row) {
    for (int column = 0; column < Math.min(grid.columnsUsed(row), 60); column++) {
      if (grid.kind(row, column) != Grid.Kind.BLANK) {
        return false;
      }
    }
    return true;
  }

  /** Whether a row belongs to another table: two numbers or a date with one. */
  private boolean isReading(int row) {
    int numbers = 0;
    int texts = 0;
    boolean date = false;
    for (int column = 0; column < Math.min(grid.columnsUsed(row), 60); column++) {
      switch (grid.kind(row, column)) {
        case NUMBER -> numbers++;
        case DATE -> date = true;
        case TEXT -> {
          boolean number = !Double.isNaN(RunCells.number(grid, row, column));
          numbers += number ? 1 : 0;
          texts += number ? 0 : 1;
        }
        default -> {}
      }
    }
    return date && numbers > 0 || numbers >= 2 && texts == 0 || numbers >= 3 && texts <= 1;
  }

  /** First and last column whose cells above the header may speak of this table. */
  private int[] span(List<RunHeader> headers, RunHeader header) {
    int first = 0;
    int last = Math.max(0, grid.columnCount() - 1);
    for (RunHeader other : headers) {
      if (other != header && other.topRow() == header.topRow()) {
        if (other.firstColumn() > header.lastColumn()) {
          last = Math.min(last, other.firstColumn() - 1);
        } else {
          first = header.firstColumn();
        }
      }
    }
    return new int[] {first, last};
  }
}
