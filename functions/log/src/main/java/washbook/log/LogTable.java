package washbook.log;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import washbook.log.language.Message;
import washbook.log.sheet.CellAddress;

/**
 * One table of readings in a sheet; all numbers from 0, ends included.
 *
 * @param headerRow the row of its headers; the last one when there are several
 * @param columns its columns from left to right
 * @param batches its batches in order of first appearance
 * @param settings what holds for all its readings
 * @param remarks how things were settled that a person may want to know, as sentences
 * @param settled whether its readings are understood without doubt; only then it is filled
 * @param setAside rows between its readings that are none, as far as that is known
 */
public record LogTable(
    int headerRow,
    int firstRow,
    int lastRow,
    int firstColumn,
    int lastColumn,
    List<LogColumn> columns,
    List<Batch> batches,
    LogSettings settings,
    List<Message> remarks,
    boolean settled,
    Map<Integer, PassedOver> setAside) {

  public LogTable {
    setAside = Map.copyOf(setAside);
  }

  /** A table of which no row is known to be set aside. */
  public LogTable(
      int headerRow,
      int firstRow,
      int lastRow,
      int firstColumn,
      int lastColumn,
      List<LogColumn> columns,
      List<Batch> batches,
      LogSettings settings,
      List<Message> remarks,
      boolean settled) {
    this(
        headerRow,
        firstRow,
        lastRow,
        firstColumn,
        lastColumn,
        columns,
        batches,
        settings,
        remarks,
        settled,
        Map.of());
  }

  /** Written out: Java takes long over the first hash that it makes of a record itself. */
  @Override
  public int hashCode() {
    return 31 * headerRow + firstColumn;
  }

  /** The table's first column with that role. */
  public Optional<LogColumn> column(Role role) {
    return columns.stream().filter(c -> c.role() == role).findFirst();
  }

  /** The same with other batches. */
  public LogTable with(List<Batch> others) {
    return new LogTable(
        headerRow,
        firstRow,
        lastRow,
        firstColumn,
        lastColumn,
        columns,
        List.copyOf(others),
        settings,
        remarks,
        settled,
        setAside);
  }

  /** The area from header to last row, as A3:F40. */
  public String range() {
    return CellAddress.of(headerRow, firstColumn) + ":" + CellAddress.of(lastRow, lastColumn);
  }
}
