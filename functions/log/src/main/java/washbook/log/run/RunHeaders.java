package washbook.log.run;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import washbook.log.ComputedHeaders;
import washbook.log.sheet.Grid;
import washbook.log.words.Concept;
import washbook.log.words.Vocabulary;

/** Finds rows that can head a table of jars: a volume and a strength among them. */
final class RunHeaders {
  /** Runs are short and stand near the top of a sheet. */
  private static final int MOST_ROWS = 5000;

  private static final int MOST_COLUMNS = 60;

  /** Rows of values with their units that show columns without a header. */
  private static final int FEWEST_WITHOUT_HEADER = 4;

  private static final int LONGEST_UNIT = 10;
  private static final int LONGEST_BELOW = 20;

  /** Rows that show the units in the cells of a column. */
  private static final int ROWS_OF_UNITS = 12;

  /** What stands in the second row of a header. */
  private static final Set<RunWord> UNITS =
      EnumSet.of(
          RunWord.C,
          RunWord.F,
          RunWord.STRENGTH,
          RunWord.PROOF,
          RunWord.ML,
          RunWord.CL,
          RunWord.DL,
          RunWord.L,
          RunWord.GALLON,
          RunWord.READ,
          RunWord.CORRECTED,
          RunWord.SPIRIT,
          RunWord.HEAD,
          RunWord.CUMULATIVE);

  /** Temperatures that tell of what by their values. */
  private static final Pattern NUMBERED = Pattern.compile("[Tt](?:emp)?\\.?\\s?[12]");

  private static final Pattern NUMBER = Pattern.compile("[~<>≈+\\-−]?\\s*\\d.*");
  private static final Pattern VOLUME =
      Pattern.compile("(?i)~?\\s*\\d+([.,]\\d+)?\\s*(ml|cl|dl|l|liter|litres?)\\.?");
  private static final Pattern STRENGTH =
      Pattern.compile("(?i)~?\\s*\\d+([.,]\\d+)?\\s*(%.{0,12}|vol\\.?-?\\s?%)");
  private static final Pattern TEMPERATURE =
      Pattern.compile(
          "(?i)~?\\s*\\d+([.,]\\d+)?\\s*(°\\s*[cf]?|grad|deg|degrees|graden|grados|º ?c?)");

  private final Grid grid;

  RunHeaders(Grid grid) {
    this.grid = grid;
  }

  List<RunHeader> find() {
    List<RunHeader> found = new ArrayList<>();
    int rows = Math.min(grid.rowCount(), MOST_ROWS);
    for (int row = 0; row < rows; row++) {
      List<RunHeader.Cell> cells = cells(row);
      if (cells.size() >= 2) {
        for (List<RunHeader.Cell> group : groups(bottom(row), cells)) {
          if (isOne(group)) {
            found.add(new RunHeader(row, bottom(row), withBlankHeaders(row, cells, group), false));
          }
        }
        if (!found.isEmpty()) {
          row = Math.max(row, found.get(found.size() - 1).bottomRow());
        }
      }
    }
    if (found.isEmpty()) {
      withoutHeader(rows, found);
    }
    return found;
  }

  /** With the columns between and beside them that have no header but cells in rows below. */
  private List<RunHeader.Cell> withBlankHeaders(
      int row, List<RunHeader.Cell> all, List<RunHeader.Cell> group) {
    Map<Integer, RunHeader.Cell> byColumn = new TreeMap<>();
    group.forEach(cell -> byColumn.put(cell.column(), cell));
    int first = group.get(0).column();
    int last = group.get(group.size() - 1).column();
    ComputedHeaders ours = ComputedHeaders.in(grid, row);
    for (int column = Math.max(0, first - 1); column <= last + 1; column++) {
      int at = column;
      boolean isHeaded = all.stream().anyMatch(cell -> cell.column() == at);
      if (!isHeaded && ours.at(column).isEmpty() && isUsedBelow(bottom(row), column)) {
        byColumn.put(column, new RunHeader.Cell(column, "", EnumSet.noneOf(RunWord.class)));
      }
    }
    return List.copyOf(byColumn.values());
  }

  private boolean isUsedBelow(int row, int column) {
    int used = 0;
    for (int below = row + 1; below <= row + 4; below++) {
      boolean inside = below < grid.rowCount() && column < grid.columnsUsed(below);
      used += inside && grid.kind(below, column) != Grid.Kind.BLANK ? 1 : 0;
    }
    return used >= 1;
  }

  private static boolean isOne(List<RunHeader.Cell> cells) {
    return cells.stream().anyMatch(RunHeader.Cell::isVolume)
        && cells.stream().anyMatch(RunHeader.Cell::isStrength)
        && cells.stream().noneMatch(RunHeaders::isGravity);
  }

  /** A sugar scale makes a table a ferment's or something else; a run has none. */
  private static boolean isGravity(RunHeader.Cell cell) {
    Set<Concept> meanings = EnumSet.noneOf(Concept.class);
    meanings.addAll(Vocabulary.meanings(cell.text()));
    boolean gravity = meanings.contains(Concept.GRAVITY) || meanings.contains(Concept.EXTRACT);
    meanings.retainAll(Concept.SUGAR_SCALES);
    return gravity || !meanings.isEmpty();
  }

  /** The texts of a row that holds no number, with the units below them. */
  private List<RunHeader.Cell> cells(int row) {
    int columns = Math.min(grid.columnsUsed(row), MOST_COLUMNS);
    int texts = 0;
    for (int column = 0; column < columns; column++) {
      Grid.Kind kind = grid.kind(row, column);
      if (kind == Grid.Kind.TEXT) {
        String text = grid.text(row, column);
        if (NUMBER.matcher(text.strip()).matches()) {
          return List.of();
        }
        texts++;
      } else if (kind != Grid.Kind.BLANK) {
        return List.of();
      }
    }
    if (texts < 2) {
      return List.of();
    }
    ComputedHeaders ours = ComputedHeaders.in(grid, row);
    boolean units = bottom(row) > row;
    if (units && isLineOver(row)) {
      return List.of();
    }
    List<RunHeader.Cell> cells = new ArrayList<>();
    for (int column = 0; column < columns; column++) {
      String own = grid.text(row, column).strip();
      String below = units ? grid.text(row + 1, column).strip() : "";
      String text = below.isEmpty() ? own : (over(row, column) + " " + below).strip();
      if (!text.isEmpty() && ours.at(column).isEmpty()) {
        cells.add(RunHeader.Cell.of(column, text));
      }
    }
    withNumberedTemperatures(cells);
    return isOne(cells) ? cells : withUnitsBelow(bottom(row) + 1, cells);
  }

  /** T1 and T2 are temperatures where no other column is one. */
  private static void withNumberedTemperatures(List<RunHeader.Cell> cells) {
    boolean two = cells.stream().filter(c -> NUMBERED.matcher(c.text()).matches()).count() == 2;
    if (!two || cells.stream().anyMatch(RunHeader.Cell::isTemperature)) {
      return;
    }
    for (int i = 0; i < cells.size(); i++) {
      RunHeader.Cell cell = cells.get(i);
      if (NUMBERED.matcher(cell.text()).matches()) {
        Set<RunWord> words = EnumSet.of(RunWord.TEMPERATURE);
        words.addAll(cell.words());
        cells.set(i, new RunHeader.Cell(cell.column(), cell.text(), words));
      }
    }
  }

  /** The same cells, told by the units that stand in the cells below where no word tells them. */
  private List<RunHeader.Cell> withUnitsBelow(int first, List<RunHeader.Cell> cells) {
    List<RunHeader.Cell> told = new ArrayList<>();
    for (RunHeader.Cell cell : cells) {
      boolean known = cell.isTemperature() || cell.isVolume() || cell.isStrength();
      Set<RunWord> words = EnumSet.noneOf(RunWord.class);
      words.addAll(cell.words());
      if (!known && isMostly(first, cell.column(), VOLUME)) {
        words.add(RunWord.VOLUME);
      } else if (!known && isMostly(first, cell.column(), STRENGTH)) {
        words.add(RunWord.STRENGTH);
      }
      told.add(new RunHeader.Cell(cell.column(), cell.text(), words));
    }
    return told;
  }

  /** Whether most of the next cells of a column are figures with a unit. */
  private boolean isMostly(int first, int column, Pattern figure) {
    int with = 0;
    int filled = 0;
    for (int row = first; row < Math.min(first + ROWS_OF_UNITS, grid.rowCount()); row++) {
      boolean text = grid.kind(row, column) == Grid.Kind.TEXT;
      filled += grid.kind(row, column) == Grid.Kind.BLANK ? 0 : 1;
      with += text && figure.matcher(grid.text(row, column).strip()).matches() ? 1 : 0;
    }
    return with >= FEWEST_WITHOUT_HEADER && with * 2 > filled;
  }

  /** The second row of a header with units and the like below a row of texts, else the row. */
  private int bottom(int row) {
    int units = 0;
    boolean plain = true;
    int columns = row + 1 < grid.rowCount() ? Math.min(grid.columnsUsed(row + 1), MOST_COLUMNS) : 0;
    for (int column = 0; column < columns; column++) {
      String text = grid.text(row + 1, column).strip();
      if (grid.kind(row + 1, column) == Grid.Kind.BLANK) {
        continue;
      }
      boolean isText = grid.kind(row + 1, column) == Grid.Kind.TEXT;
      if (!isText || text.length() > LONGEST_BELOW || NUMBER.matcher(text).matches()) {
        return row;
      }
      Set<RunWord> words = RunWords.in(text);
      boolean unit = UNITS.stream().anyMatch(words::contains);
      units += unit ? 1 : 0;
      plain &= unit && text.length() <= LONGEST_UNIT;
    }
    return units >= 2 && (plain || hasFiguresBelow(row + 2)) ? row + 1 : row;
  }

  /** Whether a row is a line with figures, over a longer one that can head a table alone. */
  private boolean isLineOver(int row) {
    boolean digits = false;
    int over = 0;
    int under = 0;
    List<RunHeader.Cell> below = new ArrayList<>();
    for (int column = 0; column < Math.min(grid.columnsUsed(row + 1), MOST_COLUMNS); column++) {
      String text = grid.text(row, column).strip();
      digits |= text.matches(".*\\d.*");
      over += text.isEmpty() ? 0 : 1;
      below.add(RunHeader.Cell.of(column, grid.text(row + 1, column).strip()));
      under += grid.text(row + 1, column).isBlank() ? 0 : 1;
    }
    return digits && over * 2 < under && isOne(below);
  }

  /** Whether figures follow soon, a line with the name of a cut between. */
  private boolean hasFiguresBelow(int first) {
    for (int row = first; row < Math.min(first + 2, grid.rowCount()); row++) {
      int numbers = 0;
      for (int column = 0; column < Math.min(grid.columnsUsed(row), MOST_COLUMNS); column++) {
        numbers += Double.isNaN(RunCells.number(grid, row, column)) ? 0 : 1;
      }
      if (numbers >= 2) {
        return true;
      }
    }
    return false;
  }

  /** The text over a cell of the second row, which may stretch over several temperatures. */
  private String over(int row, int column) {
    int at = column;
    while (at > 0 && grid.kind(row, at) == Grid.Kind.BLANK) {
      at--;
    }
    String text = grid.text(row, at).strip();
    return at == column || RunWords.in(text).contains(RunWord.TEMPERATURE) ? text : "";
  }

  /** Whether a cell is the first one of a table once more, with no blank column between. */
  private boolean isRepeated(int row, List<RunHeader.Cell> part, RunHeader.Cell cell) {
    String text = grid.text(row, cell.column()).strip();
    return part.size() >= 3
        && isOne(part)
        && !text.isEmpty()
        && text.equalsIgnoreCase(grid.text(row, part.get(0).column()).strip());
  }

  /** Tables side by side: where volume and strength come again. */
  private List<List<RunHeader.Cell>> groups(int row, List<RunHeader.Cell> cells) {
    List<List<RunHeader.Cell>> parts = new ArrayList<>();
    List<RunHeader.Cell> part = new ArrayList<>();
    for (RunHeader.Cell cell : cells) {
      boolean gap = !part.isEmpty() && cell.column() > part.get(part.size() - 1).column() + 1;
      if (gap || isRepeated(row, part, cell)) {
        parts.add(part);
        part = new ArrayList<>();
      }
      part.add(cell);
    }
    parts.add(part);
    List<List<RunHeader.Cell>> groups = new ArrayList<>();
    List<RunHeader.Cell> group = new ArrayList<>();
    for (List<RunHeader.Cell> next : parts) {
      if (!group.isEmpty() && isOne(group) && isOne(next)) {
        groups.add(group);
        group = new ArrayList<>();
      }
      group.addAll(next);
    }
    groups.add(group);
    return groups;
  }

  private void withoutHeader(int rows, List<RunHeader> found) {
    int first = -1;
    int jars = 0;
    for (int row = 0; row <= rows; row++) {
      boolean filled = row < rows && column(row, VOLUME) >= 0;
      jars += filled && column(row, STRENGTH) >= 0 ? 1 : 0;
      if (filled && first < 0) {
        first = row;
      } else if (!filled && first >= 0) {
        if (jars >= FEWEST_WITHOUT_HEADER && first > 0) {
          found.add(missing(first));
        }
        first = -1;
        jars = 0;
      }
    }
  }

  private RunHeader missing(int first) {
    int volume = column(first, VOLUME);
    int strength = column(first, STRENGTH);
    int temperature = column(first, TEMPERATURE);
    List<RunHeader.Cell> cells = new ArrayList<>();
    int columns = Math.min(grid.columnsUsed(first), MOST_COLUMNS);
    for (int column = 0; column < columns; column++) {
      Set<RunWord> words = EnumSet.noneOf(RunWord.class);
      if (column == volume) {
        words.add(RunWord.VOLUME);
        words.addAll(RunWords.in(grid.text(first, column).replaceAll("[\\d.,~ ]", "")));
      } else if (column == strength) {
        words.add(RunWord.STRENGTH);
      } else if (column == temperature) {
        words.add(RunWord.TEMPERATURE);
      }
      if (grid.kind(first, column) != Grid.Kind.BLANK) {
        cells.add(new RunHeader.Cell(column, "", words));
      }
    }
    return new RunHeader(first - 1, first - 1, List.copyOf(cells), true);
  }

  private int column(int row, Pattern pattern) {
    int columns = Math.min(grid.columnsUsed(row), MOST_COLUMNS);
    for (int column = 0; column < columns; column++) {
      if (grid.kind(row, column) == Grid.Kind.TEXT
          && pattern.matcher(grid.text(row, column).strip()).matches()) {
        return column;
      }
    }
    return -1;
  }
}
