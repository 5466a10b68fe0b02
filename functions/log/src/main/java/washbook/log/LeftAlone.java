package washbook.log;

import washbook.log.language.Message;

/**
 * A table that is no ferment's log as far as its evidence tells: nothing is written and nobody
 * asked.
 *
 * @param cell address of the first cell of its header
 * @param why as a sentence
 */
public record LeftAlone(String cell, Message why) {}
