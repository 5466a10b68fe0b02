/** One quantity on another scale, as sugar in degrees Brix and as specific gravity. */
package washbook.functions.scale;
