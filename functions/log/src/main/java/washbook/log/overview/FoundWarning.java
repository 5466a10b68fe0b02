package washbook.log.overview;

import washbook.log.language.Language;
import washbook.log.language.Message;

/**
 * A warning before it is known who reads it.
 *
 * @param row that it is about, from 0; the last reading's where it is about the batch
 * @param cell the reading that it is about; "" when it is about the batch
 * @param reason as reports tell it
 * @param noted the same for the log itself, where it must not change from day to day
 * @param source where the limit comes from
 */
record FoundWarning(
    Warning.Kind kind, int row, String cell, Message reason, Message noted, Message source) {
  Warning in(Language language) {
    return new Warning(kind, cell, reason.in(language), source.in(language));
  }

  /** What stands in the log's note column. */
  Message note(String address) {
    return Message.of("warning.note", address, kind.message(), noted, source);
  }
}
