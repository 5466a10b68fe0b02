package washbook.log.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How readings run, batch by batch; batches are separated by a slash. */
class CourseTest {
  private static Course course(String batches) {
    List<double[]> gravities =
        Arrays.stream(batches.split("/"))
            .map(b -> Arrays.stream(b.strip().split(" +")).mapToDouble(Double::parseDouble))
            .map(DoubleStream::toArray)
            .toList();
    return new Course(gravities);
  }

  /** From four readings on: a wash of 1.030 at least, of whose extract a third is gone. */
  @ParameterizedTest
  @CsvSource({
    "1.085 1.070 1.050 1.020, true",
    "1.085 1.070 1.050, false",
    "1.060 1.055 1.050 1.039, true",
    "1.060 1.055 1.050 1.042, false",
    "1.031 1.020 1.010 1.005, true",
    "1.029 1.020 1.010 1.005, false",
    "1.175 1.150 1.120 1.100, true",
    // Sugar was fed once, and less than half of the fall came back.
    "1.060 1.030 1.040 1.010 1.000, true",
    // One of two batches is enough, one of three is not.
    "1.085 1.070 1.050 1.020 / 1.05 1.05 1.05 1.05 1.05, true",
    "1.085 1.07 1.05 1.02 / 1.060 1.045 1.068 1.050 1.063 / 1.060 1.045 1.068 1.050 1.063, false",
  })
  void runsAsAFerment(String batches, boolean like) {
    assertEquals(like, course(batches).isLikeFerment());
  }

  /** One reading in eight may stand out above both its neighbours by more than ten points. */
  @ParameterizedTest
  @CsvSource({
    "1.085 1.070 1.150 1.050 1.020, true",
    "1.085 1.150 1.070 1.160 1.050 1.020, false",
    "1.085 1.150 1.070 1.06 1.05 1.160 1.04 1.03 1.02 1.01, true",
  })
  void aSlipOfThePenDoesNotHideIt(String batch, boolean like) {
    assertEquals(like, course(batch).isLikeFerment());
  }

  /** Up and down again, or six readings that stay. */
  @ParameterizedTest
  @CsvSource({
    "1.060 1.045 1.068 1.050 1.063, true",
    "1.05 1.05 1.05 1.05 1.05 1.05, true",
    "1.05 1.05 1.05 1.05 1.05, false",
    "1.085 1.070 1.050 1.020, false",
    "1.085 1.070 1.050 1.020 / 1.060 1.045 1.068 1.050 1.063, true",
    "1.060 1.045 1.068, false",
  })
  void runsAsAnythingElse(String batches, boolean unlike) {
    assertEquals(unlike, course(batches).isUnlike());
  }

  /** A wash of 1.030 to 1.135 whose few readings do not rise. */
  @ParameterizedTest
  @CsvSource({
    "1.085, true",
    "1.085 1.084, true",
    "1.085 1.084 1.083 1.083 1.083, true",
    "1.085 1.095, false",
    "1.031, true",
    "1.029, false",
    "1.134, true",
    "1.136, false",
    "1.085 1.084 / 1.060 1.045 1.068 1.050 1.063, false",
  })
  void mayHaveBegun(String batches, boolean begun) {
    assertEquals(begun, course(batches).mayHaveBegun());
  }

  @ParameterizedTest
  @CsvSource({
    "1.060 1.039, true",
    "1.060 1.042, false",
    "1.060 1.070 1.030, false",
    "1.136 1.050, false",
    "1.060 1.050 1.039 1.038, false",
    "1.060 1.039 / 1.060 1.045 1.068 1.050 1.063, false",
  })
  void fallsInTwoOrThreeReadings(String batches, boolean falls) {
    assertEquals(falls, course(batches).fallsShortly());
  }

  @ParameterizedTest
  @CsvSource({
    "1.085 / 1.070 / 1.050, true",
    "1.085 / 1.070, false",
    "1.085 / 1.070 / 1.050 1.040, false",
  })
  void eachRowIsAnotherThing(String batches, boolean each) {
    assertEquals(each, course(batches).isOneEach());
  }

  /** Lighter than any wash or heavier than any must; a few of them are slips. */
  @ParameterizedTest
  @CsvSource({
    "0.90 0.91 0.92 1.05, true",
    "0.97 1.18 1.05, false",
    "0.96 1.08 1.07 1.05 1.04 1.03, false",
    "1.19 1.19 1.07 1.05, true",
  })
  void valuesOfAnotherWorld(String batches, boolean outside) {
    assertEquals(outside, course(batches).isOutside());
  }
}
