package washbook.log;

import washbook.log.language.Message;

/**
 * What one column of a table was taken for.
 *
 * @param column from 0
 * @param header text of its header cell as it stands there
 * @param role what it holds
 * @param unit scale or unit as a word of CONVERT (SG, BRIX, C, F, L, KG ...), "" where none applies
 * @param why how role and unit were settled, as a sentence
 */
public record LogColumn(int column, String header, Role role, String unit, Message why) {

  /** Written out: Java takes long over the first comparison that it makes of a record itself. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || (other instanceof LogColumn that
            && column == that.column
            && role == that.role
            && header.equals(that.header)
            && unit.equals(that.unit)
            && why.equals(that.why));
  }

  @Override
  public int hashCode() {
    return 31 * column + header.hashCode();
  }
}
