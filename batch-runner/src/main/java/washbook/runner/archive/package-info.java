/** Zip archives that are copied without unpacking what stays as it is. */
package washbook.runner.archive;
