/** Strength, volume or mass of a mixture of ethanol with water. */
package washbook.functions.spirit;
