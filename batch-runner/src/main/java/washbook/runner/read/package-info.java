/** From a file of each format to its grids. */
package washbook.runner.read;
