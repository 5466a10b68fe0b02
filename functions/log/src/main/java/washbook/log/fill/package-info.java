/** The columns that are added to a log, as values or as formulas. */
package washbook.log.fill;
