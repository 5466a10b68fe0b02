package washbook.log.evidence;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.LogColumn;
import washbook.log.LogSettings;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.sheet.TestGrid;

/** Figures before their scale is settled, temperatures of hot work, and turns of a course. */
class RoughFiguresTest {
  /** Roughly: a degree of sugar is four points, what is more than forty is points. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      nullValues = "none",
      value = {
        "1085; Reading; ''; 1.085",
        "900; Reading; ''; 0.9",
        "1.085; Reading; ''; 1.085",
        "1.085; Gravity; SG; 1.085",
        "0.6; Gravity; GCM3; 0.6",
        "20; Reading; ''; 1.08",
        "40; Reading; ''; 1.16",
        "41; Reading; ''; 1.041",
        "85; Reading; ''; 1.085",
        "20; Gravity points; ''; 1.02",
        "1.2; Gravity points; ''; 1.0012",
        "20; Brix; BRIX; 1.0829",
        "1.2; Brix; BRIX; 1.00465",
        "85; Oechsle; OECHSLE; 1.085",
        "20; Gravity points; BRIX; 1.0829",
        "400; Brix; BRIX; 2.6",
      })
  void aFigureIsRoughlyAGravity(double value, String header, String unit, double gravity) {
    LogColumn column = new LogColumn(1, header, Role.GRAVITY, unit, Message.NONE);
    assertEquals(gravity, RoughGravity.of(value, column), 5e-5);
  }

  private static boolean hot(String unit, String temperatures) {
    TestGrid grid = TestGrid.of("x", "T\n" + temperatures.replace(",", "\n"));
    LogColumn column = new LogColumn(0, "T", Role.TEMPERATURE, unit, Message.NONE);
    return HotWork.isIn(
        grid,
        new LogTable(
            0,
            1,
            temperatures.split(",", -1).length,
            0,
            0,
            List.of(column),
            List.of(),
            LogSettings.none(),
            List.of(),
            true));
  }

  /** Most temperatures above 46 °C or below -3 °C are none of a ferment. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "C; 72,75,78; true",
        "C; 20,75,78; true",
        "C; 20,21,78; false",
        "C; 20,78; false",
        "C; 20,20,78,78,78; true",
        "C; 78,78,78,20,20; true",
        "C; 46,46; false",
        "C; 46.5,47; true",
        "C; -3,-3; false",
        "C; -4,-5; true",
        "F; 72,75,78; false",
        "F; 172,175,178; true",
        "''; 72,75,78; false",
        "''; 72 °C,75 °C,78 °C; true",
        "''; 72 °F,75 °F,78 °F; false",
        "C; 172 °F,175 °F,178 °F; true",
        "C; 72 °F,75 °F,78 °F; false",
        "C; x,,; false",
      })
  void hotWorkIsToldByItsTemperatures(String unit, String temperatures, boolean hot) {
    assertEquals(hot, hot(unit, temperatures));
  }

  private static Course course(String batches) {
    return new Course(
        Arrays.stream(batches.split("/"))
            .map(b -> Arrays.stream(b.split(",")).mapToDouble(Double::parseDouble).toArray())
            .toList());
  }

  /** One reading in eight that stands out above both its neighbours is a slip of the pen. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1.085,1.06,1.15,1.03,1.01,1.005; true",
        "1.085,1.06,1.15,1.061,1.03,1.005; true",
        "1.085,1.06,1.15,1.03,1.15,1.01,1.15,1.005; false",
        "1.085,1.06,1.03,1.04,1.06,1.05; false",
      })
  void aSlipDoesNotHideTheCourse(String readings, boolean like) {
    assertEquals(like, course(readings).isLikeFerment());
  }

  /** Sugar that was put in lets readings rise, once, and by little more than half of the fall. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1.08,1.06,1.04,1.06,1.03,1.01; true, false",
        "1.08,1.06,1.04,1.06,1.055,1.04,1.06,1.055,1.03,1.01; true, true",
        "1.08,1.06,1.04,1.06,1.055,1.04,1.06,1.055,1.04,1.06,1.055,1.01; false, true",
        "1.08,1.06,1.04,1.09,1.085,1.08; false, false",
        "1.08,1.07,1.08,1.07,1.08,1.07; false, true",
        "1.08,1.079,1.078,1.077,1.076,1.075; false, false",
      })
  void aFedCourseRisesOnce(String readings, String likeAndRose) {
    Course course = course(readings);
    assertEquals(likeAndRose, course.isLikeFerment() + ", " + course.rose());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1.085,1.06,1.03,1.01,1.005; true, true",
        "1.085,1.08,1.07,1.055,1.035; false, true",
        "1.085,1.06,1.055,1.054,1.053; true, false",
        "1.085,1.08,1.07,1.062,1.048; false, false",
      })
  void whatLevelsOffAndWhatEndsLow(String readings, String levelAndLow) {
    Course course = course(readings);
    assertEquals(levelAndLow, course.levelsOff() + ", " + course.endsLow());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "1.002,1.001,1; true",
        "1.004,1.001,1; false",
        "1.029,1.029,1.029,1.029,1.029; true",
        "1.031,1.031,1.031,1.031,1.031; false",
        "1.029,1.029,1.029,1.029,1.026; false",
        "1.029,1.029,1.029,1.029,1.029/1.02,1.01; false",
      })
  void whatIsFinished(String readings, boolean finished) {
    assertEquals(finished, course(readings).isFinished());
  }
}
