/** What is said to people, in each of the languages that logs are kept in. */
package washbook.log.language;
