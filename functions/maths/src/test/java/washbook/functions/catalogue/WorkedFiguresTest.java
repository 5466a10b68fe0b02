package washbook.functions.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Answer;

/**
 * Worked figures of an independent prototype of the same formulas, to the digits it printed. It
 * printed 1080.978 and 1127.033 kg/m3 for 20 and 30 °Bx; the published coefficients give 1080.97747
 * and 1127.03246, so those two rows stand here as the coefficients have it.
 */
class WorkedFiguresTest {
  @ParameterizedTest
  @CsvSource({
    "CORRECTEDGRAVITY, 1.040;30, 1.04275, 5",
    "CORRECTEDGRAVITY, 1.040;30;15.555555555555555, 1.04348, 5",
    "CORRECTEDGRAVITY, 1.000;30;20;1.085, 1.00292, 5",
    "CORRECTEDGRAVITY, 1.000;30, 1.00234, 5",
    "CONVERT, 10;BRIX;KGM3, 1038.115, 3",
    "CONVERT, 20;BRIX;KGM3, 1080.9775, 4",
    "CONVERT, 30;BRIX;KGM3, 1127.0325, 4",
    "CONVERT, 40;BRIX;KGM3, 1176.518, 3",
    "CONVERT, 10;BRIX;SG, 1.03998, 5",
    "CONVERT, 20;BRIX;SG, 1.08292, 5",
    "CONVERT, 30;BRIX;SG, 1.12906, 5",
    "CONVERT, 40;BRIX;SG, 1.17864, 5",
    "TRUEEXTRACT, 1.085;0.998, 3.403, 3",
    "ABV, 1.085;0.998, 11.653, 3",
    "APPARENTATTENUATION, 1.085;0.998, 102.54, 2",
    "REALATTENUATION, 1.085;0.998, 83.37, 2",
    "FERMENTATIONDEGREE, 1.085;0.998, 84.86, 2",
    "SUGARLEFT, 1.085;0.998, 33.9, 1",
    "TRUESTRENGTH, 42;25, 40.015, 3",
    "TRUESTRENGTH, 65;12, 67.658, 3",
    "DILUTIONWATER, 10;65;40, 6.441, 3",
    "DILUTEDVOLUME, 10;65;40, 16.250, 3",
    "SUGARFORGRAVITY, 20;1;1.080, 4.787, 3",
    "VOLUMEAFTERSUGAR, 20;1;4.787, 22.96, 2",
    "RUNVOLUME, 25;10;10, 7.03, 2",
    "RUNSTRENGTH, 10;10, 33.2, 1",
    "RUNRECOVERY, 10;10, 93.3, 1",
  })
  void agreesToThePrintedDigits(String name, String arguments, double expected, int digits) {
    Answer answer = Catalogue.get(name).call((Object[]) arguments.split(";"));
    double value = ((Answer.Number) answer).value();
    assertEquals(expected, value, 0.5000001 * Math.pow(10, -digits));
  }
}
