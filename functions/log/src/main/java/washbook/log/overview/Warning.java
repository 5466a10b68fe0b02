package washbook.log.overview;

import washbook.log.language.Message;

/**
 * Something about a batch that a person should look at. The names of the components are those of
 * the JSON report.
 *
 * @param kind for programs
 * @param cell the reading that it is about, without the sheet; "" when it is about the batch
 * @param reason a sentence with the value and the limit
 * @param source where the limit comes from
 */
public record Warning(Kind kind, String cell, String reason, String source) {
  /** What is wrong. */
  public enum Kind {
    /** The gravity has stopped falling above its expected end. */
    STUCK("stuck"),
    /** It has not begun to fall. */
    NOT_FALLING("not falling"),
    TOO_WARM("too warm"),
    TOO_COLD("too cold"),
    /** It works and has not been read for days. */
    OVERDUE("reading overdue"),
    ABOVE_PLAN("above plan"),
    /** A reading far off its neighbours or the fitted course. */
    SUSPICIOUS("suspicious reading");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }

    /** What a person reads. */
    public Message message() {
      return Message.of("warning.kind." + name());
    }
  }
}
