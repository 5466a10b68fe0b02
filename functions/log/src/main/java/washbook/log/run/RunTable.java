package washbook.log.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import washbook.functions.Numbers;
import washbook.log.Doubts;
import washbook.log.LogColumn;
import washbook.log.LogSettings;
import washbook.log.LogTable;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.RowStatement;
import washbook.log.StillRun;
import washbook.log.StillRun.Charge;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;

/** Makes one table of jars from its header. */
final class RunTable {
  /** A strength that rises by so much begins another run, % vol. */
  private static final double RESTART = 20;

  /** The same where jars are numbered from 1 again, % vol. */
  private static final double RISE = 5;

  private static final int LONGEST_NAME = 40;

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
    if (end == grid.rowCount()) {
      lines.readBelow(lastFigures(end) + 1, Math.min(end, grid.rowCount()) - 1);
    }
    questions = new RunQuestions(header, d);
    columns = new RunColumns(grid, header, end, said, lines, questions);
    rows =
        columns.volume < 0 || columns.strength < 0
            ? null
            : new RunRows(grid, header, columns.volume, columns.strength, columns.isTotal, end);
    states = new StrengthStates(grid, columns.all(), lines.marks);
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
    StillRun.Settings settings = settings();
    boolean settled = questions.isEmpty();
    if (settled && !settings.corrected() && !hasTemperature(settings)) {
      settled = false;
      doubts.ask(
          address(),
          Message.of("ask.strengthTemperature", "temperature = 15 C", corrected()),
          MapAnswer.like("temperature = 15 C"),
          MapAnswer.of(corrected()));
    } else if (settled && !settings.volumesAt20() && !hasTemperature(settings)) {
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
    List<StillRun.Part> parts = parts(settings);
    if (parts == null) {
      settled = false;
      parts = List.of();
    }
    return settled
        ? new StillRun(
            table(settings, parts, true), parts, settings, jars.of(parts, settings.corrected()))
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
      double celsius = RunLines.statedCalibration(text);
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

  private boolean isProofOfUnknownCalibration(StillRun.Settings settings) {
    boolean proof =
        columns.all().stream()
            .anyMatch(c -> c.role() == Role.STRENGTH && RunStrengthUnit.of(c.unit()).isProof());
    boolean stated = !Double.isNaN(said.calibrationC()) || !Double.isNaN(lines.calibrationC);
    return proof && !stated && !settings.corrected();
  }

  private boolean hasTemperature(StillRun.Settings settings) {
    return columns.temperature >= 0 || !Double.isNaN(settings.temperatureC());
  }

  private StillRun.Settings settings() {
    boolean rowByRow = states.hasColumn() || hasRawBesideTrue();
    boolean linesCorrected = lines.corrected && !rowByRow;
    return new StillRun.Settings(
        or(said.temperatureC(), lines.temperatureC),
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

  /** The runs of the table; null where they cannot be told apart. */
  private List<StillRun.Part> parts(StillRun.Settings settings) {
    List<StillRun.Part> parts = new ArrayList<>();
    List<String> cuts = cuts();
    int from = 0;
    double before = Double.NaN;
    for (int i = 0; i <= rows.jars.size(); i++) {
      boolean end = i == rows.jars.size();
      boolean begins = !end && i > 0 && isBegun(rows.jars.get(i));
      boolean slip = !end && jars.isSlip(rows.jars, i);
      double strength = end || slip ? Double.NaN : jars.strength(rows.jars.get(i));
      boolean first = !end && i > 0 && columns.isFirstJar(rows, rows.jars.get(i));
      boolean rises = strength > before + (first ? RISE : RESTART) && strength <= 100;
      boolean restart = rises || begins && isNewRun(i);
      if (restart && !begins && !first) {
        askForRun(i, parts.size() + 2);
        return null;
      }
      if (end || restart) {
        parts.add(part(parts.size(), from, i, cuts));
        from = i;
        before = Double.NaN;
      }
      before = strength > 0 && strength <= 100 ? strength : before;
    }
    return parts;
  }

  /** Whether a line, a sum or a map says that another run may begin. */
  private boolean isBegun(int row) {
    return rows.begun.contains(row) || said.begins().containsKey(row);
  }

  private boolean isNewRun(int index) {
    return said.begins().containsKey(rows.jars.get(index));
  }

  private void askForRun(int index, int number) {
    int row = rows.jars.get(index);
    doubts.ask(
        CellAddress.of(row, columns.strength),
        Message.of("ask.anotherRun", new Figure(Numbers.show(RESTART))),
        MapAnswer.of(RowStatement.batch(row, name() + " " + number)));
  }

  private StillRun.Part part(int index, int from, int to, List<String> cuts) {
    int[] jars = rows.jars.subList(from, to).stream().mapToInt(row -> row).toArray();
    String group = index == 0 ? "" : rows.groups.get(from);
    String told = said.begins().getOrDefault(rows.jars.get(from), said.name());
    String name = told.isEmpty() ? group.isEmpty() ? name() : group : told;
    boolean saysCharge =
        !Double.isNaN(said.chargeLitres()) || !Double.isNaN(said.chargePercentVolume());
    Charge charge =
        saysCharge
            ? new Charge(said.chargeLitres(), said.chargePercentVolume(), "", "", address())
            : index == 0 && to == rows.jars.size() ? lines.charge() : Charge.none();
    return new StillRun.Part(name, jars, cuts.subList(from, to), charge);
  }

  private String name() {
    String title = lines.title;
    return title.isEmpty() || title.length() > LONGEST_NAME ? grid.name() : title;
  }

  private List<String> cuts() {
    for (LogColumn column : columns.all()) {
      if (column.role() == Role.CUT) {
        return RunCuts.of(grid, rows.jars, column.column());
      }
    }
    List<String> cuts = new ArrayList<>();
    for (String group : rows.groups) {
      RunCut cut = RunCut.of(group);
      cuts.add(cut == null ? "" : cut.name());
    }
    return cuts;
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
    return new Figure(Numbers.show(number));
  }
}
