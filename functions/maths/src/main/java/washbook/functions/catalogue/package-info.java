/** The one list of functions, from which add-in, command line and reference page are made. */
package washbook.functions.catalogue;
