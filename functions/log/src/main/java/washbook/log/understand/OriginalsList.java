package washbook.log.understand;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import washbook.log.Role;
import washbook.log.layout.HeaderRoles;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.CellText;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Vocabulary;

/** A list above a log that gives the original gravity of each batch in a row of its own. */
final class OriginalsList {
  /**
   * One original gravity.
   *
   * @param scale of its header, empty where none is named
   * @param names the other cells of its row
   */
  record Entry(String cell, double value, Optional<ReadingScale> scale, List<String> names) {}

  private final List<Entry> entries = new ArrayList<>();

  /**
   * @param above first row that can speak of the table
   * @param topRow first row of its header
   */
  static OriginalsList of(Grid grid, int above, int topRow, int firstColumn, int lastColumn) {
    OriginalsList list = new OriginalsList();
    for (int row = above; row < topRow - 1; row++) {
      for (int column = firstColumn; column <= lastColumn; column++) {
        if (grid.kind(row, column) == Kind.TEXT && isHeader(grid, row, column)) {
          list.read(grid, row, column, topRow, firstColumn, lastColumn);
        }
      }
    }
    return list;
  }

  private static boolean isHeader(Grid grid, int row, int column) {
    Set<Concept> meanings = Vocabulary.meanings(grid.text(row, column));
    return HeaderRoles.role(meanings) == Role.ORIGINAL_GRAVITY
        && grid.kind(row + 1, column) == Kind.NUMBER;
  }

  private void read(
      Grid grid, int header, int column, int topRow, int firstColumn, int lastColumn) {
    Optional<ReadingScale> scale = ReadingScale.in(Vocabulary.meanings(grid.text(header, column)));
    for (int row = header + 1; row < topRow; row++) {
      double value = CellText.plainNumber(grid, row, column);
      if (Double.isNaN(value)) {
        return;
      }
      List<String> names = new ArrayList<>();
      for (int other = firstColumn; other <= lastColumn; other++) {
        if (other != column && grid.kind(row, other) == Kind.TEXT) {
          names.add(plain(grid.text(row, other)));
        }
      }
      entries.add(new Entry(CellAddress.of(row, column), value, scale, names));
    }
  }

  boolean isEmpty() {
    return entries.isEmpty();
  }

  /** That of a batch; empty where no row, or more than one, names it. */
  Optional<Entry> of(String batch) {
    List<Entry> named =
        entries.stream().filter(entry -> entry.names().contains(plain(batch))).toList();
    return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
  }

  /** Where the first one stands. */
  String cell() {
    return entries.get(0).cell();
  }

  private static String plain(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }
}
