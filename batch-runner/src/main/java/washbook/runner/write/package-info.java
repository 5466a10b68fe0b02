/** From patches to a finished copy of a file, in each format. */
package washbook.runner.write;
