/** The commands of the command line. */
package washbook.runner.cli;
