/** How far a ferment has come, from its gravities before and now. */
package washbook.functions.ferment;
