/** Why the figures that a log holds already differ from those of the pack. */
package washbook.log.audit;
