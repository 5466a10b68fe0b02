package washbook.functions.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import washbook.functions.log.Header.HeaderCell;
import washbook.functions.scale.SugarScale;

/** Settles which column is the reading, and its scale. */
final class ReadingSettler {
  /** One reading on two scales: rounding explains so much, SG. */
  private static final double SAME_READING = 0.0015;

  /** One reading written twice on one scale, SG. */
  private static final double SAME_FIGURE = 0.0002;

  private final Grid grid;
  private final TableRows rows;
  private final ColumnUses columns;

  /** Whether the header of the reading says that it is corrected already. */
  boolean correctedByHeader;

  /** A temperature in the header of the reading, °C, NaN for none. */
  double temperatureByHeader = Double.NaN;

  /** The instrument's calibration where the header of the reading states it, °C, else NaN. */
  double calibrationByHeader = Double.NaN;

  ReadingSettler(Grid grid, TableRows rows, ColumnUses columns) {
    this.grid = grid;
    this.rows = rows;
    this.columns = columns;
  }

  void settle() {
    List<HeaderCell> strong = new ArrayList<>();
    List<HeaderCell> generic = new ArrayList<>();
    List<HeaderCell> last = new ArrayList<>();
    List<HeaderCell> potential = new ArrayList<>();
    for (HeaderCell cell : columns.with(Role.GRAVITY)) {
      Set<Concept> m = cell.meanings();
      (m.contains(Concept.POTENTIAL)
              ? potential
              : m.contains(Concept.FINALGRAVITY)
                  ? last
                  : HeaderJudge.isGeneric(m) ? generic : strong)
          .add(cell);
    }
    List<HeaderCell> corrected = columns.with(Role.OWN_CORRECTED_GRAVITY);
    List<List<HeaderCell>> byStrength = List.of(strong, generic, corrected, last, potential);
    HeaderCell reading = null;
    for (List<HeaderCell> cells : byStrength) {
      if (cells == corrected && reading != null) {
        continue;
      }
      if (reading == null && !cells.isEmpty()) {
        reading = oneOf(cells);
        correctedByHeader = cells == corrected || Statement.saysCorrected(reading.meanings());
      } else {
        cells.forEach(c -> columns.change(c, Role.OTHER, "", "another column is the reading"));
      }
    }
    if (reading != null) {
      settleScale(reading);
      double celsius = Statement.temperatureIn(reading.text());
      if (reading.meanings().contains(Concept.CALIBRATION)) {
        calibrationByHeader = celsius;
      } else {
        temperatureByHeader = celsius;
      }
    }
  }

  /** The column that is the reading where several could be. */
  private HeaderCell oneOf(List<HeaderCell> cells) {
    List<HeaderCell> filled = cells.stream().filter(c -> columns.facts(c).numbers() > 0).toList();
    if (filled.size() > 1) {
      List<HeaderCell> raw =
          filled.stream().filter(c -> c.meanings().contains(Concept.UNCORRECTED)).toList();
      List<HeaderCell> hydrometer =
          filled.stream().filter(c -> c.meanings().contains(Concept.HYDROMETER)).toList();
      filled = raw.size() == 1 ? raw : hydrometer.size() == 1 ? hydrometer : filled;
    }
    HeaderCell chosen = filled.isEmpty() ? cells.get(0) : filled.get(0);
    for (HeaderCell other : cells) {
      if (other == chosen) {
        continue;
      }
      if (filled.contains(other) && !agree(chosen, other)) {
        columns.unsettle();
        columns.doubt(
            other,
            "columns "
                + CellAddress.letters(chosen.column())
                + " and "
                + CellAddress.letters(other.column())
                + " could both be the reading and do not agree: which one is it? In a map: column "
                + CellAddress.letters(chosen.column())
                + " = GRAVITY, and column "
                + CellAddress.letters(other.column())
                + " = OTHER or REFRACTOMETER");
      }
      columns.change(
          other,
          Role.OTHER,
          "",
          "the reading is taken from column " + CellAddress.letters(chosen.column()));
    }
    return chosen;
  }

  private boolean agree(HeaderCell one, HeaderCell other) {
    SugarScale first = scaleOrNull(one);
    SugarScale second = scaleOrNull(other);
    if (first == null || second == null) {
      return false;
    }
    int both = 0;
    int same = 0;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      double a = ColumnFacts.plainNumber(grid, row, one.column());
      double b = ColumnFacts.plainNumber(grid, row, other.column());
      if (!Double.isNaN(a) && !Double.isNaN(b)) {
        both++;
        double most = first == second ? SAME_FIGURE : SAME_READING;
        if (Math.abs(gravity(a, first) - gravity(b, second)) < most) {
          same++;
        }
      }
    }
    return both > 0 && same == both;
  }

  private static double gravity(double value, SugarScale scale) {
    return scale == SugarScale.SG && value > 100 ? value / 1000 : scale.toGravity(value);
  }

  private SugarScale scaleOrNull(HeaderCell cell) {
    String unit = Units.sugarScale(cell.meanings());
    if (unit.isEmpty()) {
      return columns.facts(cell).mostlyGravity() ? SugarScale.SG : null;
    }
    return unit.equals(Units.GRAMS_PER_CUBIC_CENTIMETRE) ? null : SugarScale.valueOf(unit);
  }

  private void settleScale(HeaderCell cell) {
    if (!columns.saidUnit(cell).isEmpty()) {
      columns.change(cell, Role.GRAVITY, columns.saidUnit(cell), "by the map");
      return;
    }
    Set<Concept> m = cell.meanings();
    ColumnFacts facts = columns.facts(cell);
    String stated = m.contains(Concept.POTENTIAL) ? Concept.POTENTIAL.name() : Units.sugarScale(m);
    if (stated.equals("GL") && m.contains(Concept.GRAVITY) && facts.mostlyGravity()) {
      stated = "KGM3";
    }
    boolean gravities = facts.mostlyGravity();
    if (stated.isEmpty() || stated.equals("SG")) {
      if (gravities || facts.numbers() == 0) {
        columns.change(
            cell,
            Role.GRAVITY,
            "SG",
            stated.isEmpty() ? "its values are gravities" : "by its header");
        return;
      }
      if (stated.isEmpty()
          && (m.contains(Concept.EXTRACT) || m.contains(Concept.PERCENT))
          && facts.min() > -6
          && facts.max() < 45) {
        columns.change(
            cell, Role.GRAVITY, "PLATO", "extract in % by mass, by its header and values");
        return;
      }
      if (m.contains(Concept.DEGREES) && m.contains(Concept.GRAVITY) && onlyPoints(facts)) {
        columns.change(
            cell, Role.GRAVITY, "POINTS", "degrees of gravity: only points reach its values");
        return;
      }
      askScale(cell, "its values from " + facts.range() + " are no specific gravities");
      return;
    }
    boolean density = stated.equals("KGM3");
    boolean grams = stated.equals(Units.GRAMS_PER_CUBIC_CENTIMETRE);
    if (facts.allGravity() && facts.numbers() > 2 && !density && !grams) {
      askScale(cell, "its header says " + stated + ", but its values look like SG");
      return;
    }
    if ((density && facts.max() < 10) || (grams && facts.max() > 10)) {
      askScale(cell, "its header says " + stated + ", but its values do not");
      return;
    }
    columns.change(cell, Role.GRAVITY, stated, "by its header");
  }

  /**
   * Whether no other scale of sugar reaches so high: 1.190 is 43 \u00b0Bx, 24 \u00b0B\u00e9, 38
   * \u00b0Tw.
   */
  private static boolean onlyPoints(ColumnFacts facts) {
    return facts.max() > 45 && facts.max() <= 190 && facts.min() >= -20;
  }

  private void askScale(HeaderCell cell, String because) {
    columns.unsettle();
    columns.change(cell, Role.GRAVITY, "", because);
    columns.doubt(
        cell,
        "On which scale are the readings in column "
            + CellAddress.letters(cell.column())
            + " ("
            + cell.text()
            + ")? "
            + because
            + ". In a map: column "
            + CellAddress.letters(cell.column())
            + " = GRAVITY in BRIX (or another scale)");
  }

  /** A temperature in the header beside a temperature column: which of the two holds is asked. */
  void settleStatedTemperature() {
    if (Double.isNaN(temperatureByHeader)
        || correctedByHeader
        || columns.isCorrectionSaid()
        || !columns.has(Role.TEMPERATURE)) {
      return;
    }
    for (HeaderCell cell : columns.with(Role.GRAVITY)) {
      if (!columns.isSaid(cell)) {
        columns.unsettle();
        columns.doubt(
            cell,
            "The header '"
                + cell.text()
                + "' states a temperature, and another column holds temperatures: are the readings"
                + " corrected to that of the header? In a map: corrected = yes, or corrected = no");
      }
    }
  }
}
