/**
 * A sheet between file and log: a grid in little memory, rows to be patched, the ways in and out.
 */
package washbook.runner.sheet;
