/** Asks a person what a log leaves open, and makes a map of the answers. */
package washbook.runner.ask;
