package washbook.log;

import java.util.Optional;
import java.util.OptionalDouble;
import washbook.log.language.Message;
import washbook.log.words.ReadingScale;

/** The gravity of a wash before the ferment, SG 20/20, with where it comes from. */
public sealed interface OriginalGravity {

  /** SG 20/20; empty when it is not known. */
  OptionalDouble gravity();

  /** Address of the cell that it comes from or that leaves it open, "" when there is none. */
  String cell();

  /** Where it comes from, or why it is not known, as a sentence. */
  Message why();

  /**
   * The log or its map states it.
   *
   * @param number the number in the cell where a formula can refer to it
   */
  record Stated(double sg, String cell, Message why, Optional<StatedNumber> number)
      implements OriginalGravity {
    @Override
    public OptionalDouble gravity() {
      return OptionalDouble.of(sg);
    }
  }

  /**
   * The corrected first reading.
   *
   * @param row the row of that reading, from 0
   */
  record FirstReading(double sg, String cell, int row) implements OriginalGravity {
    @Override
    public OptionalDouble gravity() {
      return OptionalDouble.of(sg);
    }

    @Override
    public Message why() {
      return Message.of("from.first", cell);
    }
  }

  /** Nothing states it, or what does cannot be used. */
  record Unknown(String cell, Message missing) implements OriginalGravity {
    @Override
    public Message why() {
      return missing;
    }

    @Override
    public OptionalDouble gravity() {
      return OptionalDouble.empty();
    }
  }

  /** A number in a cell of its own, as it stands there. */
  record StatedNumber(double shown, ReadingScale scale) {}
}
