package washbook.runner.report;

import washbook.log.overview.BatchOverview;

/**
 * One batch of one file in a table of batches.
 *
 * @param file as reports name it
 */
public record OverviewLine(String file, BatchOverview batch) {}
