/** The runner's own texts, numbers and dates in the language of the person who reads them. */
package washbook.runner.language;
