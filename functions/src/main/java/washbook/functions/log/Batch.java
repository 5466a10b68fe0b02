package washbook.functions.log;

/**
 * The rows of one ferment inside a table.
 *
 * @param name as the log calls it; the sheet's name where it has none
 * @param rows its rows in the order of time, from 0
 * @param originalGravity SG 20/20, NaN when it is not known
 * @param originalGravityCell address of the cell it comes from, "" when not known
 * @param originalGravityWhy whether it is stated, the first reading or fed, as a sentence
 */
public record Batch(
    String name,
    int[] rows,
    double originalGravity,
    String originalGravityCell,
    String originalGravityWhy) {}
