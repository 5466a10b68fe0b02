package washbook.runner.run;

import washbook.log.overview.Overviews;

/**
 * What is done with every file.
 *
 * @param writesFormulas whether the cells hold formulas, which not every format takes
 * @param charts whether a sheet with charts is added, which not every format takes
 * @param dryRun whether nothing is written
 * @param keepSeries whether the report has curves
 * @param overviews makes the overview of each batch for the report; null for none
 */
public record FillJob(
    SheetFiller filler,
    Destination destination,
    boolean writesFormulas,
    boolean charts,
    boolean dryRun,
    boolean keepSeries,
    Overviews overviews) {

  /** Without overviews. */
  public FillJob(
      SheetFiller filler,
      Destination destination,
      boolean writesFormulas,
      boolean charts,
      boolean dryRun,
      boolean keepSeries) {
    this(filler, destination, writesFormulas, charts, dryRun, keepSeries, null);
  }
}
