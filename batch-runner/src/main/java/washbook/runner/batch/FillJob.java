package washbook.runner.batch;

/**
 * What is done with every file.
 *
 * @param writesFormulas whether the cells hold formulas, which not every format takes
 * @param dryRun whether nothing is written
 * @param keepSeries whether the report draws charts
 */
public record FillJob(
    SheetFiller filler,
    Destination destination,
    boolean writesFormulas,
    boolean dryRun,
    boolean keepSeries) {}
