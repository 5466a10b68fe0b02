package washbook.log.fill;

import java.util.BitSet;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import washbook.log.LogColumn;
import washbook.log.LogTable;
import washbook.log.PassedOver;
import washbook.log.Role;
import washbook.log.RowAccount;
import washbook.log.StillRun;
import washbook.log.Understanding;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.log.words.BatchNameText;
import washbook.log.words.CellText;

/** Accounts for every row of every table of a sheet. */
final class RowAccounts {
  private static final Set<Role> READINGS =
      EnumSet.of(Role.GRAVITY, Role.REFRACTOMETER, Role.STRENGTH, Role.VOLUME, Role.VOLUME_SO_FAR);

  private final Grid grid;
  private final List<LogTable> tables;
  private final Map<LogTable, RowAccount> accounts = new LinkedHashMap<>();

  RowAccounts(Grid grid, Understanding understanding) {
    this.grid = grid;
    this.tables =
        Stream.concat(
                understanding.tables().stream(), understanding.runs().stream().map(StillRun::table))
            .toList();
  }

  /** The accounts of tables that were computed and of those that wait for an answer. */
  Map<LogTable, RowAccount> of(
      Map<LogTable, ComputedTable> ferments, Collection<ComputedRun> runs) {
    for (LogTable table : tables) {
      if (ferments.containsKey(table)) {
        ComputedTable computed = ferments.get(table);
        put(table, computed.read(), computed.refusedRows());
      } else if (!table.settled()) {
        BitSet waiting = waiting(table);
        put(table, waiting, waiting.cardinality());
      }
    }
    runs.forEach(run -> put(run.table(), run.jars(), run.refusedRows()));
    return accounts;
  }

  /**
   * @param read rows with a reading, refused ones too
   */
  private void put(LogTable table, BitSet read, int refused) {
    Map<PassedOver, BitSet> over = new EnumMap<>(PassedOver.class);
    int row = read.nextClearBit(table.headerRow());
    while (row <= table.lastRow()) {
      over.computeIfAbsent(reason(table, row), reason -> new BitSet()).set(row);
      row = read.nextClearBit(row + 1);
    }
    accounts.put(table, RowAccount.of(read.cardinality() - refused, refused, over));
  }

  /** Rows that an answer about their table would let be filled. */
  private BitSet waiting(LogTable table) {
    List<LogColumn> readings =
        table.columns().stream().filter(c -> READINGS.contains(c.role())).toList();
    List<LogColumn> columns = readings.isEmpty() ? table.columns() : readings;
    BitSet waiting = new BitSet();
    for (int row = table.firstRow(); row <= table.lastRow(); row++) {
      if (!table.setAside().containsKey(row) && holdsValue(row, columns)) {
        waiting.set(row);
      }
    }
    return waiting;
  }

  private boolean holdsValue(int row, List<LogColumn> columns) {
    for (LogColumn column : columns) {
      Kind kind = grid.kind(row, column.column());
      boolean value =
          kind == Kind.NUMBER || kind == Kind.TEXT && hasDigit(grid.text(row, column.column()));
      if (value && column.role() != Role.COMPUTED) {
        return true;
      }
    }
    return false;
  }

  private PassedOver reason(LogTable table, int row) {
    PassedOver known = table.setAside().get(row);
    if (known != null) {
      return known;
    }
    if (isOfAnother(table, row)) {
      return PassedOver.OTHER_TABLE;
    }
    boolean words = false;
    boolean figures = false;
    String first = "";
    for (LogColumn column : table.columns()) {
      if (column.role() == Role.COMPUTED) {
        continue;
      }
      switch (grid.kind(row, column.column())) {
        case BLANK -> {}
        case TEXT -> {
          String text = grid.text(row, column.column());
          boolean nothing = CellText.read(text).form == CellText.Form.NOTHING;
          figures |= !nothing && hasDigit(text) && BatchNameText.of(text).isEmpty();
          words |= !nothing;
          first = first.isEmpty() ? text : first;
        }
        default -> figures = true;
      }
    }
    if (row < table.firstRow()) {
      return words || figures ? PassedOver.HEADING : PassedOver.BLANK;
    }
    return figures || !words
        ? PassedOver.BLANK
        : BatchNameText.of(first).isEmpty() ? PassedOver.NOTE : PassedOver.HEADING;
  }

  /** Whether a row lies inside another table, over or below this one's columns. */
  private boolean isOfAnother(LogTable table, int row) {
    for (LogTable other : tables) {
      if (other.headerRow() != table.headerRow()
          && row >= other.headerRow()
          && row <= other.lastRow()
          && other.firstColumn() <= table.lastColumn()
          && table.firstColumn() <= other.lastColumn()) {
        return true;
      }
    }
    return false;
  }

  private static boolean hasDigit(String text) {
    return text.chars().anyMatch(Character::isDigit);
  }
}
