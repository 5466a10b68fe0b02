/** How far tables, filters, print areas and rules reach when columns come in beside them. */
package washbook.runner.extent;
