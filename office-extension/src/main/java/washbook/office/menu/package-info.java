/** The commands of the menu on an open sheet. */
package washbook.office.menu;
