/**
 * Finds still runs in a sheet: jars one a row, with what each column holds and what was charged.
 */
package washbook.log.run;
