package washbook.samples.generator;

import java.util.List;
import java.util.Map;
import java.util.Set;
import washbook.log.RowAccount;

/**
 * What the program made of a sheet.
 *
 * @param questions what it asks
 * @param writtenColumns how many columns it would put into the sheet
 * @param across whether it runs across, so that rows and columns of its tables have changed places
 */
record Seen(List<Table> tables, List<String> questions, int writtenColumns, boolean across) {

  /** Figures of one row. */
  record Figures(double gravity, double abv) {}

  /**
   * A table.
   *
   * @param settled whether it is filled
   * @param readingColumns hydrometer and refractometer columns
   * @param filled figures by row
   * @param refused rows that are refused, each with its reason
   * @param account what the program says became of its rows
   */
  record Table(
      int headerRow,
      int firstRow,
      int lastRow,
      int firstColumn,
      int lastColumn,
      boolean settled,
      Set<Integer> readingColumns,
      Map<Integer, Figures> filled,
      Map<Integer, String> refused,
      RowAccount account) {}

  boolean wroteFigures() {
    return tables.stream().anyMatch(t -> !t.filled().isEmpty());
  }
}
