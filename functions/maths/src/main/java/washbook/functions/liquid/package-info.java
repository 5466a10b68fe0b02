/** Physical models of the liquids in the trade, each with its published source and its limits. */
package washbook.functions.liquid;
