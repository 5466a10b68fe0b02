package washbook.samples.corpus;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import washbook.log.Batch;
import washbook.log.ComputedColumn;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.fill.FilledColumn;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;

/** Compares what a log was taken for with what a careful person understands. */
final class Judge {
  /** What is written must be what the catalogue gives from the reading's ten digits. */
  private static final double SAME = 1e-8;

  /** The same for a reading that counts as one at 20 °C: sugar's and alcohol's water differ. */
  private static final double SAME_CORRECTED = 3e-6;

  /** A % vol goes with more than 130 of gravity. */
  private static final double ABV_PER_GRAVITY = 160;

  /** Attenuation, %, over % vol, in the weakest wash of the corpus. */
  private static final double ATTENUATION_PER_ABV = 13;

  /** Roles whose mistake changes or hides a figure. */
  private static final Set<Role> WEIGHTY =
      Set.of(
          Role.GRAVITY,
          Role.REFRACTOMETER,
          Role.TEMPERATURE,
          Role.BATCH,
          Role.ORIGINAL_GRAVITY,
          Role.SUGAR_ADDED,
          Role.OWN_ABV,
          Role.OWN_CORRECTED_GRAVITY,
          Role.OWN_APPARENT_ATTENUATION,
          Role.OWN_REAL_ATTENUATION);

  private static final Set<Role> UNITS_MATTER =
      Set.of(Role.GRAVITY, Role.REFRACTOMETER, Role.TEMPERATURE);

  private final Expected expected;
  private final Taken taken;
  private final Tally tally;

  /** Figures where there should be other ones or none. */
  private final List<String> wrong = new ArrayList<>();

  /** Things not understood; nothing false is written. */
  private final List<String> missed = new ArrayList<>();

  /** Batches that are called something else than in the log. */
  private final List<String> names = new ArrayList<>();

  Judge(Expected expected, Taken taken, Tally tally) {
    this.expected = expected;
    this.taken = taken;
    this.tally = tally;
    if (expected.tables().isEmpty()) {
      nothingFilled();
    }
    Map<Taken.Sheet, boolean[]> seen = new HashMap<>();
    for (Expected.Table table : expected.tables()) {
      Taken.Sheet sheet = taken.sheet(table.sheet());
      if (sheet == null) {
        missed.add("sheet " + table.sheet());
      } else {
        compare(table, sheet, seen.computeIfAbsent(sheet, s -> new boolean[rows(s)]));
      }
    }
    strangers(seen);
  }

  private static int rows(Taken.Sheet sheet) {
    return sheet.understanding().seen(sheet.grid()).rowCount() + 1;
  }

  List<String> wrong() {
    return wrong;
  }

  List<String> missed() {
    return missed;
  }

  List<String> names() {
    return names;
  }

  boolean understood() {
    return switch (expected.verdict()) {
      case FILL -> wrong.isEmpty() && missed.isEmpty();
      case ASK, CAREFUL, NOTHING -> wrong.isEmpty();
    };
  }

  private void nothingFilled() {
    for (Taken.Sheet sheet : taken.sheets()) {
      for (ColumnPatch patch : sheet.filling().patch().columns()) {
        for (int row = patch.firstRow(); row <= patch.lastRow(); row++) {
          if (!Double.isNaN(patch.cells().number(row))) {
            wrong.add(patch.header() + " filled in row " + (row + 1));
            return;
          }
        }
      }
    }
  }

  private void compare(Expected.Table table, Taken.Sheet sheet, boolean[] seen) {
    LogTable found = find(table, sheet);
    if (found == null) {
      missed.add("table on " + table.sheet() + " not found");
      table.columns().stream()
          .filter(c -> c.role() != null)
          .forEach(c -> tally.count(c.role(), null));
      return;
    }
    columns(table, found);
    batches(table, found, sheet.understanding().seen(sheet.grid()));
    figures(table, found, sheet, seen);
  }

  /** The table that holds the reading column in at least one of the rows. */
  private static LogTable find(Expected.Table table, Taken.Sheet sheet) {
    int column =
        table.columns().stream()
            .filter(c -> c.role() == Role.GRAVITY || c.role() == Role.REFRACTOMETER)
            .mapToInt(Expected.Column::column)
            .findFirst()
            .orElse(-1);
    for (LogTable candidate : sheet.understanding().tables()) {
      boolean across = column >= candidate.firstColumn() && column <= candidate.lastColumn();
      boolean down =
          table.rows().isEmpty()
              || table.rows().stream()
                  .anyMatch(r -> r.row() >= candidate.firstRow() && r.row() <= candidate.lastRow());
      if (across && down) {
        return candidate;
      }
    }
    return null;
  }

  private void batches(Expected.Table table, LogTable found, Grid grid) {
    List<String> taken = found.batches().stream().map(Batch::name).toList();
    List<String> standing =
        table.batches().stream()
            .map(Expected.Ferment::name)
            .filter(name -> stands(name, grid))
            .toList();
    if (standing.size() == table.batches().size()) {
      tally.countNames(standing, taken, grid.name());
    }
    for (Expected.Ferment batch : table.batches()) {
      if (stands(batch.name(), grid) && taken.stream().noneMatch(batch.name()::equalsIgnoreCase)) {
        names.add(batch.name() + " is called " + taken);
      }
    }
  }

  private static boolean stands(String name, Grid grid) {
    for (int row = 0; row < grid.rowCount(); row++) {
      for (int column = 0; column < grid.columnCount(); column++) {
        if (grid.text(row, column).contains(name)) {
          return true;
        }
      }
    }
    return grid.name().equals(name);
  }

  private void columns(Expected.Table table, LogTable found) {
    for (Expected.Column column : table.columns()) {
      if (column.role() == null) {
        continue;
      }
      LogColumn use =
          found.columns().stream()
              .filter(c -> c.column() == column.column())
              .findFirst()
              .orElse(null);
      Role role = use == null ? null : use.role();
      tally.count(column.role(), role);
      if (role != column.role() && (WEIGHTY.contains(column.role()) || WEIGHTY.contains(role))) {
        missed.add("'" + column.header() + "' is " + column.role() + ", taken for " + role);
      } else if (use != null
          && role == column.role()
          && UNITS_MATTER.contains(role)
          && !column.unit().equals("*")
          && !alike(column.unit(), use.unit())) {
        missed.add(
            "'" + column.header() + "' is in " + column.unit() + ", taken for " + use.unit());
      }
    }
  }

  /** Scales that are the same figure under another name. */
  private static boolean alike(String expected, String taken) {
    Set<String> brix = Set.of("BRIX", "PLATO", "BALLING");
    Set<String> points = Set.of("POINTS", "OECHSLE");
    return expected.equals(taken)
        || expected.isEmpty()
        || (brix.contains(expected) && brix.contains(taken))
        || (points.contains(expected) && points.contains(taken));
  }

  private void figures(Expected.Table table, LogTable found, Taken.Sheet sheet, boolean[] seen) {
    FilledColumn gravity = patch(ComputedColumn.CORRECTED_GRAVITY, found, sheet);
    FilledColumn abv = patch(ComputedColumn.ABV, found, sheet);
    FilledColumn apparent = patch(ComputedColumn.APPARENT_ATTENUATION, found, sheet);
    FilledColumn real = patch(ComputedColumn.REAL_ATTENUATION, found, sheet);
    int unfilled = 0;
    String first = "";
    for (Expected.Row row : table.rows()) {
      seen[row.row()] = true;
      double writtenGravity = number(gravity, row.row());
      double writtenAbv = number(abv, row.row());
      String where = "row " + (row.row() + 1) + " ";
      if (row.refused()) {
        if (!Double.isNaN(writtenAbv)) {
          wrong.add(where + "filled with " + writtenAbv + " instead of refused");
        }
      } else if (Double.isNaN(writtenGravity) || Double.isNaN(writtenAbv)) {
        unfilled++;
        first = first.isEmpty() ? where + reason(sheet, row.row()) : first;
      } else {
        near(where + "gravity", row.gravity(), writtenGravity, row.gravityError());
        near(where + "ABV", row.abv(), writtenAbv, row.abvError());
        double attenuationError = ATTENUATION_PER_ABV * row.abvError();
        near(where + "apparent", row.apparent(), number(apparent, row.row()), attenuationError);
        near(where + "real", row.real(), number(real, row.row()), attenuationError);
        exact(where, table, row, writtenGravity, writtenAbv);
      }
    }
    if (unfilled > 0) {
      missed.add(unfilled + " rows not filled, first " + first);
    }
  }

  private static String reason(Taken.Sheet sheet, int row) {
    String ending = String.valueOf(row + 1);
    return sheet.filling().refusals().stream()
        .filter(r -> r.cell().replaceAll("[A-Z]", "").equals(ending))
        .map(r -> r.cell() + " " + r.code() + " " + r.reason())
        .findFirst()
        .orElse("without a reason");
  }

  private void near(String what, double truth, double written, double error) {
    if (!Double.isNaN(truth) && !(Math.abs(truth - written) <= error)) {
      wrong.add(what + " " + written + " but truly " + truth + " +-" + error);
    }
  }

  private void exact(
      String where, Expected.Table table, Expected.Row row, double gravity, double abv) {
    if (Double.isNaN(row.reading())) {
      return;
    }
    Recomputed figures = Recomputed.of(table, row);
    double same = Double.isNaN(row.temperatureC()) ? SAME_CORRECTED : SAME;
    if (Math.abs(figures.gravity() - gravity) > same) {
      wrong.add(where + "gravity " + gravity + ", recomputed " + figures.gravity());
    } else if (!(Math.abs(figures.figure("ABV") - abv) <= same * ABV_PER_GRAVITY)) {
      wrong.add(where + "ABV " + abv + ", recomputed " + figures.figure("ABV"));
    }
  }

  /** Rows that are filled although nobody would fill them. */
  private void strangers(Map<Taken.Sheet, boolean[]> seen) {
    for (Taken.Sheet sheet : taken.sheets()) {
      boolean[] known = seen.getOrDefault(sheet, new boolean[rows(sheet)]);
      for (FilledColumn column : sheet.filling().columns()) {
        ColumnPatch patch = column.patch();
        for (int row = patch.firstRow(); row <= patch.lastRow(); row++) {
          if (!Double.isNaN(patch.cells().number(row)) && !known[row]) {
            wrong.add(patch.header() + " filled in row " + (row + 1) + ", which is no reading");
            return;
          }
        }
      }
    }
  }

  private static double number(FilledColumn column, int row) {
    boolean inside =
        column != null && row >= column.patch().firstRow() && row <= column.patch().lastRow();
    return inside ? column.inGravity(row) : Double.NaN;
  }

  private static FilledColumn patch(ComputedColumn what, LogTable table, Taken.Sheet sheet) {
    return sheet.filling().column(table, what).orElse(null);
  }
}
