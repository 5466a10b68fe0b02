/**
 * What every part of the runner needs to know of a file: its temporary name, why it is unusable.
 */
package washbook.runner.file;
