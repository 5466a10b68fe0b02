/** One table of all batches of all logs, and its upkeep from run to run. */
package washbook.runner.season;
