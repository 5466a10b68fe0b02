/** What the office program is told about the add-in when it is installed. */
package washbook.office;
