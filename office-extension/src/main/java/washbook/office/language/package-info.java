/** What the extension says, in the language of the office. */
package washbook.office.language;
