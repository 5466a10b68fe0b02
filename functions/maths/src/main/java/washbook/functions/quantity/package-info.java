/** The valid range of each kind of number, with the sentence that refuses what lies outside. */
package washbook.functions.quantity;
