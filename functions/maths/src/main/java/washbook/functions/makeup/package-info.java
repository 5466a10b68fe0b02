/** How much sugar or water a wash needs. */
package washbook.functions.makeup;
