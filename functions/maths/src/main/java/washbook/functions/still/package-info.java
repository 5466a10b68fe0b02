/** What a run of a pot still yields. */
package washbook.functions.still;
