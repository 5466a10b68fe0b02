/** Which file is meant, and how a file comes into its place without another being lost. */
package washbook.runner.file;
