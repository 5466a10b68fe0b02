package washbook.log;

/**
 * Something that header and values do not settle.
 *
 * @param cell address of the cell that it is about
 * @param question what the person has to say, and how it is said in a map
 */
public record Doubt(String cell, String question) {}
