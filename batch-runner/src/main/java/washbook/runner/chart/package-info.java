/** Curves of the batches on a sheet of their own. */
package washbook.runner.chart;
