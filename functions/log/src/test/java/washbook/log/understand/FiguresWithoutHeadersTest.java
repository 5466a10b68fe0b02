package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.log.Doubt;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;

/** What is offered for figures that fall as a ferment's do and have no headers. */
class FiguresWithoutHeadersTest {
  private static String told(String name, String log) {
    Understanding sheet =
        SheetUnderstanding.understand(
            TestGrid.of(name, log.replace('^', '|').replace(" ;", "\n")), LogMap.none());
    return sheet.doubts().stream()
        .map(FiguresWithoutHeadersTest::told)
        .collect(Collectors.joining(" and "));
  }

  private static String told(Doubt doubt) {
    return doubt.cell()
        + doubt.answers().stream()
            .map(a -> (a.isExample() ? " such as " : " ") + String.join(", ", a.lines()))
            .collect(Collectors.joining());
  }

  /** Columns beside the figures are offered by what stands over or in them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "cider ; 1.085 ; 1.07 ; 1.05 ; 1.03 ; 1.01 !"
            + " A2 such as header row = 1, column A = GRAVITY in SG",
        "cider, corrected ; 1.085 ; 1.07 ; 1.05 ; 1.03 ; 1.01 !"
            + " A2 header row = 1, column A = GRAVITY in SG",
        "cider ; 1.085^20 ; 1.07^21 ; 1.05^22 ; 1.03^21 ; 1.01^20 !"
            + " A2 header row = 1, column A = GRAVITY in SG, column B = TEMPERATURE in C",
        "cider ; 1.085^20 ; 1.07^ ; 1.05^22 ; 1.03^21 ; 1.01^20 !"
            + " A2 header row = 1, column A = GRAVITY in SG, column B = TEMPERATURE in C",
        "cider ; 1.085^20 ; 1.07^ ; 1.05^ ; 1.03^21 ; 1.01^20 !"
            + " A2 such as header row = 1, column A = GRAVITY in SG",
        "cider ; 1.085^3 ; 1.07^45 ; 1.05^22 ; 1.03^21 ; 1.01^20 !"
            + " A2 header row = 1, column A = GRAVITY in SG, column B = TEMPERATURE in C",
        "cider ; 1.085^2 ; 1.07^46 ; 1.05^22 ; 1.03^21 ; 1.01^20 !"
            + " A2 such as header row = 1, column A = GRAVITY in SG",
        "cider ; 1.085^20^18 ; 1.07^21^19 ; 1.05^22^18 ; 1.03^21^17 ; 1.01^20^18 !"
            + " A2 header row = 1, column A = GRAVITY in SG, column B = TEMPERATURE in C",
        "cider ; 20^1.085 ; 21^1.07 ; 22^1.05 ; 21^1.03 ; 20^1.01 !"
            + " B2 such as header row = 1, column B = GRAVITY in SG",
        // a word over it
        "T^cider ; 20^1.085 ; 21^1.07 ; 22^1.05 ; 21^1.03 ; 20^1.01 !"
            + " B2 header row = 1, column B = GRAVITY in SG, column A = TEMPERATURE",
        // dates left of them
        "cider ; 1 Oct 2025^1.085 ; 3 Oct 2025^1.07 ; 5 Oct 2025^1.05 ; 7 Oct 2025^1.03"
            + " ; 9 Oct 2025^1.01 !"
            + " B2 such as header row = 1, column B = GRAVITY in SG, column A = DATE",
        // dates alone, the newest first, fall too
        "cidre, température ; 9.10.^1.01 ; 7.10.^1.03 ; 5.10.^1.05 ; 3.10.^1.07 ; 1.10.^1.085 !"
            + " B2 such as header row = 1, column B = GRAVITY in SG, column A = DATE",
        // the instrument above them
        "cider ; refractometer ; 20 ; 16 ; 12 ; 8 ; 7 !"
            + " A3 header row = 2, column A = REFRACTOMETER in BRIX",
        "Maische ; Refraktometer und Spindel ; 20 ; 16 ; 12 ; 8 ; 4 !"
            + " A3 such as header row = 2, column A = GRAVITY in BRIX",
        // vessels beside one another
        "cider ; 1.085^1.08 ; 1.07^1.07 ; 1.05^1.06 ; 1.03^1.04 ; 1.01^1.01 ! A2 such as"
            + " header row = 1, column A = GRAVITY in SG, column B = GRAVITY in SG",
        "cider ; 20^16 ; 16^14 ; 12^12 ; 8^8 ; 4^4 ! A2 such as"
            + " header row = 1, column A = GRAVITY in BRIX, column B = GRAVITY in BRIX",
        "cider ; 20^12 ; 16^11 ; 12^10 ; 8^8 ; 4^4 ! A2 such as"
            + " header row = 1, column A = GRAVITY in BRIX, column B = GRAVITY in BRIX",
        // the newest first
        "cider ; 1.01 ; 1.03 ; 1.05 ; 1.07 ; 1.085 !"
            + " A2 such as header row = 1, column A = GRAVITY in SG",
        // the scale by its size
        "cider ; 46 ; 40 ; 30 ; 20 ; 10 !"
            + " A2 such as header row = 1, column A = GRAVITY in OECHSLE",
        "cider ; 45 ; 40 ; 30 ; 20 ; 10 !"
            + " A2 such as header row = 1, column A = GRAVITY in BRIX",
      })
  void columnsAreOffered(String log, String told) {
    assertEquals(told, told("Cellar", log));
  }

  /** How far and how steadily figures must fall. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "20,16,14,13,12 ! A2",
        "20,16,14,13,12.1 ! ''",
        "200,160,120,80,40 ! A2",
        "5,4,3,2,1 ! A2",
        "20,16,17,8,4 ! ''",
        "20,16,17,12,8,6,4 ! A2",
        "20,16,17,12,8,9,4 ! ''",
        "100,95,90,85,80,75,80,70,65,60,55,50,45,40,35,30,25,28,20,10 ! A2",
        "100,95,90,85,80,75,80,70,65,60,55,50,45,40,35,30,25,28,10 ! ''",
        "20,16,12,8 ! ''",
        "1085,1070,1050,1030,1010 ! A2",
        "1.085,1.07,1.05,1.03,1 ! A2",
        "1.085,1.07,25,1.05,1.03,1.01 ! A2",
      })
  void figuresFall(String figures, String cell) {
    assertEquals(
        cell, told("Cellar", "cider ; " + figures.replace(",", " ; ")).replaceFirst(" .*", ""));
  }

  /** It must be more about a ferment than about anything else. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Cellar ! x ! ''",
        "Cider ! x ! A2",
        "Cellar ! hydrometer ! A2",
        "Cellar ! refractometer ! A2",
        "Cellar ! potential ! A2",
        "Cider ! salt ! ''",
        "Brine ! cider ! ''",
        "Cider ! cider and salt ! A2",
      })
  void theSheetSpeaksOfAFerment(String name, String line, String cell) {
    assertEquals(
        cell, told(name, line + " ; 1.085 ; 1.07 ; 1.05 ; 1.03 ; 1.01").replaceFirst(" .*", ""));
  }

  /** A number in a text is a reading where the text begins with it or is short. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "20 ! A2",
        "20 plain ! A2",
        "20 then racked off into the barrel ! A2",
        "on Monday read 20 ! A2",
        "on Monday we read 20 again ! ''",
        "7 pm 1.085 ! A2",
      })
  void aNumberInAText(String first, String cell) {
    String others = first.contains("1.085") ? " ; 1.07 ; 1.05 ; 1.03 ; 1.01" : " ; 16 ; 12 ; 8 ; 4";
    assertEquals(cell, told("Cellar", "cider ; " + first + others).replaceFirst(" .*", ""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "cider ; x^1^2^3^4^5 ; Oechsle^85^70^50^30^10 ! B3",
        "cider ; Barrel^x^1^2^3^4^5 ; Barrel^Oechsle^85^70^50^30^10 ! C3",
        "cider ; x^y^1^2^3^4^5 ; x^y^Oechsle^85^70^50^30^10 ! ''",
        "cider ; x^1^2^3^4^5 ; Blorp^85^70^50^30^10 ! ''",
        "cider ; x^1^2^3^4^5 ; Oechsle^85^70^50^30 ! ''",
      })
  void aRowOfFiguresIsAskedAboutBehindItsWord(String log, String told) {
    assertEquals(told, told("Cellar", log));
  }
}
