/** The page that tells what the menu and the functions do, among the extension's own files. */
package washbook.office.help;
