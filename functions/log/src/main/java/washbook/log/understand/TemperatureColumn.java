package washbook.log.understand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.MapAnswer;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.layout.GroupAbove;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.layout.TableRows;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.TradeWords;
import washbook.log.words.Vocabulary;

/** Settles which column is the temperature of the readings, and its unit. */
final class TemperatureColumn {
  /** Two columns of one temperature differ by rounding only, °C. */
  private static final double SAME_TEMPERATURE = 0.6;

  private static final Pattern LETTER =
      Pattern.compile("^T[ªº]?(?![\\p{L}\\d])|^t[.°ªº]?$|(?:\\b|\\p{Ll})T[.°ªº]?$");

  private static final Pattern UNIT = Pattern.compile("[°º(\\[/_ ][CF][)\\]]?$|^[°º] ?[CF]\\b");

  /** A number and degrees of what is not said, as {@code 22 Grad}. */
  private static final Pattern IN_DEGREES =
      Pattern.compile(
          "\\d{1,2}([.,]\\d)? ?([\u00b0\u00ba]|(?i:grad|gr|grados|gradi|graus|graden|grade|degrees|deg)\\b)");

  private static final Pattern BOTH = Pattern.compile("\\p{L} ?[/=+&] ?\\p{L}");

  private static final double WARMEST = 45;

  private static final int ROWS_READ = 200;

  private static final int LONGEST_HEADING = 3;

  private final Grid grid;
  private final TableRows rows;
  private final ColumnAssignment columns;
  private final GroupAbove above;

  TemperatureColumn(Grid grid, TableRows rows, ColumnAssignment columns) {
    this.grid = grid;
    this.rows = rows;
    this.columns = columns;
    this.above = new GroupAbove(grid, rows);
  }

  void settle() {
    columns.takeOnlyNamed(Role.TEMPERATURE);
    if (!columns.has(Role.TEMPERATURE)) {
      byLetterAndValues();
    }
    ofSamples().forEach(c -> columns.change(c, Role.TEMPERATURE, "", Message.of("col.header")));
    List<HeaderCell> cells = columns.with(Role.TEMPERATURE);
    List<HeaderCell> filled = cells.stream().filter(c -> hasAny(c)).toList();
    filled = onlyOne(filled, c -> c.meanings().contains(Concept.SAMPLE));
    filled = onlyOne(filled, c -> isOfTheWash(c.text()));
    filled = onlyOne(filled, c -> isOfTheWash(above.group(c)));
    HeaderCell chosen = filled.isEmpty() ? cells.isEmpty() ? null : cells.get(0) : filled.get(0);
    for (HeaderCell cell : cells) {
      Optional<TemperatureUnit> unit = temperatureUnit(cell);
      if (cell == chosen) {
        columns.change(
            cell,
            Role.TEMPERATURE,
            unit.map(TemperatureUnit::name).orElse(""),
            Message.of(statedTemperature(cell).isEmpty() ? "col.unitByValues" : "col.header"));
        if (unit.isEmpty() && columns.facts(cell).numbers() > 0) {
          columns.unsettle();
          columns.doubt(
              cell,
              Message.of(
                  "ask.columnDegrees",
                  CellAddress.letters(cell.column()),
                  cell.text(),
                  columns.facts(cell).range()),
              MapAnswer.of(MapPrinter.column(cell.column()) + " = TEMPERATURE in C"),
              MapAnswer.of(MapPrinter.column(cell.column()) + " = TEMPERATURE in F"));
        }
        continue;
      }
      if (filled.contains(cell) && !sameTemperature(chosen, cell)) {
        columns.unsettle();
        columns.doubt(
            cell,
            Message.of(
                "ask.twoTemperatures",
                CellAddress.letters(chosen.column()),
                CellAddress.letters(cell.column())),
            MapAnswer.of(MapPrinter.column(cell.column()) + " = OTHER"),
            MapAnswer.of(MapPrinter.column(chosen.column()) + " = OTHER"));
      }
      columns.change(cell, Role.OTHER, "", Message.of("col.otherTemperature"));
    }
  }

  private static List<HeaderCell> onlyOne(List<HeaderCell> cells, Predicate<HeaderCell> which) {
    List<HeaderCell> found = cells.stream().filter(which).toList();
    return found.size() == 1 ? found : cells;
  }

  private static boolean isOfTheWash(String text) {
    return TradeWords.in(text).contains(TradeWords.Side.FERMENT);
  }

  /** Such as {@code T sample (C)}: the one that counts, also where another is called in full. */
  private List<HeaderCell> ofSamples() {
    return columns.with(Role.OTHER).stream()
        .filter(c -> !columns.isSaid(c) && c.meanings().contains(Concept.SAMPLE))
        .filter(c -> LETTER.matcher(c.text()).find() && !statedTemperature(c).isEmpty())
        .filter(this::canBeFerments)
        .toList();
  }

  /**
   * A header with a T of its own, as {@code T mosto}, or with a unit of temperature that its words
   * leave open, as {@code How warm (F)}, where the values can be temperatures of a ferment.
   */
  private void byLetterAndValues() {
    List<HeaderCell> open = new ArrayList<>(columns.with(Role.OTHER));
    columns.with(Role.BATCH).stream()
        .filter(c -> UNIT.matcher(c.text()).find() || LETTER.matcher(c.text()).find())
        .forEach(open::add);
    List<HeaderCell> found =
        open.stream()
            .filter(c -> !columns.isSaid(c) && !isOfTheRoom(c))
            .filter(
                c ->
                    LETTER.matcher(c.text()).find()
                        || UNIT.matcher(c.text()).find()
                        || isOfTheWash(c.text()) && isInGroupOfTemperatures(c))
            .filter(this::canBeFerments)
            .toList();
    if (!found.isEmpty()) {
      found.forEach(c -> columns.change(c, Role.TEMPERATURE, "", Message.of("col.headerValues")));
    } else {
      columns.with(Role.OTHER).stream()
          .filter(c -> !columns.isSaid(c) && !isOfTheRoom(c))
          .filter(this::holdsDegrees)
          .findFirst()
          .ifPresent(c -> columns.change(c, Role.TEMPERATURE, "", Message.of("col.temperatures")));
    }
  }

  /** Whether it is the room's and not the wash's too, as in {@code cellar = must}. */
  private static boolean isOfTheRoom(HeaderCell cell) {
    boolean both =
        BOTH.matcher(cell.text()).find()
            && TradeWords.in(cell.text()).contains(TradeWords.Side.FERMENT);
    return cell.meanings().contains(Concept.AMBIENT) && !both;
  }

  /** Whether a short heading right of the reading says that the columns below are temperatures. */
  private boolean isInGroupOfTemperatures(HeaderCell cell) {
    int reading =
        columns.with(Role.GRAVITY).stream()
            .mapToInt(HeaderCell::column)
            .filter(c -> c < cell.column())
            .max()
            .orElse(-1);
    String group = above.group(cell, reading);
    return cell.text().strip().split("\\s+").length == 1
        && group.split("\\s+").length <= LONGEST_HEADING
        && Vocabulary.meanings(group).contains(Concept.TEMPERATURE);
  }

  /** Whether most cells hold a number with a unit of temperature, as {@code 70F}. */
  private boolean holdsDegrees(HeaderCell cell) {
    int texts = 0;
    int degrees = 0;
    int bareNumbers = 0;
    int last = Math.min(rows.lastRow(), rows.firstRow() + ROWS_READ);
    for (int row = rows.firstRow(); row <= last; row++) {
      if (grid.kind(row, cell.column()) != Grid.Kind.BLANK) {
        texts++;
        boolean text = grid.kind(row, cell.column()) == Grid.Kind.TEXT;
        String shown = text ? grid.text(row, cell.column()).strip() : "";
        boolean temperature =
            CellText.read(shown).form == CellText.Form.TEMPERATURE
                || cell.meanings().isEmpty() && IN_DEGREES.matcher(shown).lookingAt();
        degrees += text && temperature ? 1 : 0;
        double bare = CellText.plainNumber(grid, row, cell.column());
        bareNumbers += bare >= 0 && bare <= WARMEST ? 1 : 0;
      }
    }
    return degrees >= 3 && degrees + bareNumbers >= 0.6 * texts;
  }

  private boolean canBeFerments(HeaderCell cell) {
    ColumnValues values = columns.facts(cell);
    boolean celsius = values.min() >= 0 && values.max() <= WARMEST;
    boolean fahrenheit = values.min() >= 40 && values.max() <= 113;
    return values.numbers() > 0 && values.max() > 5 && (celsius || fahrenheit);
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
    TemperatureUnit first = temperatureUnit(one).orElse(TemperatureUnit.C);
    TemperatureUnit second = temperatureUnit(other).orElse(TemperatureUnit.C);
    for (int row = rows.firstRow(); row <= rows.lastRow(); row++) {
      double a = CellText.plainNumber(grid, row, one.column());
      double b = CellText.plainNumber(grid, row, other.column());
      if (!Double.isNaN(b)
          && !(Math.abs(first.toCelsius(a) - second.toCelsius(b)) <= SAME_TEMPERATURE)) {
        return false;
      }
    }
    return true;
  }

  private Optional<TemperatureUnit> statedTemperature(HeaderCell cell) {
    if (!columns.saidUnit(cell).isEmpty()) {
      return Optional.of(TemperatureUnit.valueOf(columns.saidUnit(cell)));
    }
    boolean c = cell.meanings().contains(Concept.C);
    boolean f = cell.meanings().contains(Concept.F);
    return c == f ? Optional.empty() : Optional.of(c ? TemperatureUnit.C : TemperatureUnit.F);
  }

  private static Optional<TemperatureUnit> bareUnit(HeaderCell cell) {
    Matcher unit = UNIT.matcher(cell.text());
    return unit.find()
        ? Optional.of(TemperatureUnit.valueOf(unit.group().replaceAll("[^CF]", "")))
        : Optional.empty();
  }

  private Optional<TemperatureUnit> temperatureUnit(HeaderCell cell) {
    return statedTemperature(cell)
        .or(() -> bareUnit(cell))
        .or(() -> columns.facts(cell).temperatureUnit());
  }
}
