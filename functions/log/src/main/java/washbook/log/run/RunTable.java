package washbook.log.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import washbook.functions.Numbers;
import washbook.log.Doubts;
import washbook.log.LogSettings;
import washbook.log.LogTable;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.StillRun;
import washbook.log.StillRun.Charge;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;

/** Makes one table of jars from its header. */
final class RunTable {
  private final Grid grid;
  private final RunHeader header;
  private final RunMap said;

  /** Whether another table stands beside it, so that a map about its rows speaks of both. */
  private final boolean isBeside;

  final Doubts doubts;
  final RunColumns columns;
  final RunRows rows;
  final RunLines lines;
  private final RunQuestions questions;
  private final StrengthStates states;
  private final RunJars jars;

  /**
   * @param above first row that can hold lines about the table
   * @param end one past the last row that can belong to it
   * @param first first column whose cells above may speak of it; likewise {@code last}
   */
  RunTable(
      Grid grid, RunHeader header, int above, int end, int first, int last, RunMap said, Doubts d) {
    this.grid = grid;
    this.header = header;
    this.said = said;
    this.isBeside = first > 0 || last + 1 < grid.columnCount();
    this.doubts = d;
    int lineEnd = header.isMissing() ? header.bottomRow() : header.topRow() - 1;
    lines = new RunLines(grid, above, lineEnd, first, last);
    if (first > 0) {
      lines.readOfAll(above, lineEnd);
    }
    lines.readUnder(header.bottomRow() + 1, end);
    if (end == grid.rowCount()) {
      lines.readBelow(lastFigures(end) + 1, Math.min(end, grid.rowCount()) - 1);
    }
    questions = new RunQuestions(header, d);
    columns = new RunColumns(grid, header, end, said, lines, questions);
    rows =
        columns.volume < 0 || columns.strength < 0
            ? null
            : new RunRows(
                grid,
                header,
                columns.volume,
                columns.strength,
                columns.isTotal,
                columns.volumeUnit,
                end);
    states = new StrengthStates(grid, columns.all(), lines.marks, lines.words);
    jars = rows == null ? null : new RunJars(grid, columns, rows, states);
  }

  /** The last row below the header that has three numbers, as jars have. */
  private int lastFigures(int end) {
    for (int row = end - 1; row > header.bottomRow(); row--) {
      int numbers = 0;
      for (RunHeader.Cell cell : header.cells()) {
        numbers += Double.isNaN(RunCells.number(grid, row, cell.column())) ? 0 : 1;
      }
      if (numbers >= 3) {
        return row;
      }
    }
    return end - 1;
  }

  /** Whether there is anything that can be jars. */
  boolean hasJars() {
    return rows != null && rows.jars.size() >= 2;
  }

  String address() {
    return CellAddress.of(header.bottomRow(), header.firstColumn());
  }

  StillRun make() {
    questions.ask();
    RunParts split = new RunParts(grid, this, said, jars);
    List<StillRun.Part> parts = split.parts;
    StillRun.Settings settings = settings(split.labels);
    Map<Integer, StillRun.Jar> each = jars.of(split, lines.temperatures, settings.corrected());
    boolean settled = questions.isEmpty();
    if (settled && !settings.corrected() && !hasTemperature(settings, each)) {
      settled = false;
      doubts.ask(
          address(),
          Message.of("ask.strengthTemperature", temperature(), corrected()),
          isLikely() ? MapAnswer.of(temperature()) : MapAnswer.like(temperature()),
          MapAnswer.of(corrected()));
    } else if (settled && !settings.volumesAt20() && !hasTemperature(settings, each)) {
      settled = false;
      doubts.ask(
          address(),
          Message.of("ask.volumeTemperature", "volumes at 20 = yes", "temperature = 15 C"),
          MapAnswer.of("volumes at 20 = yes"),
          MapAnswer.like("temperature = 15 C"));
    }
    if (settled && isProofOfUnknownCalibration(settings)) {
      settled = false;
      doubts.ask(
          address(),
          Message.of("ask.proof", new Figure("1.5"), "calibration = 60 F"),
          MapAnswer.of("calibration = 60 F"),
          MapAnswer.of("calibration = 68 F"));
    }
    settled &= !askAboutCalibrationWithin(settings);
    if (split.isOpen()) {
      split.ask(doubts);
      settled = false;
    }
    return settled
        ? new StillRun(table(settings, parts, true), parts, settings, each)
        : new StillRun(table(settings, parts, false), List.of(), settings);
  }

  /** Asks where a line between the jars tells of another instrument than the lines above do. */
  private boolean askAboutCalibrationWithin(StillRun.Settings settings) {
    if (settings.corrected() || !hasJars()) {
      return false;
    }
    for (int row = rows.jars.get(0); row < rows.jars.get(rows.jars.size() - 1); row++) {
      int column = header.firstColumn();
      String text = grid.kind(row, column) == Grid.Kind.TEXT ? grid.text(row, column) : "";
      double celsius = RunTemperatures.statedCalibration(text);
      if (Math.abs(celsius - settings.calibrationC()) > 0.1) {
        Message asked = Message.of("ask.otherCalibration", figure(celsius));
        doubts.ask(CellAddress.of(row, column), asked);
        return true;
      }
    }
    return false;
  }

  /** Says that the strengths are true ones; of one table beside another by its column. */
  private String corrected() {
    return isBeside
        ? RunQuestions.statement(columns.strength, Role.OWN_TRUE_STRENGTH.name())
        : "corrected = yes";
  }

  private boolean isLikely() {
    return !Double.isNaN(lines.temperatures.perhaps());
  }

  /** One temperature for all jars: the one that a line may tell, else one as an example. */
  private String temperature() {
    String celsius = isLikely() ? Numbers.show(lines.temperatures.perhaps()) : "15";
    return "temperature = " + celsius + " C";
  }

  private boolean isProofOfUnknownCalibration(StillRun.Settings settings) {
    boolean proof =
        columns.all().stream()
            .anyMatch(c -> c.role() == Role.STRENGTH && RunStrengthUnit.of(c.unit()).isProof());
    boolean stated = !Double.isNaN(said.calibrationC()) || !Double.isNaN(lines.calibrationC);
    return proof && !stated && !settings.corrected();
  }

  /** Whether all jars, most of them or a column tell the temperature of the spirit. */
  private boolean hasTemperature(StillRun.Settings settings, Map<Integer, StillRun.Jar> each) {
    long known = each.values().stream().filter(jar -> !Double.isNaN(jar.temperatureC())).count();
    return columns.temperature >= 0
        || !Double.isNaN(settings.temperatureC())
        || known * 2 > rows.jars.size();
  }

  private StillRun.Settings settings(List<String> labels) {
    boolean rowByRow = states.hasColumn() || hasRawBesideTrue();
    boolean linesCorrected = lines.corrected && !rowByRow;
    return new StillRun.Settings(
        or(said.temperatureC(), lines.temperatures.ofAll(labels)),
        said.corrected() == null ? columns.corrected || linesCorrected : said.corrected(),
        said.volumesAt20() == null ? columns.volumesAt20 || lines.volumesAt20 : said.volumesAt20(),
        or(said.calibrationC(), or(lines.calibrationC, LogSettings.USUAL_CALIBRATION)),
        or(said.pressureHPa(), lines.pressureHPa));
  }

  /** Whether what was read stands beside the true strengths: then lines speak of those. */
  private boolean hasRawBesideTrue() {
    return columns.all().stream().anyMatch(c -> c.role() == Role.OWN_TRUE_STRENGTH);
  }

  private static double or(double first, double second) {
    return Double.isNaN(first) ? second : first;
  }

  private LogTable table(StillRun.Settings settings, List<StillRun.Part> parts, boolean settled) {
    List<Integer> jars = rows.jars;
    return new LogTable(
        header.bottomRow(),
        header.bottomRow() + 1,
        jars.get(jars.size() - 1),
        header.firstColumn(),
        header.lastColumn(),
        columns.all(),
        List.of(),
        LogSettings.none().written(said.writing()),
        remarks(settings, parts),
        settled,
        rows.setAside);
  }

  private List<Message> remarks(StillRun.Settings settings, List<StillRun.Part> parts) {
    List<Message> remarks = new ArrayList<>();
    remarks.add(strengths(settings));
    if (columns.isTotal) {
      remarks.add(Message.of("remark.volumes.total"));
    }
    remarks.add(Message.of(settings.volumesAt20() ? "remark.volumes.true" : "remark.volumes.read"));
    if (!Double.isNaN(settings.pressureHPa())) {
      remarks.add(Message.of("remark.pressure", figure(settings.pressureHPa())));
    }
    parts.forEach(part -> remarks.add(remark(part)));
    return remarks;
  }

  private Message strengths(StillRun.Settings settings) {
    if (states.hasColumn()) {
      return Message.of("remark.strengths.rows", figure(settings.calibrationC()));
    }
    if (settings.corrected()) {
      return Message.of("remark.strengths.true");
    }
    Figure calibration = figure(settings.calibrationC());
    return columns.temperature >= 0 || Double.isNaN(settings.temperatureC())
        ? Message.of("remark.strengths.read", calibration)
        : Message.of("remark.strengths.one", figure(settings.temperatureC()), calibration);
  }

  private static Message remark(StillRun.Part part) {
    Charge charge = part.charge();
    int first = Arrays.stream(part.rows()).min().orElse(0) + 1;
    int last = Arrays.stream(part.rows()).max().orElse(0) + 1;
    if (charge.pureAlcohol().isPresent()) {
      return Message.of(
          "remark.run.charge",
          part.name(),
          first,
          last,
          figure(charge.litres()),
          figure(charge.percentVolume()),
          charge.cell());
    }
    return charge.cell().isEmpty()
        ? Message.of("remark.run.none", part.name(), first, last)
        : Message.of("remark.run.lacking", part.name(), first, last, charge.cell());
  }

  private static Figure figure(double number) {
    return new Figure(Numbers.round(number, 3));
  }
}
