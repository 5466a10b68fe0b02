/**
 * The log itself once it is understood: tables with their columns, batches, settings, open
 * questions.
 */
package washbook.log;
