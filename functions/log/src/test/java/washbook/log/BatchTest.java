package washbook.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.language.Language;
import washbook.log.language.Message;

/** The original gravity of a batch, also of one that was fed. */
class BatchTest {
  private static final Message MISSING = Message.of("why.volume", "D6");
  private static final Batch PLAIN =
      new Batch(
          "Plum 3",
          new int[] {3, 4, 6, 7},
          new OriginalGravity.FirstReading(1.065, "B4", 3),
          OptionalDouble.empty());
  private static final Batch FED =
      PLAIN.fed(
          List.of(
              new Batch.Step(1, OptionalDouble.of(1.08), Message.NONE),
              new Batch.Step(3, OptionalDouble.empty(), MISSING)));

  /** From the row of an addition on, everything put in by then counts. */
  @ParameterizedTest
  @CsvSource({"3, 0, 1.065", "4, 1, 1.08", "6, 1, 1.08", "7, 2, NaN"})
  void eachRowHasTheOriginalGravityOfWhatWasPutInByThen(int row, int begun, double gravity) {
    assertEquals(begun, FED.stepsBegunAt(row));
    assertEquals(gravity, FED.originalGravity(begun).orElse(Double.NaN));
    assertEquals(begun == 2 ? MISSING : Message.NONE, FED.originalGravityMissing(begun));
    assertEquals(0, PLAIN.stepsBegunAt(row));
    assertEquals(1.065, PLAIN.originalGravity(0).orElseThrow());
  }

  @Test
  void stepsBegunBeforeAreNotCountedAgain() {
    assertEquals(1, FED.stepsBegun(2, 1));
    assertEquals(2, FED.stepsBegun(3, 1));
    assertEquals(2, FED.stepsBegun(9, 0));
  }

  @Test
  void theWholeBatchHasThatOfItsLastStep() {
    assertTrue(FED.isFed());
    assertFalse(PLAIN.isFed());
    assertEquals(OptionalDouble.empty(), FED.originalGravity());
    assertEquals(1.065, PLAIN.originalGravity().orElseThrow());
    assertEquals("first reading, B4, corrected", PLAIN.originalGravityWhy().in(Language.EN));
    assertEquals(
        "first reading, B4, corrected; from then on that of everything put in",
        FED.originalGravityWhy().in(Language.EN));
  }

  @Test
  void onlyTheRowOfTheFirstReadingIsWhereItComesFrom() {
    assertTrue(PLAIN.isFirstReading(3));
    assertFalse(PLAIN.isFirstReading(4));
    OriginalGravity stated =
        new OriginalGravity.Stated(1.085, "B1", Message.of("from.cell", "B1"), Optional.empty());
    Batch batch = new Batch("Plum 3", new int[] {3}, stated, OptionalDouble.empty());
    assertFalse(batch.isFirstReading(3));
    assertEquals(1.085, batch.originalGravity().orElseThrow());
    assertEquals("stated in B1", batch.originalGravityWhy().in(Language.EN));
  }

  @Test
  void whatIsNotKnownSaysWhy() {
    OriginalGravity unknown = new OriginalGravity.Unknown("B1", Message.of("why.two"));
    Batch batch = new Batch("Plum 3", new int[] {3}, unknown, OptionalDouble.empty());
    assertEquals(OptionalDouble.empty(), batch.originalGravity());
    assertEquals(
        "the log states two original gravities", batch.originalGravityWhy().in(Language.EN));
    assertEquals(Message.of("why.two"), batch.originalGravityMissing(0));
    assertEquals(Message.NONE, PLAIN.originalGravityMissing(0));
  }
}
