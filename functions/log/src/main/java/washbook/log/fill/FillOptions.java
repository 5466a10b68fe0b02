package washbook.log.fill;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import washbook.log.ComputedColumn;

/**
 * What to fill in.
 *
 * @param columns the wanted columns; the note column comes by itself where a row is refused
 * @param style what the cells hold
 */
public record FillOptions(Set<ComputedColumn> columns, FormulaStyle style) {
  public FillOptions {
    columns = columns.isEmpty() ? Set.of() : EnumSet.copyOf(columns);
  }

  /** The usual columns as plain numbers. */
  public static FillOptions usual() {
    return new FillOptions(
        Arrays.stream(ComputedColumn.values())
            .filter(ComputedColumn::byDefault)
            .collect(Collectors.toSet()),
        FormulaStyle.VALUES);
  }
}
