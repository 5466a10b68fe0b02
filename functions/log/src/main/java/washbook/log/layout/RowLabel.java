package washbook.log.layout;

import java.util.List;
import java.util.Set;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.Concept;
import washbook.log.words.DateText;
import washbook.log.words.Vocabulary;

/** What a row of a table begins with: a word for a total, something said about the log, or none. */
final class RowLabel {
  private static final int LONGEST = 60;

  private final Grid grid;
  private final List<HeaderCell> cells;
  private String text = "";
  private boolean total;
  private boolean key;

  /**
   * @param cells those of the header, from the left
   */
  RowLabel(Grid grid, List<HeaderCell> cells) {
    this.grid = grid;
    this.cells = cells;
  }

  /** Whether a row begins with a word for a total or for something said about the log. */
  boolean read(int row) {
    HeaderCell cell = cellOf(row);
    Role role = cell.role();
    if (grid.kind(row, cell.column()) != Kind.TEXT
        || role == Role.GRAVITY
        || role == Role.NOTE
        || role == Role.TEMPERATURE) {
      return false;
    }
    String said = grid.text(row, cell.column());
    if (said.isEmpty() || !Character.isLetter(said.charAt(0)) || said.length() > LONGEST) {
      return false;
    }
    if (!said.equals(text)) {
      text = said;
      Set<Concept> meanings = Vocabulary.meanings(said);
      total = meanings.contains(Concept.TOTAL) && (role != Role.BATCH || meanings.size() == 1);
      key =
          role != Role.BATCH
              && isKey(meanings)
              && Double.isNaN(DateText.serial(said, DateText.Order.DAY_FIRST));
    }
    return total || key;
  }

  /** The first cell; that of the date where rows are numbered and this one is not. */
  private HeaderCell cellOf(int row) {
    HeaderCell first = cells.get(0);
    boolean numbered =
        cells.size() > 1
            && first.role() == Role.OTHER
            && (cells.get(1).role() == Role.DATE || cells.get(1).role() == Role.DAY)
            && grid.kind(row, first.column()) == Kind.BLANK;
    return numbered ? cells.get(1) : first;
  }

  /** The word of the row that was read last. */
  String text() {
    return text;
  }

  /** Whether the row that was read last begins with a word for a total. */
  boolean isTotal() {
    return total;
  }

  private static boolean isKey(Set<Concept> meanings) {
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
