/** What an instrument shows, corrected to what it would show under its own conditions. */
package washbook.functions.reading;
