/** From a sheet of cells to the log in it. */
package washbook.log.understand;
