package washbook.runner.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import washbook.functions.Numbers;
import washbook.log.language.Language;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.understand.SeasonSheet;
import washbook.runner.file.UnusableFileException;
import washbook.runner.language.Wording;
import washbook.runner.report.OverviewColumn;
import washbook.runner.report.OverviewLine;

/**
 * The columns that the person has added to an older table of the season, and where each batch
 * stands in it. Rows and columns count from 0.
 */
final class OwnColumns {
  /** How far down the heads may stand. */
  private static final int MOST_ROWS_ABOVE = 20;

  /** Without these no batch is told from others. */
  private static final Set<OverviewColumn> NEEDED =
      Set.of(OverviewColumn.FILE, OverviewColumn.SHEET, OverviewColumn.BATCH);

  /**
   * What tells a batch from others.
   *
   * @param nth of the batches of one name on one sheet
   */
  record Key(String file, String sheet, String batch, int nth) {}

  /** Counts batches of one name. */
  static final class Keys {
    private final Map<Key, Integer> seen = new HashMap<>();

    Key of(String file, String sheet, String batch) {
      return new Key(
          file, sheet, batch, seen.merge(new Key(file, sheet, batch, 0), 1, Integer::sum));
    }

    Key of(OverviewLine line) {
      return of(line.file(), line.batch().sheet(), line.batch().batch());
    }
  }

  private final Map<String, Integer> heads = new LinkedHashMap<>();
  private final Map<Key, Integer> rows = new LinkedHashMap<>();
  private int headRow = -1;
  private int lastOfOurs = -1;
  private List<OverviewColumn> inOrder = List.of();

  private OwnColumns() {}

  /** Where there is no older table. */
  static OwnColumns none() {
    return new OwnColumns();
  }

  /**
   * All our columns as they stand in the older table, from its left edge on: formulas and charts of
   * the person's may go by that. Empty where there is no such table.
   */
  Optional<List<OverviewColumn>> order() {
    boolean whole =
        inOrder.size() == OverviewColumn.values().length && lastOfOurs == inOrder.size() - 1;
    return whole ? Optional.of(inOrder) : Optional.empty();
  }

  /**
   * Reads an older table.
   *
   * @param headOf how our columns are called in this kind of file and a language
   * @throws UnusableFileException when something of the person's could not be kept
   */
  static OwnColumns of(Grid grid, BiFunction<OverviewColumn, Wording, String> headOf)
      throws UnusableFileException {
    OwnColumns own = new OwnColumns();
    Map<OverviewColumn, Integer> ours = own.findHeads(grid, headOf);
    Keys keys = new Keys();
    for (int row = own.headRow + 1; row < grid.rowCount(); row++) {
      if (grid.text(row, 0).equals(SeasonCsv.SAFETY)) {
        continue;
      }
      String file = shown(grid, row, ours.get(OverviewColumn.FILE));
      String batch = shown(grid, row, ours.get(OverviewColumn.BATCH));
      if (!file.isEmpty() && !batch.isEmpty()) {
        String sheet = shown(grid, row, ours.get(OverviewColumn.SHEET));
        own.rows.put(keys.of(file, sheet, batch), row);
      } else if (!isBlank(grid, row)) {
        throw UnusableFileException.of("season.row", row + 1);
      }
    }
    return own;
  }

  private Map<OverviewColumn, Integer> findHeads(
      Grid grid, BiFunction<OverviewColumn, Wording, String> headOf) throws UnusableFileException {
    for (int row = 0; row < Math.min(MOST_ROWS_ABOVE, grid.rowCount()); row++) {
      Map<OverviewColumn, Integer> ours = Map.of();
      for (Language language : Language.values()) {
        Wording words = new Wording(language);
        Map<OverviewColumn, Integer> found = headsIn(grid, row, one -> headOf.apply(one, words));
        ours = found.size() > ours.size() ? found : ours;
      }
      if (ours.keySet().containsAll(NEEDED)) {
        headRow = row;
        lastOfOurs = Collections.max(ours.values());
        inOrder = ours.keySet().stream().sorted(Comparator.comparing(ours::get)).toList();
        for (int column = 0; column < grid.columnCount(); column++) {
          String head = grid.text(row, column);
          boolean title = column == 0 && SeasonSheet.isTitle(head);
          if (!head.isBlank() && !title && !isOurs(head, ours, grid)) {
            heads.put(head, column);
          }
        }
        refuseHeadless(grid, ours);
        return ours;
      }
    }
    throw UnusableFileException.of("season.heads");
  }

  /** Our columns of one language in a row. */
  private static Map<OverviewColumn, Integer> headsIn(
      Grid grid, int row, Function<OverviewColumn, String> headOf) {
    Map<OverviewColumn, Integer> ours = new EnumMap<>(OverviewColumn.class);
    for (int column = 0; column < grid.columnCount(); column++) {
      String head = grid.text(row, column);
      int at = column;
      Arrays.stream(OverviewColumn.values())
          .filter(one -> headOf.apply(one).equals(head))
          .findFirst()
          .ifPresent(one -> ours.putIfAbsent(one, at));
    }
    return ours;
  }

  /** Whether a head is that of one of our columns, also where it stands twice. */
  private boolean isOurs(String head, Map<OverviewColumn, Integer> ours, Grid grid) {
    return ours.values().stream().anyMatch(column -> grid.text(headRow, column).equals(head));
  }

  /** A column of the person's without a head would be lost. */
  private void refuseHeadless(Grid grid, Map<OverviewColumn, Integer> ours)
      throws UnusableFileException {
    List<Integer> known = new ArrayList<>(ours.values());
    known.addAll(heads.values());
    for (int row = headRow + 1; row < grid.rowCount(); row++) {
      for (int column = 1; column < grid.columnsUsed(row); column++) {
        if (grid.kind(row, column) != Kind.BLANK && !known.contains(column)) {
          throw UnusableFileException.of("season.cell", CellAddress.of(row, column));
        }
      }
    }
  }

  private static boolean isBlank(Grid grid, int row) {
    for (int column = 0; column < grid.columnsUsed(row); column++) {
      if (grid.kind(row, column) != Kind.BLANK) {
        return false;
      }
    }
    return true;
  }

  /** A batch called 7 stands as a number. */
  private static String shown(Grid grid, int row, int column) {
    double number = grid.number(row, column);
    return Double.isNaN(number) ? grid.text(row, column) : Numbers.show(number);
  }

  /** The person's heads with their columns in the older table. */
  Map<String, Integer> heads() {
    return heads;
  }

  /** The batches of the older table with their rows. */
  Map<Key, Integer> rows() {
    return rows;
  }

  int headRow() {
    return headRow;
  }

  /** Whether a column of the person's stands among ours. */
  boolean isAmongOurs(int column) {
    return column < lastOfOurs;
  }

  /** Older batches that have something of the person's and are in no log any more. */
  List<Map.Entry<Key, Integer>> orphans(List<Key> present, Grid grid) {
    Map<Key, Integer> gone = new LinkedHashMap<>(rows);
    present.forEach(gone::remove);
    return gone.entrySet().stream()
        .filter(
            entry ->
                heads.values().stream()
                    .anyMatch(column -> grid.kind(entry.getValue(), column) != Kind.BLANK))
        .toList();
  }
}
