package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import java.util.StringJoiner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.StillRun;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Strengths, temperatures and volumes as people write them, and marks beside them. */
class FiguresOfJarsTest {
  private static TestGrid grid(String text) {
    return TestGrid.of("Run", text.replace('^', '|').replace(" ;", "\n"));
  }

  /** What was read of each jar: litres, % vol and °C, or true for a strength at 20 °C. */
  private static String read(String text) {
    TestGrid grid = grid(text);
    StringJoiner told = new StringJoiner(" ");
    for (StillRun run : SheetUnderstanding.understand(grid, LogMap.parse("")).runs()) {
      JarRows rows = new JarRows(grid, run);
      for (StillRun.Part part : run.parts()) {
        for (int row : part.rows()) {
          told.add(
              !rows.read(row)
                  ? "-"
                  : String.format(
                      Locale.ROOT,
                      "%.2f/%.1f/%s",
                      rows.readLitres,
                      rows.readStrength,
                      run.isCorrected(row) ? "true" : Math.round(rows.temperatureC)));
        }
      }
    }
    return told.toString();
  }

  @Test
  void strengthAndTemperatureInOneCell() {
    assertEquals(
        "0.05/80.0/17 0.10/78.5/17 0.25/75.5/18 0.25/73.5/18 0.25/71.5/19 - - -",
        read(
            "Still ; jar^how much^strength"
                + " ; 1^50 ml^80 % at 17 °C ; 2^1 dl^78.5 % at 17 °C ; 3^25 cl^75.5º at 18º"
                + " ; 4^1/4 l^73.5 % (18 °C) ; 5^250^71.5 % at 19 °C ; 6^250 ml^69 %"
                + " ; 7^half a bottle^66 % at 19 °C ; 8^250 ml^about 56 at 20 °C"));
  }

  /** The calibration and the temperature that stand between the header and the first jar count. */
  @Test
  void linesUnderTheHeader() {
    TestGrid grid =
        grid(
            "Flacon^Volume (ml)^Degré lu (% vol)^Temp. alcool (°C)^Coupe"
                + " ; Alcoomètre gradué à 15 °C ; 1^100^79^13^Têtes ; 2^250^77^14^Coeur"
                + " ; 3^250^76^14^Coeur ; 4^250^60^15^Queues");
    StillRun run = SheetUnderstanding.understand(grid, LogMap.parse("")).runs().get(0);
    assertEquals(15, run.settings().calibrationC(), 1e-9);
  }

  /** A comma before three digits is one of thousands: nobody reads a thousandth of a millilitre. */
  @Test
  void millilitresWithAMarkOfThousands() {
    assertEquals(
        "0.40/77.0/18 1.00/75.0/18 1.00/72.1/18 1.25/67.2/18",
        read(
            "Still, all spirit read at 18 °C ; No.^mL^ABV^cut ; 1^400^77.0^heads ; 2^1,000^75.0^hearts"
                + " ; 3^1,000^72.1^hearts ; 4^1,250^67.2^tails"));
  }

  /** A bare number takes the unit of its column only where it lies among those that have it. */
  @Test
  void aNumberFarFromTheOthersHasNoUnit() {
    String jars =
        "Still, spirit at 18 °C ; jar^how much^abv ; 1^50 ml^60 ; 2^100 ml^50 ; 3^80 ml^40 ; 4^";
    assertEquals(4, read(jars + "70^30").split(" ").length);
    assertEquals(
        "ask.volumeUnit",
        SheetUnderstanding.understand(grid(jars + "0.5^30"), LogMap.parse(""))
            .doubts()
            .get(0)
            .asked()
            .key());
  }

  @Test
  void degreesOverAndUnderProof() {
    assertEquals(
        "0.75/72.6/16 1.00/62.9/16 1.00/58.3/17 1.00/54.9/17",
        read(
            "Still, hydrometer at 60 F ; bottle^cl^strength^F"
                + " ; 1^75^27 o.p.^60 ; 2^100^10 o.p.^\" ; 3^100^2 op^62 ; 4^100^4 u.p.^\""));
  }

  @Test
  void strengthsOfOneAtMostAreShares() {
    assertEquals(
        "0.50/60.0/18 0.50/50.0/18 0.50/40.0/18 0.50/30.0/18",
        read(
            "Still, spirit at 18 °C ; jar^ml^abv ; 1^500^0.6 ; 2^500^0.5 ; 3^500^0.4 ; 4^500^0.3"));
  }

  /** A map that is written of a log reads back, and says of weak strengths what they are. */
  @Test
  void aMapNamesShares() {
    TestGrid grid =
        grid(
            "Still, spirit at 18 °C ; jar^ml^abv ; 1^500^0.1 ; 2^500^0.09 ; 3^500^0.02 ; 4^500^0.01");
    String map = "header row = 2\nrun = yes\ncolumn C = STRENGTH in SHARE\n";
    StillRun run = SheetUnderstanding.understand(grid, LogMap.parse(map)).runs().get(0);
    JarRows rows = new JarRows(grid, run);
    assertEquals(true, rows.read(2));
    assertEquals(10, rows.readStrength, 1e-9);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "x = abv corrected to 20 °C; no x = abv as read",
        "x = abv corrected to 20 °C",
      })
  void aTickSaysWhichStrengthsAreCorrected(String line) {
    assertEquals(
        "0.50/60.0/true 0.50/50.0/true 0.50/40.0/16 -",
        read(
            "Still ; "
                + line.replace(';', ',')
                + " ; jar^T spirit^abv^at 20°^ml"
                + " ; 1^15^60^x^500 ; 2^15^50^x^500 ; 3^16^40^^500 ; 4^^30^^500"));
  }

  @ParameterizedTest
  @CsvSource({"read,at", "measured,bei", "gemessen,C"})
  void theReadingIsTakenWhereTheKeepersOwnStandsBesideIt(String read, String at) {
    assertEquals(
        "0.50/75.0/24 0.50/70.0/25 0.50/65.0/26 0.50/60.0/27",
        read(
            "Still ; no^ml^"
                + read
                + "^"
                + at
                + "^makes 20°"
                + " ; 1^500^75^24^73.7 ; 2^500^70^25^68.3 ; 3^500^65^26^62.9 ; 4^500^60^27^57.5"));
  }

  /** The sum of a cut stands below its jars and is none itself. */
  @Test
  void aCutWithTheSumOfItsJarsIsNoJar() {
    assertEquals(
        "0.10/70.0/16 0.15/68.0/16 0.40/60.0/17 0.40/50.0/18",
        read(
            "Still ; note^abv^spirit °C^quantity"
                + " ; ^70^16^100 mL ; ^68^16^150 mL ; HEADS^^^250 mL"
                + " ; ^60^17^0.4 L ; ^50^18^400 mL ; HEARTS^^^800 mL"));
  }

  @Test
  void aNoteThatSpeaksOfAllIsNoSumAndATotalCutShortIsOne() {
    assertEquals(
        "0.50/60.0/18 0.50/50.0/18 0.50/40.0/18",
        read(
            "Still, spirit at 18 °C ; jar^ml^abv^note"
                + " ; 1^500^60^ ; 2^500^50^ ; 3^500^40^the end, all of it kept ; tot. hill^1500^^"));
  }

  @Test
  void aColumnOfRunningNumbersHoldsNoVolumes() {
    assertEquals(
        "0.50/60.0/18 0.50/50.0/18 0.50/40.0/18 0.50/30.0/18",
        read("Still, spirit at 18 °C ; v.^cc^abv ; 1^500^60 ; 2^500^50 ; 3^500^40 ; 4^500^30"));
  }
}
