package washbook.functions;

/** What a call of a function gives: a finite number, a text, or a refusal with its reason. */
public sealed interface Answer {

  /** A finite number. */
  record Number(double value) implements Answer {
    public Number {
      if (!Double.isFinite(value)) {
        throw new IllegalArgumentException("not finite: " + value);
      }
    }
  }

  /** A text. */
  record Text(String text) implements Answer {}

  /** A sentence for people, as a function that explains gives it. */
  record Told(Sentence told) implements Answer {}

  /** No result: {@code code} for programs, {@code told} for people. */
  record Refusal(Code code, Sentence told) implements Answer {
    /** The reason in English. */
    public String reason() {
      return told.english();
    }
  }

  /** Why a call is refused. */
  enum Code {
    /** Nothing was given where something is needed. */
    BLANK,
    /** The value cannot be read as a number. */
    NOT_A_NUMBER,
    /** Below the valid range. */
    TOO_LOW,
    /** Above the valid range. */
    TOO_HIGH,
    /** Each value is possible, but not together. */
    CONTRADICTION,
    /** A word that is not on the function's list. */
    UNKNOWN_WORD
  }
}
