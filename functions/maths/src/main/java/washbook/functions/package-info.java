/** What a calculation answers with: a number, a word, or a refusal with its reason. */
package washbook.functions;
