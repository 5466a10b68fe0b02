package washbook.log.words;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** A batch's name is taken from the sheet; a note, a sentence or a date never is. */
class BatchNameTextTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Plum 3 | Plum 3",
        "PLUM 3 | PLUM 3",
        "Plum 3 - started 4 Nov | Plum 3",
        "MOLASSES 2 (blackstrap + raw sugar) | MOLASSES 2",
        "Molasses 2 (OG 1.098), 12 January | Molasses 2",
        "Pruim 3, begin-SG 1,084 (4 nov) | Pruim 3",
        "Sugar 4; fed | Sugar 4",
        "Suiker 4 | Suiker 4",
        "Early plum 12b | Early plum 12b",
        "Plum #3 | Plum #3",
        "Tank 2 | Tank 2",
      })
  void names(String text, String name) {
    assertEquals(name, BatchNameText.of(text));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "Plum",
        "Fermentation log",
        "Plum 3 is in the cellar",
        "we started Plum 3",
        "moved to barrel 2",
        "Moved to barrel 2",
        "Racked 3",
        "Added 2",
        "bottled 38",
        "Nov 4",
        "4 Nov",
        "Winter 2024",
        "Week 2",
        "Page 3",
        "Table 1",
        "Day 3",
        "Temp 20",
        "SG 1",
        "Hydrometer 2",
        "All samples read at 20",
        "Barrel 2,5 m up",
        "Plum 3-4",
        "1.085",
        "Yeast 71",
      })
  void isNoName(String text) {
    assertEquals("", BatchNameText.of(text));
  }

  /** Text after the word for batch, up to four words and forty letters. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Plum 3 | true",
        "12 | true",
        "#3 | true",
        "Late plums barrel two | true",
        "Plum345678901234567890123456789012345678 | true",
        "Plum3456789012345678901234567890123456789 | false",
        "Late plums of barrel two | false",
        "plum 3 | false",
        "Was racked. | false",
        "'' | false",
      })
  void followsAWordForBatch(String text, boolean may) {
    assertEquals(may, BatchNameText.mayFollow(text));
  }

  private static String name(String lines) {
    TestGrid grid =
        TestGrid.of(
            "Sheet1",
            lines
                + "\nDate | SG | Temp (°C) | Note"
                + "\n#2025-10-01 | 1.085 | 24 | Barrel 7"
                + "\n#2025-10-03 | 1.062 | 27 |");
    return SheetUnderstanding.understand(grid, LogMap.none())
        .tables()
        .get(0)
        .batches()
        .get(0)
        .name();
  }

  @Test
  void theLineThatNamesTheBatchGoesBeforeTitleAndVessel() {
    assertEquals("Plum 3", name("Batch name | Plum 3\nVessel | blue barrel"));
    assertEquals("Plum 3", name("Vessel | blue barrel\nLot | Plum 3"));
    assertEquals("Plum 3", name("Plum 3\nVessel | blue barrel"));
    assertEquals("blue barrel", name("Vessel | blue barrel"));
    assertEquals("12", name("Lot | 12"));
  }

  @Test
  void notesAndSentencesAboveAreNoNames() {
    assertEquals("Plum 3", name("Plum 3\n|\nbuy yeast before friday\nmoved to barrel 2"));
    assertEquals("Sheet1", name("The wash was pitched warm"));
    assertEquals("Sheet1", name("Wash the barrel first"));
    assertEquals("Sheet1", name("Hydrometer | Glass 2"));
    assertEquals("Sheet1", name("A quiet ferment, see page 3"));
  }
}
