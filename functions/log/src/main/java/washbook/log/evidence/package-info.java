/** Weighs whether a table is the log of a ferment at all, before anything in it is computed. */
package washbook.log.evidence;
