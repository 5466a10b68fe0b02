/** A sheet of cells as the log sees it, with what is to be written into it. */
package washbook.log.sheet;
