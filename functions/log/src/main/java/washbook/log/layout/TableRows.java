package washbook.log.layout;

import java.util.BitSet;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import washbook.log.PassedOver;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.BatchNameText;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.DateText;
import washbook.log.words.Vocabulary;

/** The rows below one header: where the table ends, and which rows are no readings. */
public final class TableRows {
  private static final Set<Role> READINGS =
      EnumSet.of(Role.GRAVITY, Role.REFRACTOMETER, Role.OWN_CORRECTED_GRAVITY);

  /** More words are a sentence. */
  private static final int WORDS_OF_READING = 3;

  private final Grid grid;
  private final Header header;
  private final int[] readingColumns;
  private final ColumnSums sums;
  private final int labelColumn;
  private final Role labelRole;
  private final int firstRow;
  private int lastRow;
  private final BitSet skipped = new BitSet();
  private final Map<Integer, PassedOver> aside = new HashMap<>();
  private final RowLabel label;
  private boolean labelsAreWords;

  /**
   * @param end one past the last row that may belong to it
   * @param repeated rows in between where the header comes again
   */
  public TableRows(Grid grid, Header header, int end, BitSet repeated) {
    this.grid = grid;
    this.header = header;
    this.firstRow = header.bottomRow() + 1;
    List<HeaderCell> cells = header.cells();
    readingColumns =
        cells.stream()
            .filter(c -> READINGS.contains(c.role()))
            .mapToInt(HeaderCell::column)
            .toArray();
    int[] numbers =
        cells.stream()
            .filter(c -> READINGS.contains(c.role()) || c.role() == Role.TEMPERATURE)
            .mapToInt(HeaderCell::column)
            .toArray();
    sums = new ColumnSums(grid, numbers, firstRow, skipped);
    labelColumn = cells.get(0).column();
    labelRole = cells.get(0).role();
    label = new RowLabel(grid, cells);
    skipped.or(repeated);
    findEnd(end);
    if (end < grid.rowCount()) {
      leaveLinesToTheNextTable();
    }
    new RestOfHeader(grid, readingColumns)
        .rows(firstRow, lastRow, this::isTime)
        .forEach(skipped::set);
  }

  /** What stands in words before the next header is said about the next table. */
  private void leaveLinesToTheNextTable() {
    int row = lastRow;
    while (row > firstRow && (!isTime(row) || isTitle(row)) && !isNumericReading(row)) {
      row--;
    }
    lastRow = row > firstRow ? row : lastRow;
  }

  /** Whether a row begins with words that are no date, as {@code Batch 15 - Stout}. */
  private boolean isTitle(int row) {
    if (grid.kind(row, labelColumn) != Kind.TEXT) {
      return false;
    }
    String text = grid.text(row, labelColumn).strip();
    Set<Concept> meanings = Vocabulary.meanings(text);
    return !text.isEmpty()
        && Character.isLetter(text.charAt(0))
        && !DateText.isDate(text)
        && !meanings.contains(Concept.WEEKDAY)
        && !meanings.contains(Concept.DAY);
  }

  private boolean isNumericReading(int row) {
    for (int column : readingColumns) {
      Kind kind = grid.kind(row, column);
      if (kind == Kind.NUMBER
          || kind == Kind.TEXT && CellText.read(grid.text(row, column)).isReading()) {
        return true;
      }
    }
    return false;
  }

  private void findEnd(int end) {
    lastRow = firstRow - 1;
    boolean gap = false;
    for (int row = firstRow; row < end; row++) {
      if (skipped.get(row)) {
        gap = false;
        continue;
      }
      if (isBlank(row)) {
        gap = true;
        continue;
      }
      if (gap && (startsSomethingElse(row) || onlyStatementsFrom(row, end))) {
        return;
      }
      boolean labelled = isTotalOrKey(row);
      if (labelled || isUnnamedTotal(row)) {
        skipped.set(row);
        aside.put(row, labelled && !label.isTotal() ? PassedOver.NOTE : PassedOver.AVERAGE);
      } else if (isNameLine(row) || isRemark(row)) {
        continue;
      } else if (hasReading(row, gap)) {
        lastRow = row;
        labelsAreWords |=
            grid.kind(row, labelColumn) == Kind.TEXT && !hasDigit(grid.text(row, labelColumn));
      }
      gap &= isLoneText(row);
    }
  }

  public int firstRow() {
    return firstRow;
  }

  /** The last row with a reading; less than {@link #firstRow} when there is none. */
  public int lastRow() {
    return lastRow;
  }

  /** Whether a row is a total or a line about the log. */
  public boolean isSkipped(int row) {
    return skipped.get(row);
  }

  /** The rows that are skipped, with what they are. */
  public Map<Integer, PassedOver> setAside() {
    skipped.stream().forEach(row -> aside.putIfAbsent(row, PassedOver.HEADING));
    return aside;
  }

  private boolean isBlank(int row) {
    for (int i = 0; i < header.cells().size(); i++) {
      if (grid.kind(row, header.cells().get(i).column()) != Kind.BLANK) {
        return false;
      }
    }
    return true;
  }

  /** Whether something was read in a row; below a reading also in a form that is refused. */
  private boolean hasReading(int row, boolean gap) {
    for (int column : readingColumns) {
      switch (grid.kind(row, column)) {
        case NUMBER:
          return true;
        case TEXT:
          String text = grid.text(row, column);
          CellText cell = CellText.read(text);
          if (cell.isReading()) {
            return true;
          }
          if (cell.isAmount()) {
            break;
          }
          boolean begun = lastRow >= firstRow;
          boolean counts = !gap && hasDigit(text) || hasOther(row, column, gap);
          if (begun && cell.form != CellText.Form.NOTHING && counts) {
            return true;
          }
          break;
        case BLANK:
          break;
        default:
          if (lastRow >= firstRow && hasOther(row, column, gap)) {
            return true;
          }
      }
    }
    return false;
  }

  /** Whether something else stands in a row of readings; behind a gap it must be a number. */
  private boolean hasOther(int row, int except, boolean number) {
    for (HeaderCell cell : header.cells()) {
      if (cell.column() == except || cell.role() == Role.COMPUTED) {
        continue;
      }
      Kind kind = grid.kind(row, cell.column());
      boolean isNumber =
          kind == Kind.NUMBER
              || kind == Kind.DATE
              || (kind == Kind.TEXT && hasDigit(grid.text(row, cell.column())));
      if (isNumber || (!number && kind == Kind.TEXT)) {
        return true;
      }
    }
    return false;
  }

  private static boolean hasDigit(String text) {
    return text.chars().anyMatch(Character::isDigit);
  }

  /** Whether a reading column of a row holds something that is not said to be nothing. */
  private boolean hasValue(int row) {
    for (int column : readingColumns) {
      Kind kind = grid.kind(row, column);
      boolean nothing =
          kind == Kind.BLANK
              || (kind == Kind.NUMBER && grid.number(row, column) == 0)
              || (kind == Kind.TEXT
                  && CellText.read(grid.text(row, column)).form == CellText.Form.NOTHING);
      if (!nothing) {
        return true;
      }
    }
    return false;
  }

  /** A row behind a gap that holds only words, at least two: another table's header. */
  private boolean startsSomethingElse(int row) {
    int words = 0;
    for (HeaderCell cell : header.cells()) {
      Kind kind = grid.kind(row, cell.column());
      if (kind == Kind.TEXT) {
        String text = grid.text(row, cell.column());
        if (hasDigit(text) || CellText.read(text).form == CellText.Form.NOTHING) {
          return false;
        }
        words++;
      } else if (kind != Kind.BLANK) {
        return false;
      }
    }
    return words >= 2;
  }

  /**
   * Whether a row only sums up the readings or says something about the log. A word alone does not
   * tell: it may be a weekday, a sample's letter or somebody's initials. So a row with a value
   * where the readings stand is a total only when the figures agree, and a statement only below the
   * name of a batch.
   */
  private boolean isTotalOrKey(int row) {
    if (!label.read(row)) {
      return false;
    }
    if (!hasValue(row)) {
      return label.isTotal() || !hasAddition(row);
    }
    return label.isTotal()
        ? Aggregate.sumsUp(grid, label.text(), readingColumns, firstRow, row, skipped)
        : isStatement(row) && isBelowName(row);
  }

  /** A row without a date among rows with dates whose figures are those of a whole column. */
  private boolean isUnnamedTotal(int row) {
    boolean dated = labelRole == Role.DATE || labelRole == Role.DAY || labelRole == Role.HOURS;
    return dated
        && lastRow > firstRow
        && !isTime(row)
        && isTime(lastRow)
        && isTime(firstRow)
        && sums.areRepeatedIn(row);
  }

  private boolean isTime(int row) {
    return switch (grid.kind(row, labelColumn)) {
      case DATE, NUMBER -> true;
      case TEXT -> hasDigit(grid.text(row, labelColumn));
      default -> false;
    };
  }

  private boolean hasAddition(int row) {
    return header.cells().stream()
        .filter(c -> c.role() == Role.SUGAR_ADDED || c.role() == Role.WATER_ADDED)
        .anyMatch(c -> grid.kind(row, c.column()) != Kind.BLANK);
  }

  /** A label and one value. */
  private boolean isStatement(int row) {
    return label.read(row) && filled(row) == 2;
  }

  private int filled(int row) {
    int filled = 0;
    for (HeaderCell cell : header.cells()) {
      boolean counts = cell.role() != Role.COMPUTED;
      filled += counts && grid.kind(row, cell.column()) != Kind.BLANK ? 1 : 0;
    }
    return filled;
  }

  /** Whether the row above names a batch or states something about it. */
  private boolean isBelowName(int row) {
    int above = row - 1;
    while (above >= firstRow && isBlank(above)) {
      above--;
    }
    if (above < firstRow || skipped.get(above)) {
      return above >= firstRow && filled(above) == 2;
    }
    return isNameLine(above);
  }

  /** A batch's name alone in a row, or after a word for batch or vessel. */
  private boolean isNameLine(int row) {
    if (labelRole == Role.BATCH || grid.kind(row, labelColumn) != Kind.TEXT) {
      return false;
    }
    String text = grid.text(row, labelColumn);
    Set<Concept> meanings = Vocabulary.meanings(text);
    boolean labelled = meanings.contains(Concept.BATCH) || meanings.contains(Concept.VESSEL);
    return isLoneText(row)
        ? labelled || !BatchNameText.of(text).isEmpty()
        : labelled && filled(row) == 2 && hasWordsInReading(row);
  }

  /** Whether a word, and no attempt at a number, stands where the readings do. */
  private boolean hasWordsInReading(int row) {
    for (int column : readingColumns) {
      if (grid.kind(row, column) == Kind.TEXT) {
        String text = grid.text(row, column).strip();
        return !text.isEmpty() && Character.isLetter(text.charAt(0));
      }
    }
    return false;
  }

  /** A sentence alone in a row, though it stands where the readings do and holds figures. */
  private boolean isRemark(int row) {
    String text = isLoneText(row) ? grid.text(row, labelColumn).strip() : "";
    return !text.isEmpty()
        && Character.isLetter(text.charAt(0))
        && text.split("\\s+").length > WORDS_OF_READING
        && !CellText.read(text).isReading();
  }

  private boolean isLoneText(int row) {
    return grid.kind(row, labelColumn) == Kind.TEXT && filled(row) == 1;
  }

  /** Whether nothing but statements stands from a row behind a gap on: a summary of the log. */
  private boolean onlyStatementsFrom(int row, int end) {
    if (labelsAreWords || !hasValue(row) || !isStatement(row) || isBelowName(row)) {
      return false;
    }
    for (int at = row + 1; at < end; at++) {
      if (!isBlank(at) && !isLoneText(at) && !isStatement(at)) {
        return false;
      }
    }
    return true;
  }
}
