package washbook.log;

import java.util.List;

/** What was understood of one sheet; no tables means that nothing was recognised. */
public record Understanding(String sheet, List<LogTable> tables, List<Doubt> doubts) {}
