/** What came out of a run, for people and for other programs. */
package washbook.runner.report;
