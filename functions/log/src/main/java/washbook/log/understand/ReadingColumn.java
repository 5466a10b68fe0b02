package washbook.log.understand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.layout.HeaderRoles;
import washbook.log.layout.KeyLine;
import washbook.log.layout.Replicates;
import washbook.log.layout.TableRows;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Statement;

/** Settles which column is the reading, and its scale. */
final class ReadingColumn {
  /** One reading on two scales: rounding explains so much, SG. */
  private static final double SAME_READING = 0.0015;

  /** One reading written twice on one scale, SG. */
  private static final double SAME_FIGURE = 0.0002;

  private static final Pattern RELATIVE =
      Pattern.compile("(15|20|25|59|60|68)\\s?[\u00b0\u00ba]?[CF]?\\s?[/_]\\s?\\1(?!\\d)");

  /** Readings whose digits are looked at. */
  private static final int LOOKED_AT = 200;

  private final Grid grid;
  private final TableRows rows;
  private static final Pattern DEGREES_B = Pattern.compile("^[\u00b0\u00ba] ?B\\.?$");

  /** No must of fruit is heavier on the scale of Baum\u00e9. */
  private static final double MOST_BAUME = 18;

  private final ColumnAssignment columns;

  /** Whether the header of the reading says that it is corrected already. */
  boolean correctedByHeader;

  /** A temperature in the header of the reading, °C, NaN for none. */
  double temperatureByHeader = Double.NaN;

  /** The instrument's calibration where the header of the reading states it, °C, else NaN. */
  double calibrationByHeader = Double.NaN;

  private List<KeyLine> lines = List.of();

  private String ofReplicates = "";

  ReadingColumn(Grid grid, TableRows rows, ColumnAssignment columns) {
    this.grid = grid;
    this.rows = rows;
    this.columns = columns;
  }

  /**
   * @param lines what is said above the table
   */
  void settle(List<KeyLine> lines) {
    this.lines = lines;
    List<HeaderCell> strong = new ArrayList<>();
    List<HeaderCell> generic = new ArrayList<>();
    List<HeaderCell> last = new ArrayList<>();
    List<HeaderCell> potential = new ArrayList<>();
    columns.takeOnlyNamed(Role.GRAVITY);
    columns.takeOnlyNamed(Role.OWN_CORRECTED_GRAVITY);
    for (HeaderCell cell : columns.with(Role.GRAVITY)) {
      Set<Concept> m = cell.meanings();
      (m.contains(Concept.POTENTIAL)
              ? potential
              : m.contains(Concept.FINALGRAVITY)
                  ? last
                  : HeaderRoles.isGeneric(m) ? generic : strong)
          .add(cell);
    }
    generic.removeIf(cell -> countsReadings(cell) || isWords(cell));
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
        cells.forEach(c -> columns.change(c, Role.OTHER, "", Message.of("col.otherReading")));
      }
    }
    if (reading != null) {
      settleScale(reading);
      double celsius = Statement.temperatureIn(said(reading));
      if (reading.meanings().contains(Concept.CALIBRATION)
          || reading.meanings().contains(Concept.HYDROMETER)
          || !Double.isNaN(Statement.referenceIn(said(reading)))) {
        calibrationByHeader = celsius;
      } else {
        temperatureByHeader = celsius;
      }
    }
  }

  /** A column called measured, or the like, that says who has: none has a figure. */
  private boolean isWords(HeaderCell cell) {
    if (columns.isSaid(cell) || !ColumnValues.areWords(grid, rows, cell.column())) {
      return false;
    }
    columns.change(cell, Role.OTHER, "", Message.of("col.other"));
    return true;
  }

  /** A column called reading that only counts the readings: 1, 2, 3. */
  private boolean countsReadings(HeaderCell cell) {
    if (columns.isSaid(cell) || !ColumnValues.areRunning(grid, rows, cell.column())) {
      return false;
    }
    columns.change(cell, Role.OTHER, "", Message.of("col.running"));
    return true;
  }

  /** The column that is the reading where several could be. */
  private HeaderCell oneOf(List<HeaderCell> cells) {
    List<HeaderCell> filled = cells.stream().filter(c -> columns.facts(c).numbers() > 0).toList();
    if (filled.size() > 1) {
      List<HeaderCell> raw =
          filled.stream().filter(c -> c.meanings().contains(Concept.UNCORRECTED)).toList();
      List<HeaderCell> hydrometer =
          filled.stream().filter(c -> c.meanings().contains(Concept.HYDROMETER)).toList();
      List<HeaderCell> densities =
          filled.stream().filter(c -> !c.meanings().contains(Concept.GL)).toList();
      boolean besideSugar =
          densities.size() == 1 && columns.facts(densities.get(0)).mostlyGravity();
      filled =
          raw.size() == 1
              ? raw
              : hydrometer.size() == 1 ? hydrometer : besideSugar ? densities : filled;
    }
    HeaderCell first = filled.isEmpty() ? cells.get(0) : filled.get(0);
    Optional<HeaderCell> mean =
        new Replicates(grid, rows).mean(filled, columns.with(Role.OTHER)).filter(c -> !isAnySaid());
    HeaderCell chosen = mean.orElseGet(() -> fullest(first, cells));
    ofReplicates = mean.isEmpty() ? "" : first.text();
    List<HeaderCell> differing =
        filled.stream()
            .filter(other -> mean.isEmpty() && other != chosen && !agree(chosen, other))
            .toList();
    if (!differing.isEmpty()) {
      askWhich(chosen, differing);
    }
    for (HeaderCell other : cells) {
      if (other.column() == chosen.column()) {
        continue;
      }
      columns.change(
          other,
          Role.OTHER,
          "",
          Message.of("col.readingFrom", CellAddress.letters(chosen.column())));
    }
    return chosen;
  }

  private boolean isAnySaid() {
    return columns.with(Role.GRAVITY).stream().anyMatch(columns::isSaid);
  }

  /** Of columns that hold the same on several scales the one that is read in the most rows. */
  private HeaderCell fullest(HeaderCell first, List<HeaderCell> cells) {
    HeaderCell fullest = first;
    for (HeaderCell cell : cells) {
      if (columns.facts(cell).numbers() > columns.facts(fullest).numbers() + 1
          && agree(first, cell)) {
        fullest = cell;
      }
    }
    return fullest;
  }

  /** Asks once about all columns that could be the reading: one of them, or a vessel each. */
  private void askWhich(HeaderCell chosen, List<HeaderCell> differing) {
    List<HeaderCell> all = new ArrayList<>(List.of(chosen));
    all.addAll(differing);
    boolean alike = differing.stream().allMatch(other -> chosen.text().equals(other.text()));
    List<MapAnswer> answers = new ArrayList<>();
    for (HeaderCell one : all) {
      answers.add(each(all, cell -> cell == one ? "GRAVITY" : "OTHER"));
    }
    answers.add(each(all, cell -> "GRAVITY"));
    answers.add(each(all, cell -> cell == chosen && !alike ? "GRAVITY" : "REFRACTOMETER"));
    columns.unsettle();
    columns.doubt(
        differing.get(0),
        Message.of(
            all.size() == 2 ? "ask.twoReadings" : "ask.severalReadings",
            letters(all.subList(0, all.size() - 1)),
            letters(all.subList(all.size() - 1, all.size()))),
        answers.toArray(MapAnswer[]::new));
  }

  private static String letters(List<HeaderCell> cells) {
    return cells.stream()
        .map(cell -> CellAddress.letters(cell.column()))
        .collect(Collectors.joining(", "));
  }

  private static MapAnswer each(List<HeaderCell> cells, Function<HeaderCell, String> use) {
    return MapAnswer.of(
        cells.stream()
            .map(cell -> MapPrinter.column(cell.column()) + " = " + use.apply(cell))
            .toArray(String[]::new));
  }

  private boolean agree(HeaderCell one, HeaderCell other) {
    Optional<ReadingScale> first = scale(one);
    Optional<ReadingScale> second = scale(other);
    if (first.isEmpty() || second.isEmpty()) {
      return false;
    }
    int both = 0;
    int same = 0;
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      double a = CellText.plainNumber(grid, row, one.column());
      double b = CellText.plainNumber(grid, row, other.column());
      if (!Double.isNaN(a) && !Double.isNaN(b)) {
        both++;
        double most = first.equals(second) ? SAME_FIGURE : SAME_READING;
        if (Math.abs(first.get().toGravity(a) - second.get().toGravity(b)) < most) {
          same++;
        }
      }
    }
    return both > 0 && same == both;
  }

  private Optional<ReadingScale> scale(HeaderCell cell) {
    Optional<ReadingScale> stated = ReadingScale.in(cell.meanings());
    return stated.isPresent() || !columns.facts(cell).mostlyGravity()
        ? stated
        : Optional.of(ReadingScale.SG);
  }

  private void settleScale(HeaderCell cell) {
    if (!columns.saidUnit(cell).isEmpty()) {
      columns.change(cell, Role.GRAVITY, columns.saidUnit(cell), Message.of("col.map"));
      return;
    }
    Set<Concept> m = cell.meanings();
    ColumnValues facts = columns.facts(cell);
    ReadingScale stated =
        m.contains(Concept.POTENTIAL) ? ReadingScale.POTENTIAL : ReadingScale.in(m).orElse(null);
    if (stated == ReadingScale.GL && m.contains(Concept.GRAVITY) && facts.mostlyGravity()) {
      stated = ReadingScale.KGM3;
    }
    boolean gravities = facts.mostlyGravity();
    if (stated == null) {
      Optional<ReadingScale> above =
          ScaleAbove.of(lines)
              .or(() -> ScaleAbove.inTexts(grid, rows.firstRow() - 1))
              .filter(s -> ScaleAbove.fits(s, facts));
      if (above.isPresent()) {
        columns.change(cell, Role.GRAVITY, above.get().name(), Message.of("col.above"));
        return;
      }
    }
    if (stated == null || stated == ReadingScale.SG) {
      if (gravities || facts.numbers() == 0) {
        columns.change(
            cell, Role.GRAVITY, "SG", Message.of(stated == null ? "col.gravities" : "col.header"));
        return;
      }
      if (stated == null
          && (m.contains(Concept.EXTRACT)
              || m.contains(Concept.PERCENT) && HeaderRoles.role(m) == Role.GRAVITY)
          && facts.min() > -6
          && facts.max() < 45) {
        columns.change(cell, Role.GRAVITY, "PLATO", Message.of("col.extract"));
        return;
      }
      if (m.contains(Concept.DEGREES) && m.contains(Concept.GRAVITY) && onlyPoints(facts)) {
        columns.change(cell, Role.GRAVITY, "POINTS", Message.of("col.points"));
        return;
      }
      if (DEGREES_B.matcher(cell.text()).find() && facts.max() > MOST_BAUME && facts.max() < 45) {
        columns.change(cell, Role.GRAVITY, "BRIX", Message.of("col.degreesB"));
        return;
      }
      askScale(cell, Message.of("because.notGravities", facts.range()));
      return;
    }
    boolean density = stated == ReadingScale.KGM3;
    boolean grams = stated == ReadingScale.GCM3;
    if (facts.allGravity() && facts.numbers() > 2 && !density && !grams) {
      askScale(cell, Message.of("because.looksSg", stated));
      return;
    }
    if ((density && facts.max() < 10) || (grams && facts.max() > 10)) {
      askScale(cell, Message.of("because.notThat", stated));
      return;
    }
    columns.change(cell, Role.GRAVITY, stated.name(), Message.of("col.header"));
  }

  /**
   * Whether no other scale of sugar reaches so high: 1.190 is 43 \u00b0Bx, 24 \u00b0B\u00e9, 38
   * \u00b0Tw.
   */
  private static boolean onlyPoints(ColumnValues facts) {
    return facts.max() > 45 && facts.max() <= 190 && facts.min() >= -20;
  }

  private void askScale(HeaderCell cell, Message because) {
    columns.unsettle();
    columns.change(cell, Role.GRAVITY, "", because);
    columns.doubt(
        cell,
        Message.of("ask.scale", CellAddress.letters(cell.column()), cell.text(), because),
        scales(cell));
  }

  /** The scales that the values can stand on; one as an example where none of the usual fits. */
  private MapAnswer[] scales(HeaderCell cell) {
    List<MapAnswer> fitting = new ArrayList<>();
    for (ReadingScale scale : ScaleAbove.fitting(columns.facts(cell))) {
      fitting.add(MapAnswer.of(MapPrinter.column(cell.column()) + " = GRAVITY in " + scale.name()));
      if (scale == ReadingScale.BRIX) {
        fitting.add(MapAnswer.of(MapPrinter.column(cell.column()) + " = REFRACTOMETER in BRIX"));
      }
    }
    return fitting.isEmpty()
        ? new MapAnswer[] {MapAnswer.like(MapPrinter.column(cell.column()) + " = GRAVITY in BRIX")}
        : fitting.toArray(MapAnswer[]::new);
  }

  /** What the header of the reading says; that of a mean also what those of its readings say. */
  private String said(HeaderCell cell) {
    return cell.text() + " " + ofReplicates;
  }

  /** A temperature in the header beside a temperature column: which of the two holds is asked. */
  void settleStatedTemperature() {
    if (correctedByHeader || columns.isCorrectionSaid() || !columns.has(Role.TEMPERATURE)) {
      return;
    }
    for (HeaderCell cell : columns.with(Role.GRAVITY)) {
      boolean stated = !Double.isNaN(temperatureByHeader) || isOfAMeter(cell);
      if (stated && !columns.isSaid(cell)) {
        columns.unsettle();
        columns.doubt(
            cell,
            Message.of("ask.corrected", Message.of("quoted", cell.text())),
            MapAnswer.of("corrected = yes"),
            MapAnswer.of("corrected = no"));
      }
    }
  }

  /**
   * Whether a density relative to water, as 20/20, has digits that nobody reads off a hydrometer:
   * the meter that gives them may have allowed for the temperature.
   */
  private boolean isOfAMeter(HeaderCell cell) {
    if (!RELATIVE.matcher(said(cell)).find()) {
      return false;
    }
    int fine = 0;
    int numbers = 0;
    for (int row = rows.firstRow(); row <= rows.lastRow() && numbers < LOOKED_AT; row++) {
      double value = CellText.number(grid, row, cell.column());
      if (!Double.isNaN(value)) {
        numbers++;
        fine += Math.round(value * 1e4) % 5 != 0 ? 1 : 0;
      }
    }
    return 2 * fine > numbers;
  }
}
