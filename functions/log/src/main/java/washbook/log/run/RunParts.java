package washbook.log.run;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import washbook.functions.Numbers;
import washbook.log.Doubts;
import washbook.log.LogColumn;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.RowStatement;
import washbook.log.StillRun;
import washbook.log.StillRun.Charge;
import washbook.log.language.Figure;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.words.Ditto;

/** The runs that one table of jars holds below one another. */
final class RunParts {
  /** A strength that rises by so much begins another run, % vol. */
  private static final double RESTART = 20;

  /** The same where jars are numbered from 1 again, % vol. */
  private static final double RISE = 5;

  private static final int LONGEST_NAME = 40;
  private static final int LONGEST_LABEL = 20;

  private final Grid grid;
  private final RunTable table;
  private final RunMap said;
  private final RunColumns columns;
  private final RunRows rows;
  private final RunJars jars;

  /** Where a run may begin that nothing names, as an index of jars; -1 for none. */
  private int open = -1;

  private int number;

  /** The runs; none where they cannot be told apart. */
  final List<StillRun.Part> parts = new ArrayList<>();

  /** What a column of the table calls each of several runs, "" where none does. */
  final List<String> labels;

  RunParts(Grid grid, RunTable table, RunMap said, RunJars jars) {
    this.grid = grid;
    this.table = table;
    this.said = said;
    this.columns = table.columns;
    this.rows = table.rows;
    this.jars = jars;
    split();
    labels = labels();
  }

  private void split() {
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
        open = i;
        number = parts.size() + 2;
        parts.clear();
        return;
      }
      if (end || restart) {
        parts.add(part(parts.size(), from, i, cuts));
        from = i;
        before = Double.NaN;
      }
      before = strength > 0 && strength <= 100 ? strength : before;
    }
  }

  /** Whether a line, a sum or a map says that another run may begin. */
  private boolean isBegun(int row) {
    return rows.begun.contains(row) || said.begins().containsKey(row);
  }

  private boolean isNewRun(int index) {
    return said.begins().containsKey(rows.jars.get(index));
  }

  /** Whether it is open if another run begins. */
  boolean isOpen() {
    return open >= 0;
  }

  void ask(Doubts doubts) {
    int row = rows.jars.get(open);
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
            ? new Charge(said.chargeLitres(), said.chargePercentVolume(), "", "", table.address())
            : index == 0 && to == rows.jars.size() ? table.lines.charge() : Charge.none();
    return new StillRun.Part(name, jars, cuts.subList(from, to), charge);
  }

  private String name() {
    String title = table.lines.title;
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

  private List<String> labels() {
    if (parts.size() > 1) {
      for (LogColumn column : columns.all()) {
        List<String> found = column.role() == Role.OTHER ? labels(column.column()) : List.of();
        if (new HashSet<>(found).size() == parts.size()) {
          return found;
        }
      }
    }
    return parts.stream().map(part -> "").toList();
  }

  /** What a column calls the runs; nothing where it holds something else. */
  private List<String> labels(int column) {
    List<String> found = new ArrayList<>();
    for (StillRun.Part part : parts) {
      String label = grid.text(part.rows()[0], column).strip();
      boolean text = grid.kind(part.rows()[0], column) == Grid.Kind.TEXT;
      if (!text || label.isEmpty() || label.length() > LONGEST_LABEL) {
        return List.of();
      }
      for (int row : part.rows()) {
        String here = grid.text(row, column).strip();
        if (!here.isEmpty() && !here.equals(label) && !Ditto.isMark(here)) {
          return List.of();
        }
      }
      found.add(label);
    }
    return found;
  }
}
