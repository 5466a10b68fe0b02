/** What a single text in a log means: a word, a number with its unit, a date, a name. */
package washbook.log.words;
