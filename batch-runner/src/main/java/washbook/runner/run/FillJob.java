package washbook.runner.run;

/**
 * What is done with every file.
 *
 * @param writesFormulas whether the cells hold formulas, which not every format takes
 * @param charts whether a sheet with charts is added, which not every format takes
 * @param dryRun whether nothing is written
 * @param keepSeries whether the report has curves
 */
public record FillJob(
    SheetFiller filler,
    Destination destination,
    boolean writesFormulas,
    boolean charts,
    boolean dryRun,
    boolean keepSeries) {}
