package washbook.samples.corpus;

import java.util.List;
import washbook.log.Role;

/**
 * What a careful person understands of one log.
 *
 * @param verdict what a fill should do with it
 * @param about the log in one line
 * @param tables its tables of readings
 * @param causes what the audit may name as the cause of the log's own wrong figures; empty when it
 *     has none
 */
record Expected(Verdict verdict, String about, List<Table> tables, List<String> causes) {

  /** What a fill should do. */
  enum Verdict {
    /** Understand it without help and fill it. */
    FILL,
    /** Ask, because the log does not say something that matters; fill nothing. */
    ASK,
    /** Fill it rightly or ask; not wrongly. */
    CAREFUL,
    /** It is no log of a ferment: recognise nothing, fill nothing. */
    NOTHING
  }

  /** A table of readings; rows and columns from 0. */
  record Table(String sheet, List<Column> columns, List<Ferment> batches, List<Row> rows) {}

  /**
   * A column; a null role means that it does not matter what it is taken for.
   *
   * @param unit "" where none applies, "*" where it does not matter
   */
  record Column(int column, Role role, String unit, String header) {}

  /**
   * A batch.
   *
   * @param stated original gravity as the log states it, in SG; NaN when it is the first reading
   * @param firstRow row of its first reading in time
   * @param calibrationC where its hydrometer's scale is right
   * @param offset what the hydrometer shows too much, SG
   */
  record Ferment(String name, double stated, int firstRow, double calibrationC, double offset) {}

  /**
   * A row with a reading.
   *
   * @param refused whether it cannot be computed; the figures are NaN then
   * @param reading what the hydrometer showed, in SG
   * @param temperatureC of the sample; NaN when the reading is already corrected
   * @param gravity true SG 20/20, NaN when not known
   * @param gravityError how far from the truth the rounded reading may lead
   * @param abv true % vol
   * @param abvError how far from the truth the rounded readings may lead
   * @param apparent true apparent attenuation, %
   * @param real true real attenuation, %
   */
  record Row(
      int row,
      String batch,
      boolean refused,
      double reading,
      double temperatureC,
      double gravity,
      double gravityError,
      double abv,
      double abvError,
      double apparent,
      double real) {}

  int filled() {
    return (int) tables.stream().flatMap(t -> t.rows().stream()).filter(r -> !r.refused()).count();
  }
}
