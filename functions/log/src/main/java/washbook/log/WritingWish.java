package washbook.log;

import java.util.Optional;
import washbook.log.language.Language;

/**
 * What a map says of how a log is written into and when it is worth a warning.
 *
 * @param language of headers and notes; empty for that of the log's own words
 * @param scale of the corrected reading; empty for that of the log's readings
 * @param warned whether warnings are written into its notes
 * @param limits when a batch of it is worth a warning
 */
public record WritingWish(
    Optional<Language> language,
    Optional<WrittenScale> scale,
    boolean warned,
    WarningLimits limits) {
  /** Nothing said: in the log's own language, on its own scale. */
  public static final WritingWish NONE =
      new WritingWish(Optional.empty(), Optional.empty(), true, WarningLimits.usual());
}
