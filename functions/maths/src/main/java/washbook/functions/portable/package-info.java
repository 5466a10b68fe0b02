/** Calls of the pack in the text of a formula, with plain arithmetic put in their place. */
package washbook.functions.portable;
