/** The file formats that the runner knows. */
package washbook.runner;
