package washbook.functions.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.Calls;
import washbook.functions.ReferenceTable;
import washbook.functions.ReferenceTable.Row;
import washbook.functions.liquid.SucroseSolution;

/** NBS Circular C440 (1942), corrections to Brix hydrometers; AOAC 932.14; from memory. */
class HydrometerTest {
  static Stream<Row> rows() {
    return ReferenceTable.read("nbs-c440-brix-corrections.csv", 25).rows().stream();
  }

  /** The table has two digits. */
  private static final double TABLE_ROUNDING = 0.005;

  /** The table itself is uneven between 5 and 20 °Bx in its warm rows, 35 °C and above. */
  private static double tolerance(double temperatureC) {
    return temperatureC < 10 ? 0.10 : temperatureC <= 30 ? 0.03 : 0.05;
  }

  @ParameterizedTest
  @MethodSource("rows")
  void correctionsMeetTheTable(Row row) {
    double temperatureC = row.number("temperature_c");
    double tolerance = TABLE_ROUNDING + tolerance(temperatureC);
    int checked = 0;
    for (String column : row.columns().subList(1, row.columns().size())) {
      double reading = Double.parseDouble(column);
      double published = row.number(column);
      double corrected = Calls.value("CORRECTEDBRIX", reading, temperatureC);
      assertEquals(published, corrected - reading, tolerance, reading + " at " + temperatureC);
      double gravity = SucroseSolution.gravity(reading);
      if (gravity <= 1.190) {
        double byGravity =
            SucroseSolution.brix(Calls.value("CORRECTEDGRAVITY", gravity, temperatureC));
        assertEquals(published, byGravity - reading, tolerance, gravity + " at " + temperatureC);
      }
      checked++;
    }
    assertEquals(14, checked);
  }

  /** Before it ferments a wash is a sugar solution, whatever its temperature. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 4, 10, 15.5, 20, 27, 40, 60})
  void anUnfermentedWashIsCorrectedAsSugar(double temperatureC) {
    for (double reading = 1.005; reading <= 1.15; reading += 0.005) {
      double asSugar = Calls.value("CORRECTEDGRAVITY", reading, temperatureC);
      double asWash = Calls.value("CORRECTEDGRAVITY", reading, temperatureC, 20, asSugar);
      assertEquals(asSugar, asWash, 0, reading + " at " + temperatureC);
    }
  }
}
