package washbook.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static washbook.log.PartsOfALogTest.column;
import static washbook.log.PartsOfALogTest.table;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.StillRun.Jar;
import washbook.log.StillRun.Jar.Strength;
import washbook.log.StillRun.Jar.Volume;

/** What holds for a single jar of a still run, and what holds for all of them. */
class StillRunTest {
  private static StillRun run(boolean corrected, Map<Integer, Jar> jars) {
    return new StillRun(
        table(column(1, Role.STRENGTH)),
        List.of(),
        new StillRun.Settings(20, corrected, true, 15, 1013),
        jars);
  }

  /** A jar that says nothing of itself is as the table says. */
  @ParameterizedTest
  @CsvSource({
    "LIKE_ALL, true, true, STRENGTH",
    "LIKE_ALL, false, false, STRENGTH",
    "READ, true, false, STRENGTH",
    "READ, false, false, STRENGTH",
    "TRUE, true, true, STRENGTH",
    "TRUE, false, true, STRENGTH",
    "OWN_TRUE, false, true, OWN_TRUE_STRENGTH",
    "OWN_TRUE, true, true, OWN_TRUE_STRENGTH",
    "UNTOLD, true, true, STRENGTH",
    "UNTOLD, false, false, STRENGTH",
  })
  void theStrengthOfAJarIsReadOrTrue(
      Strength strength, boolean allCorrected, boolean corrected, Role role) {
    Jar jar = new Jar(strength, 18, Volume.ITS_OWN, -1);
    StillRun run = run(allCorrected, Map.of(4, jar));
    assertEquals(jar, run.jar(4));
    assertEquals(corrected, run.isCorrected(4));
    assertEquals(role, run.strengthRole(4));
    assertEquals(allCorrected, run.isCorrected(5));
    assertEquals(Role.STRENGTH, run.strengthRole(5));
    assertEquals(Jar.LIKE_ALL, run.jar(5));
  }

  @Test
  void aRunWhoseJarsAreAlikeHasNoneOfItsOwn() {
    StillRun run =
        new StillRun(
            table(column(1, Role.STRENGTH)),
            List.of(),
            new StillRun.Settings(20, true, true, 15, 1013));
    assertEquals(Jar.LIKE_ALL, run.jar(0));
    assertTrue(run.isCorrected(0));
    assertEquals(Volume.ITS_OWN, run.jar(0).volume());
  }
}
