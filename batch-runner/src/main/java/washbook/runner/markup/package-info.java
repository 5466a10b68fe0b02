/** XML as bytes, with new pieces put in between the old ones. */
package washbook.runner.markup;
