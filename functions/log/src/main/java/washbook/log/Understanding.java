package washbook.log;

import java.util.List;

/**
 * What was understood of one sheet; no tables means that nothing was recognised.
 *
 * @param leftAlone tables with readings that are no ferment's log as far as they tell
 */
public record Understanding(
    String sheet, List<LogTable> tables, List<Doubt> doubts, List<LeftAlone> leftAlone) {}
