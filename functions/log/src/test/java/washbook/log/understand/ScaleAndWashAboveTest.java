package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.BitSet;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.StatedWash;
import washbook.log.language.Message;
import washbook.log.layout.Header;
import washbook.log.layout.Headers;
import washbook.log.layout.TableRows;
import washbook.log.sheet.TestGrid;
import washbook.log.words.ReadingScale;

/** Which wash stands above a table, where, and on which scales its readings can stand. */
class ScaleAndWashAboveTest {
  private static TestGrid grid(String text) {
    return TestGrid.of("Cellar", text.replace('^', '|').replace(" ;", "\n"));
  }

  /** The kind stands after the label's mark or in the cell to its right, up to the last column. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Wash: sugar ! SUGAR A1",
        "Wash = sugar ! SUGAR A1",
        "Wash^sugar ! SUGAR A1",
        "Wash:^sugar ! SUGAR A1",
        "Note^Wash^sugar ! SUGAR B1",
        "Note^Wash: sugar ! SUGAR B1",
        "^^Wash^sugar ! SUGAR C1",
        "Wash ; sugar ! none",
        "Wash:^5^sugar ! none",
        "Wash ! none",
        "Wash: ! none",
        ": sugar ! none",
        "Cask: sugar ! none",
        "Cask^sugar ! none",
        "Sugar wash ! SUGAR A1",
        "Cask^Sugar wash ! SUGAR B1",
        // a label says more than a title, and of two kinds neither is meant
        "Sugar wash ; Wash: sugar ! SUGAR A2",
        "Wash: sugar ; Wash: honey ! none",
        "Wash: sugar ; Wash: sugar ! SUGAR A2",
      })
  void theKindOfWashIsReadBesideItsLabel(String above, String expected) {
    TestGrid grid = grid(above);
    StatedWash stated = WashAbove.stated(grid, 0, grid.rowCount() - 1, 0, grid.columnCount() - 1);
    assertEquals(
        expected, stated.isStated() ? stated.kind().word() + " " + cell(grid, stated) : "none");
  }

  private static String cell(TestGrid grid, StatedWash stated) {
    for (int row = 0; row < grid.rowCount(); row++) {
      for (int column = 0; column < grid.columnCount(); column++) {
        if (stated.equals(
            new StatedWash(stated.kind(), Message.of("from.cell", grid.address(row, column))))) {
          return grid.address(row, column);
        }
      }
    }
    return "nowhere";
  }

  /** The values alone leave these scales to be asked about. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "1.085 1.05 1.01 ! SG GCM3",
        "1085 1050 1010 ! SG KGM3",
        "1187 1050 1010 ! SG KGM3",
        "1190 1050 1010 ! SG",
        "1191 1050 1010 ! ''",
        "85 50 10 ! OECHSLE",
        "189 50 10 ! OECHSLE",
        "191 50 10 ! ''",
        "40 20 5 ! BRIX OECHSLE",
        "21.5 12 0.4 ! BRIX OECHSLE BAUME KMW",
        "21.5 12 -2 ! BRIX OECHSLE BAUME KMW",
        "9.9 5 1 ! BRIX BAUME KMW",
        "10 5 1 ! BRIX OECHSLE BAUME KMW",
      })
  void scalesThatTheValuesCanStandOn(String values, String scales) {
    TestGrid grid = grid("Reading^Temp C ; " + values.replace(" ", "^20 ; ") + "^20");
    Header header = new Headers(grid).find().get(0);
    TableRows rows = new TableRows(grid, header, grid.rowCount(), new BitSet());
    ColumnValues column = ColumnValues.of(grid, rows, 0);
    assertEquals(scales, names(ScaleAbove.fitting(column)));
  }

  private static String names(List<ReadingScale> scales) {
    return scales.stream().map(ReadingScale::name).collect(Collectors.joining(" "));
  }
}
