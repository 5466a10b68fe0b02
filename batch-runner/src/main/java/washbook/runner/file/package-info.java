/**
 * Files: which is which, where a result may go, how one is replaced by a finished one, and the one
 * exception that says why a file cannot be used.
 */
package washbook.runner.file;
