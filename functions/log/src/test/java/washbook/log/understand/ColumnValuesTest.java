package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import washbook.functions.scale.TemperatureUnit;
import washbook.log.language.Language;
import washbook.log.layout.Headers;
import washbook.log.layout.TableRows;
import washbook.log.sheet.TestGrid;

/** What the values of a column can be, whatever stands over it: values.csv. */
class ColumnValuesTest {
  /** The third column of a log with these values. */
  @ParameterizedTest
  @CsvFileSource(resources = "values.csv", delimiter = '!', quoteCharacter = '`')
  void valuesAre(String values, String told) {
    assertEquals(told == null ? "" : told, told(values == null ? "" : values));
  }

  static String told(String values) {
    StringBuilder log = new StringBuilder("Day|SG|Blorp");
    int day = 0;
    for (String value : values.split(";", -1)) {
      log.append('\n').append(day).append("|1.05|").append(value.strip());
      day++;
    }
    TestGrid grid = TestGrid.of("Log", log.toString());
    TableRows rows =
        new TableRows(grid, new Headers(grid).find().get(0), grid.rowCount(), new BitSet());
    List<String> told = new ArrayList<>();
    add(told, "running", ColumnValues.areRunning(grid, rows, 2));
    add(told, "words", ColumnValues.areWords(grid, rows, 2));
    add(told, "clock", ColumnValues.areClock(grid, rows, 2));
    add(told, "days and months", ColumnValues.areDaysAndMonths(grid, rows, 2));
    add(told, "dates", ColumnValues.areDates(grid, rows, 2));
    add(told, "fractions", ColumnValues.areFractions(grid, rows, 2));
    add(told, "count", ColumnValues.countRows(grid, rows, 2));
    add(told, "with temperatures", ColumnValues.haveTemperatures(grid, rows, 2));
    ColumnValues facts = ColumnValues.of(grid, rows, 2);
    add(told, "mostly gravity", facts.mostlyGravity());
    add(told, "all gravity", facts.allGravity());
    add(told, facts.temperatureUnit().map(TemperatureUnit::name).orElse(""), true);
    add(told, facts.numbers() + " from " + facts.range().in(Language.EN), facts.numbers() > 0);
    return String.join(", ", told);
  }

  private static void add(List<String> told, String what, boolean is) {
    if (is && !what.isEmpty()) {
      told.add(what);
    }
  }
}
