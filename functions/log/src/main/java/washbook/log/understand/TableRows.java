package washbook.log.understand;

import java.util.BitSet;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import washbook.log.Role;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.understand.Header.HeaderCell;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.Vocabulary;

/** The rows below one header: where the table ends, and which rows are no readings. */
final class TableRows {
  private static final Set<Role> READINGS =
      EnumSet.of(Role.GRAVITY, Role.REFRACTOMETER, Role.OWN_CORRECTED_GRAVITY);

  private final Grid grid;
  private final Header header;
  private final int[] readingColumns;
  private final int labelColumn;
  private final Role labelRole;
  private final int firstRow;
  private int lastRow;
  private final BitSet skipped = new BitSet();
  private String lastLabel = "";
  private boolean lastIsTotalOrKey;

  /**
   * @param end one past the last row that may belong to it
   * @param repeated rows in between where the header comes again
   */
  TableRows(Grid grid, Header header, int end, BitSet repeated) {
    this.grid = grid;
    this.header = header;
    this.firstRow = header.bottomRow() + 1;
    List<HeaderCell> cells = header.cells();
    readingColumns =
        cells.stream()
            .filter(c -> READINGS.contains(c.role()))
            .mapToInt(HeaderCell::column)
            .toArray();
    labelColumn = cells.get(0).column();
    labelRole = cells.get(0).role();
    skipped.or(repeated);
    findEnd(end);
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
      if (gap && startsSomethingElse(row)) {
        return;
      }
      gap = false;
      if (isTotalOrKey(row)) {
        skipped.set(row);
      } else if (hasReading(row)) {
        lastRow = row;
      }
    }
  }

  int firstRow() {
    return firstRow;
  }

  /** The last row with a reading; less than {@link #firstRow} when there is none. */
  int lastRow() {
    return lastRow;
  }

  /** Whether a row is a total or a line about the log. */
  boolean isSkipped(int row) {
    return skipped.get(row);
  }

  private boolean isBlank(int row) {
    for (int i = 0; i < header.cells().size(); i++) {
      if (grid.kind(row, header.cells().get(i).column()) != Kind.BLANK) {
        return false;
      }
    }
    return true;
  }

  private boolean hasReading(int row) {
    for (int column : readingColumns) {
      switch (grid.kind(row, column)) {
        case NUMBER:
          return true;
        case TEXT:
          CellText cell = CellText.read(grid.text(row, column));
          if (cell.form == CellText.Form.VALUE || cell.form == CellText.Form.PAIR) {
            return true;
          }
          break;
        default:
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
        if (text.chars().anyMatch(Character::isDigit)
            || CellText.read(text).form == CellText.Form.NOTHING) {
          return false;
        }
        words++;
      } else if (kind != Kind.BLANK) {
        return false;
      }
    }
    return words >= 2;
  }

  private boolean isTotalOrKey(int row) {
    if (grid.kind(row, labelColumn) != Kind.TEXT) {
      return false;
    }
    if (labelRole == Role.GRAVITY || labelRole == Role.NOTE || labelRole == Role.TEMPERATURE) {
      return false;
    }
    String text = grid.text(row, labelColumn);
    if (text.isEmpty() || !Character.isLetter(text.charAt(0)) || text.length() > 60) {
      return false;
    }
    if (!text.equals(lastLabel)) {
      lastLabel = text;
      lastIsTotalOrKey = isTotalOrKey(Vocabulary.meanings(text));
    }
    return lastIsTotalOrKey;
  }

  private boolean isTotalOrKey(Set<Concept> meanings) {
    if (meanings.contains(Concept.TOTAL)) {
      return labelRole != Role.BATCH || meanings.size() == 1;
    }
    if (labelRole == Role.BATCH) {
      return false;
    }
    Role role = HeaderRoles.role(meanings);
    return role == Role.ORIGINAL_GRAVITY
        || role == Role.CALIBRATION
        || role == Role.TEMPERATURE
        || role == Role.OWN_ABV
        || role == Role.VOLUME
        || role == Role.GRAVITY
        || role == Role.OWN_CORRECTED_GRAVITY
        || meanings.contains(Concept.FINALGRAVITY);
  }
}
