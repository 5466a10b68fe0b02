/** One row of a table: its corrected reading, its time, or why it is refused. */
package washbook.log.reading;
