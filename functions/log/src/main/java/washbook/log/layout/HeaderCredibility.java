package washbook.log.layout;

import java.util.EnumSet;
import java.util.Set;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Vocabulary;

/**
 * Tells headers of a log from others that share a word with it: where the reading is only called a
 * value, points or a potential, the company must speak for a ferment. A temperature does; a time, a
 * day or a batch does where the values are gravities. Beside words of other things than a ferment
 * only a gravity or a scale by its name is worth a question.
 */
final class HeaderCredibility {
  private static final int ROWS_SEEN = 200;

  /** Behind so many and a blank cell another table may stand. */
  private static final int FEWEST = 4;

  private final Grid grid;

  HeaderCredibility(Grid grid) {
    this.grid = grid;
  }

  boolean isEnough(Header header) {
    boolean ours = false;
    boolean time = false;
    boolean generic = false;
    boolean foreign = false;
    boolean named = false;
    boolean gravities = false;
    for (HeaderCell cell : header.cells()) {
      Set<Concept> m = cell.meanings();
      foreign |= m.contains(Concept.FOREIGN) || m.contains(Concept.TWO_USES);
      named |= HeaderRoles.hasScaleOrGravity(m);
      switch (cell.role()) {
        case GRAVITY, REFRACTOMETER, OWN_CORRECTED_GRAVITY -> {
          boolean common = isOnly(Concept.POTENTIAL, m) || isOnly(Concept.POINTS, m);
          ours |= !common && !HeaderRoles.isGeneric(m);
          generic |= HeaderRoles.isGeneric(m) && holdsGravities(header, cell);
          generic |= common;
          boolean byValues = !HeaderRuns.isReading(HeaderRoles.role(m));
          gravities |= byValues || holdsGravities(header, cell);
        }
        case TEMPERATURE, ORIGINAL_GRAVITY, COMPUTED -> ours = true;
        case DATE, TIME, DAY, HOURS, BATCH -> time = true;
        default -> {}
      }
    }
    boolean credible = named || generic || gravities;
    return (!foreign || credible) && (ours || time && generic);
  }

  /** Whether a reading is called by one word that many other tables have too. */
  private static boolean isOnly(Concept word, Set<Concept> meanings) {
    if (!meanings.contains(word) || meanings.contains(Concept.HYDROMETER)) {
      return false;
    }
    Set<Concept> others = EnumSet.copyOf(meanings);
    others.remove(word);
    return !HeaderRoles.hasScaleOrGravity(others);
  }

  private boolean holdsGravities(Header header, HeaderCell cell) {
    int numbers = 0;
    int gravities = 0;
    int last = Math.min(grid.rowCount() - 1, header.bottomRow() + ROWS_SEEN);
    for (int row = header.bottomRow() + 1; row <= last; row++) {
      double value = CellText.plainNumber(grid, row, cell.column());
      if (grid.kind(row, cell.column()) == Grid.Kind.TEXT && Double.isNaN(value)) {
        String unit = CellText.read(grid.text(row, cell.column())).unit;
        boolean sugar = !unit.isEmpty() && ReadingScale.in(Vocabulary.meanings(unit)).isPresent();
        numbers += sugar ? 1 : 0;
        gravities += sugar ? 1 : 0;
      }
      if (grid.kind(row, cell.column()) == Grid.Kind.BLANK && gravities >= FEWEST) {
        break;
      }
      // A bare 1 may be a count as well as a gravity.
      numbers += Double.isNaN(value) || value == 1 ? 0 : 1;
      gravities += value != 1 && ReadingScale.looksLikeGravity(value) ? 1 : 0;
    }
    return numbers > 0 && gravities >= 0.8 * numbers;
  }
}
