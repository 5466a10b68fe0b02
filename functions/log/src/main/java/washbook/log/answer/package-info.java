/** What would follow from an answer to a question about a log. */
package washbook.log.answer;
