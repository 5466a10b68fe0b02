/** Work over many files, from the list of files to the finished copies. */
package washbook.runner.run;
