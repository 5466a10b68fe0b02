package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Numbers;
import washbook.log.LogColumn;
import washbook.log.LogSettings;
import washbook.log.LogTable;
import washbook.log.Role;
import washbook.log.language.Message;
import washbook.log.sheet.TestGrid;

/** In which unit a log's own column of pure alcohol stands, whether it is a sum, how fine it is. */
class OwnAlcoholTest {
  private static LogColumn column(String header) {
    return new LogColumn(0, header, Role.OWN_PURE_ALCOHOL, "", Message.NONE);
  }

  private static TestGrid grid(String header, String figures) {
    return TestGrid.of("Run", header + "\n" + figures.replace(",", "\n"));
  }

  private static double[] numbers(String text) {
    return Arrays.stream(text.split(",")).mapToDouble(Double::parseDouble).toArray();
  }

  /** Four jars of two runs hold 80, 350, 300 and 200 mL. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Pure alcohol; 0.08,0.35,0.3,0.2; 1 false",
        "Pure alcohol; 80,350,300,200; 1000 false",
        "Pure alcohol; 8,35,30,20; 100 false",
        "Pure alcohol; 0.8,3.5,3,2; 10 false",
        "Pure alcohol; 80,430,300,500; 1000 true",
        "Pure alcohol; 0.08,0.43,0.3,0.5; 1 true",
        "Pure alcohol so far; 80,430,300,500; 1000 true",
        "Pure alcohol so far; 800,3500,3000,2000; none",
        // a little off is still that unit, by its header more than by its figures alone
        "Pure alcohol; 96,420,360,240; 1000 false",
        "Pure alcohol; 104,455,390,260; none",
        "Pure alcohol mL; 104,455,390,260; 1000 false",
        "Pure alcohol mL; 0.08,0.35,0.3,0.2; none",
        "Pure alcohol L; 0.08,0.35,0.3,0.2; 1 false",
        // one slip of the pen, blanks and words do not matter
        "Pure alcohol; 80,350,30,200; 1000 false",
        "Pure alcohol; 80,,300,200; 1000 false",
        "Pure alcohol; ,x,,; none",
        "Pure alcohol; 0,0,300,200; 1000 false",
      })
  void theUnitIsToldByHeaderAndFigures(String header, String figures, String told) {
    String found =
        OwnAlcohol.scale(
                grid(header, figures),
                column(header),
                new int[] {1, 2, 3, 4},
                numbers("0.08,0.35,0.3,0.2"),
                new int[] {3, 1})
            .map(scale -> Numbers.show(scale.parts()) + " " + scale.isSum())
            .orElse("none");
    assertEquals(told, found);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "80,350,300; 1",
        "80,350.5,300; 0.1",
        "0.08,0.35,0.3; 0.01",
        "0.081,0.35,0.3; 0.001",
        "0.3333333333,1,2; 0",
        "0.123456,1,2; 0.000001",
        "x,,2; 1",
      })
  void theLastPlaceIsTheFinestOfAll(String figures, double step) {
    LogTable table =
        new LogTable(
            0,
            1,
            figures.split(",").length,
            0,
            0,
            List.of(column("Pure alcohol")),
            List.of(),
            LogSettings.none(),
            List.of(),
            true);
    assertEquals(
        step,
        OwnAlcohol.step(grid("Pure alcohol", figures), column("Pure alcohol"), table),
        step / 1e6);
  }
}
