/** Interface, configuration and help of the add-in, written from the catalogue while building. */
package washbook.office.generate;
