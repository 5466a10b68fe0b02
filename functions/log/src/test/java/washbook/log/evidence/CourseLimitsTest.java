package washbook.log.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The limits of each course, themselves included; batches are separated by a slash. */
class CourseLimitsTest {
  private static Course course(String batches) {
    List<double[]> gravities =
        Arrays.stream(batches.split("/"))
            .map(b -> Arrays.stream(b.strip().split(" +")).mapToDouble(Double::parseDouble))
            .map(DoubleStream::toArray)
            .toList();
    return new Course(gravities);
  }

  /**
   * From 1.030 to 1.180, by a third of the extract; a feed for each eight readings, at most half.
   */
  @ParameterizedTest
  @CsvSource({
    "1.030 1.020 1.010 1.005, true",
    "1.180 1.150 1.120 1.080, true",
    "1.181 1.150 1.120 1.118 1.117, false",
    "1.060 1.050 1.045 1.040, true",
    "1.060 1.040 1.050 1.030 1.040 1.020 1.010 1.000, true",
    "1.060 1.040 1.055 1.050 1.065 1.030 1.020 1.010, true",
  })
  void isAFerments(String batches, boolean like) {
    assertEquals(like, course(batches).isLikeFerment());
  }

  /** Two batches alike and one not are a ferment's log; as many of each are not. */
  @ParameterizedTest
  @CsvSource({
    "1.085 1.07 1.05 1.02 / 1.060 1.045 1.068 1.050 1.063, false",
    "1.085 1.07 1.05 1.02 / 1.06 1.04 1.02 1.01 / 1.060 1.045 1.068 1.050 1.063, true",
  })
  void isAFermentsByMostBatches(String batches, boolean like) {
    assertEquals(like, course(batches).isLikeFerment());
    assertEquals(!like, course(batches).isUnlike());
  }

  /** Three fifths of the steepest fall, at most, are the last. */
  @ParameterizedTest
  @CsvSource({
    "1.085 1.060 1.040 1.025 1.020, true",
    "1.085 1.080 1.070 1.055 1.020, false",
    "1.085 1.064 1.044 1.024 1.012, true",
    "1.085 1.064 1.044 1.024 1.011, false",
    "1.085 1.080 1.070 1.055 1.020 / 1.060 1.040 1.020 1.010 1.008, true",
  })
  void endsLevel(String batches, boolean level) {
    assertEquals(level, course(batches).levelsOff());
  }

  /**
   * Ten points at least in four readings, and nearly nothing down; single readings do not count.
   */
  @ParameterizedTest
  @CsvSource({
    "1.050 1.055 1.060 1.061, true",
    "1.050 1.055 1.058 1.059, false",
    "1.050 1.060 1.070, false",
    "1.050 1.060 1.050 1.070 1.075, false",
    "1.050 1.060 1.058 1.070 1.075, true",
    "1.050 1.055 1.060 1.070 / 1.080, true",
    "1.050 1.055 1.060 1.070 / 1.085 1.07 1.05 1.02, false",
    "1.050 1.055 1.060 1.070 / 1.050 1.055 1.060 1.070, true",
    "1.050 / 1.060, false",
  })
  void risesDayByDay(String batches, boolean rises) {
    assertEquals(rises, course(batches).rises());
  }

  /** All below 1.003, or below 1.030 and at rest through four readings. */
  @ParameterizedTest
  @CsvSource({
    "0.998, true",
    "1.0029 0.998, true",
    "1.003, false",
    "1.010 1.010 1.010 1.010, true",
    "1.010 1.010 1.010, false",
    "1.029 1.029 1.029 1.029, true",
    "1.031 1.031 1.031 1.031, false",
    "1.010 1.0095 1.010 1.009, true",
    "1.010 1.010 1.010 1.007, false",
    "1.010 1.012 1.010 1.0115, false",
    "1.010 1.010 1.010 1.010 / 1.020 1.015 1.010 1.005, false",
    "1.010 1.010 1.010 1.010 / 1.008 1.008 1.008 1.008, true",
    "0.998 / 1.010, false",
  })
  void isFinished(String batches, boolean finished) {
    assertEquals(finished, course(batches).isFinished());
  }

  /** Heavier than 1.135 a few readings do not tell; thin liquids beside it take it back. */
  @ParameterizedTest
  @CsvSource({
    "1.135 1.134, true",
    "1.030 1.029, true",
    "1.085 1.084 / 1.010 1.009, true",
    "1.085 1.084 / 1.010 1.009 / 1.008 1.007, false",
    "1.085 1.084 / 1.010 / 1.008, true",
    "1.085 1.084 / 1.016 1.015 / 1.017 1.016, true",
  })
  void mayHaveBegun(String batches, boolean begun) {
    assertEquals(begun, course(batches).mayHaveBegun());
  }

  /** Three tenths of the readings, no more, may be slips; 0.97 and 1.18 are a wash's. */
  @ParameterizedTest
  @CsvSource({
    "0.9 0.9 0.9 1.08 1.07 1.05 1.04 1.03 1.02 1.01, false",
    "0.9 0.9 0.9 0.9 1.08 1.07 1.05 1.04 1.03 1.02, true",
    "0.97 0.97 0.97, false",
    "1.18 1.18 1.18, false",
    "0.969 1.181, true",
  })
  void isOutside(String batches, boolean outside) {
    assertEquals(outside, course(batches).isOutside());
  }
}
