/** One call of a function from a cell, from its arguments to its answer. */
package washbook.office.call;
