package washbook.log.sheet;

import washbook.functions.Answer;

/**
 * A row or value that was not computed.
 *
 * @param cell address of the cell at fault, without the sheet
 * @param code for programs
 * @param reason a sentence with the value and the range
 */
public record CellRefusal(String cell, Answer.Code code, String reason) {}
