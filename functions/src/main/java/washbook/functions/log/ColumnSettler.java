package washbook.functions.log;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import washbook.functions.log.Header.HeaderCell;
import washbook.functions.scale.SugarScale;

/** Settles role and unit of every column of a table from its headers, then from its values. */
final class ColumnSettler {
  private static final double SAME_READING = 0.004;

  private final Grid grid;
  private final Header header;
  private final TableRows rows;
  private final TableMap said;
  private final TreeMap<Integer, ColumnUse> uses = new TreeMap<>();
  private final Map<Integer, ColumnFacts> facts = new HashMap<>();
  final List<Doubt> doubts = new ArrayList<>();
  final List<String> remarks = new ArrayList<>();

  /** Whether the readings are understood without doubt. */
  boolean settled = true;

  /** Whether the header of the reading says that it is corrected already. */
  boolean correctedByHeader;

  /** A temperature in the header of the reading, °C, NaN for none. */
  double temperatureByHeader = Double.NaN;

  /** The instrument's calibration where the header of the reading states it, °C, else NaN. */
  double calibrationByHeader = Double.NaN;

  ColumnSettler(Grid grid, Header header, TableRows rows, TableMap said) {
    this.grid = grid;
    this.header = header;
    this.rows = rows;
    this.said = said;
  }

  List<ColumnUse> settle() {
    for (HeaderCell cell : header.cells()) {
      String why =
          said.columns().containsKey(cell.column())
              ? "by the map"
              : cell.role() == Role.OTHER ? "its header names nothing of a log" : "by its header";
      uses.put(cell.column(), use(cell, cell.role(), "", why));
    }
    settleReading();
    settleTemperature();
    settleRefractometer();
    settleOwnGravity();
    settleAmount(Role.SUGAR_ADDED);
    settleAmount(Role.WATER_ADDED);
    settleAmount(Role.VOLUME);
    settleDays();
    settleOneOnly(Role.DATE);
    settleBatch();
    return List.copyOf(uses.values());
  }

  boolean has(Role role) {
    return uses.values().stream().anyMatch(u -> u.role() == role);
  }

  private static ColumnUse use(HeaderCell cell, Role role, String unit, String why) {
    return new ColumnUse(cell.column(), cell.text(), role, unit, why);
  }

  /** The columns of a role; those that a map names shut out all others. */
  private List<HeaderCell> with(Role role) {
    List<HeaderCell> cells =
        header.cells().stream().filter(c -> uses.get(c.column()).role() == role).toList();
    List<HeaderCell> named =
        cells.stream().filter(c -> said.columns().containsKey(c.column())).toList();
    if (named.isEmpty()) {
      return cells;
    }
    cells.stream()
        .filter(c -> !named.contains(c))
        .forEach(c -> change(c, Role.OTHER, "", "the map names another column"));
    return named;
  }

  /** The unit that a map gives for a column, "" when it gives none. */
  private String saidUnit(HeaderCell cell) {
    TableMap.ColumnMap column = said.columns().get(cell.column());
    return column == null ? "" : column.unit();
  }

  private void change(HeaderCell cell, Role role, String unit, String why) {
    uses.put(cell.column(), use(cell, role, unit, why));
  }

  private void doubt(HeaderCell cell, String question) {
    doubts.add(new Doubt(CellAddress.of(header.bottomRow(), cell.column()), question));
  }

  private void settleReading() {
    List<HeaderCell> strong = new ArrayList<>();
    List<HeaderCell> generic = new ArrayList<>();
    List<HeaderCell> last = new ArrayList<>();
    List<HeaderCell> potential = new ArrayList<>();
    for (HeaderCell cell : with(Role.GRAVITY)) {
      Set<Concept> m = cell.meanings();
      (m.contains(Concept.POTENTIAL)
              ? potential
              : m.contains(Concept.FINALGRAVITY)
                  ? last
                  : HeaderJudge.isGeneric(m) ? generic : strong)
          .add(cell);
    }
    List<HeaderCell> corrected = with(Role.OWN_CORRECTED_GRAVITY);
    List<List<HeaderCell>> byStrength = List.of(strong, generic, corrected, last, potential);
    HeaderCell reading = null;
    for (List<HeaderCell> cells : byStrength) {
      if (cells == corrected && reading != null) {
        continue;
      }
      if (reading == null && !cells.isEmpty()) {
        reading = oneOf(cells);
        correctedByHeader = cells == corrected;
      } else {
        cells.forEach(c -> change(c, Role.OTHER, "", "another column is the reading"));
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
    List<HeaderCell> filled = cells.stream().filter(c -> facts(c).numbers() > 0).toList();
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
        settled = false;
        doubt(
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
      change(
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
        if (Math.abs(gravity(a, first) - gravity(b, second)) < SAME_READING) {
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
      return facts(cell).mostlyGravity() ? SugarScale.SG : null;
    }
    return unit.equals(Units.GRAMS_PER_CUBIC_CENTIMETRE) ? null : SugarScale.valueOf(unit);
  }

  private ColumnFacts facts(HeaderCell cell) {
    return facts.computeIfAbsent(cell.column(), c -> ColumnFacts.of(grid, rows, c));
  }

  private void settleScale(HeaderCell cell) {
    if (!saidUnit(cell).isEmpty()) {
      change(cell, Role.GRAVITY, saidUnit(cell), "by the map");
      return;
    }
    Set<Concept> m = cell.meanings();
    ColumnFacts facts = facts(cell);
    String stated = m.contains(Concept.POTENTIAL) ? Concept.POTENTIAL.name() : Units.sugarScale(m);
    if (stated.equals("GL") && m.contains(Concept.GRAVITY) && facts.mostlyGravity()) {
      stated = "KGM3";
    }
    boolean gravities = facts.mostlyGravity();
    if (stated.isEmpty() || stated.equals("SG")) {
      if (gravities || facts.numbers() == 0) {
        change(
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
        change(cell, Role.GRAVITY, "PLATO", "extract in % by mass, by its header and values");
        return;
      }
      askScale(cell, "its values from " + show(facts) + " are no specific gravities");
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
    change(cell, Role.GRAVITY, stated, "by its header");
  }

  private static String show(ColumnFacts facts) {
    return washbook.functions.Numbers.show(facts.min())
        + " to "
        + washbook.functions.Numbers.show(facts.max());
  }

  private void askScale(HeaderCell cell, String because) {
    settled = false;
    change(cell, Role.GRAVITY, "", because);
    doubt(
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

  private void settleTemperature() {
    List<HeaderCell> cells = with(Role.TEMPERATURE);
    List<HeaderCell> filled = cells.stream().filter(c -> hasAny(c)).toList();
    HeaderCell chosen = filled.isEmpty() ? cells.isEmpty() ? null : cells.get(0) : filled.get(0);
    for (HeaderCell cell : cells) {
      String unit = temperatureUnit(cell);
      if (cell == chosen) {
        change(
            cell,
            Role.TEMPERATURE,
            unit,
            statedTemperature(cell).isEmpty() ? "unit by its values" : "by its header");
        if (unit.isEmpty() && facts(cell).numbers() > 0) {
          settled = false;
          doubt(
              cell,
              "Are the temperatures in column "
                  + CellAddress.letters(cell.column())
                  + " ("
                  + cell.text()
                  + ", "
                  + show(facts(cell))
                  + ") in °C or °F? In a map: column "
                  + CellAddress.letters(cell.column())
                  + " = TEMPERATURE in C");
        }
        continue;
      }
      if (filled.contains(cell) && !sameTemperature(chosen, cell)) {
        settled = false;
        doubt(
            cell,
            "Columns "
                + CellAddress.letters(chosen.column())
                + " and "
                + CellAddress.letters(cell.column())
                + " are both temperatures: at which one was read? In a map: column "
                + CellAddress.letters(cell.column())
                + " = OTHER");
      }
      change(cell, Role.OTHER, "", "another column is the temperature");
    }
  }

  private boolean hasAny(HeaderCell cell) {
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      if (grid.kind(row, cell.column()) != Grid.Kind.BLANK) {
        return true;
      }
    }
    return false;
  }

  private boolean sameTemperature(HeaderCell one, HeaderCell other) {
    boolean firstF = temperatureUnit(one).equals("F");
    boolean secondF = temperatureUnit(other).equals("F");
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      double a = ColumnFacts.plainNumber(grid, row, one.column());
      double b = ColumnFacts.plainNumber(grid, row, other.column());
      if (!Double.isNaN(b)
          && !(Math.abs((firstF ? (a - 32) / 1.8 : a) - (secondF ? (b - 32) / 1.8 : b)) <= 0.6)) {
        return false;
      }
    }
    return true;
  }

  private String statedTemperature(HeaderCell cell) {
    if (!saidUnit(cell).isEmpty()) {
      return saidUnit(cell);
    }
    boolean c = cell.meanings().contains(Concept.C);
    boolean f = cell.meanings().contains(Concept.F);
    return c == f ? "" : c ? "C" : "F";
  }

  private String temperatureUnit(HeaderCell cell) {
    String stated = statedTemperature(cell);
    return stated.isEmpty() ? facts(cell).temperatureUnit() : stated;
  }

  private void settleRefractometer() {
    List<HeaderCell> cells = with(Role.REFRACTOMETER);
    for (int i = 0; i < cells.size(); i++) {
      HeaderCell cell = cells.get(i);
      String stated = saidUnit(cell).isEmpty() ? Units.sugarScale(cell.meanings()) : saidUnit(cell);
      boolean percent =
          stated.equals("BRIX")
              || stated.equals("PLATO")
              || stated.equals("BALLING")
              || stated.isEmpty() && !facts(cell).mostlyGravity();
      if (i > 0) {
        change(cell, Role.OTHER, "", "another column is the refractometer's");
      } else if (percent) {
        change(
            cell, Role.REFRACTOMETER, "BRIX", stated.isEmpty() ? "by its values" : "by its header");
      } else {
        change(cell, Role.REFRACTOMETER, stated.isEmpty() ? "SG" : stated, "by its header");
      }
    }
  }

  /**
   * The scale of the log's own corrected gravity: by its header, its values, else the reading's.
   */
  private void settleOwnGravity() {
    String reading =
        uses.values().stream()
            .filter(u -> u.role() == Role.GRAVITY)
            .map(ColumnUse::unit)
            .findFirst()
            .orElse("");
    for (HeaderCell cell : with(Role.OWN_CORRECTED_GRAVITY)) {
      String stated = saidUnit(cell).isEmpty() ? Units.sugarScale(cell.meanings()) : saidUnit(cell);
      String unit = !stated.isEmpty() ? stated : facts(cell).mostlyGravity() ? "SG" : reading;
      change(cell, Role.OWN_CORRECTED_GRAVITY, unit, uses.get(cell.column()).why());
    }
  }

  private void settleAmount(Role role) {
    List<HeaderCell> cells = with(role);
    for (int i = 0; i < cells.size(); i++) {
      HeaderCell cell = cells.get(i);
      if (i > 0) {
        change(cell, Role.OTHER, "", "another column is used");
        continue;
      }
      List<Concept> units =
          role == Role.SUGAR_ADDED
              ? List.of(Concept.KG, Concept.LB, Concept.G)
              : List.of(Concept.ML, Concept.GALUS, Concept.GALUK, Concept.L);
      String unit =
          !saidUnit(cell).isEmpty()
              ? saidUnit(cell)
              : units.stream()
                  .filter(cell.meanings()::contains)
                  .map(Enum::name)
                  .findFirst()
                  .orElse("");
      change(cell, role, unit, unit.isEmpty() ? "its unit is not stated" : "by its header");
    }
  }

  /** A column of days that holds dates is one of dates. */
  private void settleDays() {
    for (HeaderCell cell : with(Role.DAY)) {
      for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
        Grid.Kind kind = grid.kind(row, cell.column());
        if (kind == Grid.Kind.DATE
            || (kind == Grid.Kind.TEXT
                && !Double.isNaN(
                    DateText.serial(grid.text(row, cell.column()), DateText.Order.DAY_FIRST)))) {
          change(cell, Role.DATE, "", "its values are dates");
          break;
        }
      }
    }
  }

  private void settleOneOnly(Role role) {
    List<HeaderCell> cells = with(role);
    for (int i = 1; i < cells.size(); i++) {
      change(cells.get(i), Role.OTHER, "", "another column is used");
    }
  }

  private void settleBatch() {
    List<HeaderCell> cells = with(Role.BATCH);
    HeaderCell chosen =
        cells.stream()
            .filter(c -> c.meanings().contains(Concept.BATCH))
            .findFirst()
            .orElse(cells.isEmpty() ? null : cells.get(0));
    for (HeaderCell cell : cells) {
      if (cell != chosen) {
        change(cell, Role.OTHER, "", "another column names the batch");
      } else if (!cell.meanings().contains(Concept.BATCH)) {
        change(cell, Role.BATCH, "", "the vessel stands for the batch");
      }
    }
  }
}
