package washbook.log.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Words of other things that stand in the logs of a ferment too. */
class OtherThingsTest {
  private static int tables(String text) {
    TestGrid grid = TestGrid.of("Sheet1", text);
    return SheetUnderstanding.understand(grid, LogMap.none()).tables().size();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "fill in the yellow cells", "Yellow cells: fill in", "gelbe Zellen ausf\u00fcllen",
        "cellules jaunes \u00e0 remplir", "celdas amarillas", "compilare le celle gialle",
        "preencher as c\u00e9lulas amarelas", "vul de gele cellen in", "vul die geel selle in"
      })
  void aRemarkAboutTheCellsOfTheSheetTurnsNoLogAway(String remark) {
    assertEquals(1, tables(remark + "\nDay | SG | Temp C\n0 | 1.085 | 20"));
    assertEquals(
        1,
        tables(
            remark
                + "\n"
                + "Day | SG | Temp C\n"
                + "0 | 1.085 | 20\n"
                + "1 | 1.07 | 20\n"
                + "2 | 1.05 | 20\n"
                + "3 | 1.03 | 20"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Battery V",
        "Battery (%)",
        "Signal (dBm)",
        "Voltage",
        "Signal strength",
        "Glucose strip",
        "Humidity %",
        "Batterie",
        "Akku",
        "Spannung",
        "Tension",
        "Voltaje",
        "Tensione",
        "Accu"
      })
  void aColumnOfASensorOrAStripTurnsNoLogAway(String header) {
    assertEquals(
        1,
        tables(
            "Timestamp | Gravity | Temp C | "
                + header
                + "\n#2026-11-02 | 1.085 | 20 | 4.1\n#2026-11-03 | 1.07 | 20 | 4.1"
                + "\n#2026-11-04 | 1.05 | 20 | 4\n#2026-11-05 | 1.03 | 20 | 4"));
  }

  @Test
  void acidOfABatteryIsStillLeftAlone() {
    TestGrid grid =
        TestGrid.of(
            "Bank",
            "Date | SG | Temp C | Battery V\n"
                + "#2026-11-02 | 1.165 | 20 | 12.4\n"
                + "#2026-11-03 | 1.15 | 20 | 12.2\n"
                + "#2026-11-04 | 1.13 | 20 | 12\n"
                + "#2026-11-05 | 1.12 | 20 | 11.9");
    Understanding understood = SheetUnderstanding.understand(grid, LogMap.none());
    assertEquals(0, understood.tables().size());
    assertTrue(understood.doubts().isEmpty());
    assertTrue(understood.leftAlone().get(0).why().in(Language.EN).contains("left alone"));
  }
}
