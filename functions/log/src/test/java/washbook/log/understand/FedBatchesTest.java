package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Numbers;
import washbook.functions.ferment.Feeding;
import washbook.log.Batch;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;

/** From which reading on what was put in counts, and what original gravity it makes. */
class FedBatchesTest {
  private static Understanding understood(String log, String map) {
    return SheetUnderstanding.understand(
        TestGrid.of("Cellar", log.replace('^', '|').replace(" ;", "\n")),
        LogMap.parse(map == null ? "" : map.replace(" ;", "\n")));
  }

  /** Each step by the position that it holds from. */
  private static String steps(Batch batch) {
    return batch.steps().stream()
        .map(
            step ->
                step.fromPosition()
                    + ":"
                    + (step.isSlip()
                        ? "slip"
                        : step.originalGravity().isPresent()
                            ? Numbers.fixed(step.originalGravity().getAsDouble(), 4)
                            : "unknown"))
        .collect(Collectors.joining(" "));
  }

  private static String told(String log, String map) {
    Understanding sheet = understood(log, map);
    String steps =
        sheet.tables().stream()
            .flatMap(t -> t.batches().stream())
            .map(FedBatchesTest::steps)
            .collect(Collectors.joining(", "));
    return steps
        + sheet.doubts().stream().map(d -> " asks " + d.cell()).collect(Collectors.joining());
  }

  private static String fed(double litres, double kilograms, double water) {
    return Numbers.fixed(
        Feeding.original(
            new double[] {litres, water > 0 ? water : Double.NaN},
            new double[] {1.06, water > 0 ? 1 : Double.NaN},
            new double[] {kilograms}),
        4);
  }

  /** The figures of the tables below are those of what was put in. */
  @Test
  void theOriginalGravityIsThatOfEverythingPutIn() {
    assertEquals("1.0767", fed(20, 1, 0));
    assertEquals("1.0677", fed(20, 0.45359237, 0));
    assertEquals("1.0546", fed(20, 0, 2));
  }

  private static final String VOLUME = "Volume: 20 L ; ";

  /** A reading higher than the one before was taken after the sugar, another one before it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "1.06^ ; 1.03^1 ; 1.02^ ; 1.01^ ! 0:1.0600 2:1.0767",
        "1.06^ ; 1.03^ ; 1.045^1 ; 1.01^ ! 0:1.0600 2:1.0767",
        "1.06^ ; 1.03^ ; 1.0321^1 ; 1.01^ ! 0:1.0600 2:1.0767",
        "1.06^ ; 1.03^ ; 1.0319^1 ; 1.01^ ! 0:1.0600 3:1.0767",
        "1.06^ ; 1.03^1 lb ; 1.02^ ; 1.01^ ! 0:1.0600 2:1.0677",
        "1.06^ ; 1.03^1000 g ; 1.02^ ; 1.01^ ! 0:1.0600 2:1.0767",
        "1.06^ ; 1.03^0.5 ; 1.02^0.5 ; 1.01^ ! 0:1.0600 2:1.0685 3:1.0767",
        "1.06^ ; 1.03^none ; 1.02^0 ; 1.01^ ! ''",
        // up to the first reading it is in that reading already, unless the next one is higher
        "1.06^1 ; 1.03^ ; 1.02^ ; 1.01^ ! ''",
        "1.06^1 ; 1.075^ ; 1.02^ ; 1.01^ ! 0:1.0600 1:1.0767",
        "1.06^1 ; 1.0619^ ; 1.02^ ; 1.01^ ! ''",
        // without an amount
        "1.06^ ; 1.03^some ; 1.02^ ; 1.01^ ! 0:1.0600 2:unknown asks D4",
        "1.06^ ; 1.03^-1 ; 1.02^ ; 1.01^ ! 0:1.0600 2:unknown asks D4",
        "1.06^ ; 1.03^1 cup ; 1.02^ ; 1.01^ ! 0:1.0600 2:unknown asks D4",
      })
  void sugarInAColumn(String rows, String told) {
    StringBuilder log = new StringBuilder(VOLUME + "Day^SG^Temp C^Sugar added (kg)");
    int day = 0;
    for (String row : rows.split(" ; ")) {
      log.append(" ; ").append(day).append('^').append(row.replace("^", "^20^"));
      day += 3;
    }
    assertEquals(told, told(log.toString(), ""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "1.06^ ; 1.03^2 ; 1.02^ ; 1.01^ ! 0:1.0600 2:1.0546",
        "1.06^ ; 1.03^2000 ml ; 1.02^ ; 1.01^ ! 0:1.0600 2:1.0546",
        "1.06^2 ; 1.03^ ; 1.02^ ; 1.01^ ! ''",
        "1.06^ ; 1.03^some ; 1.02^ ; 1.01^ ! 0:1.0600 2:unknown asks D4",
      })
  void waterInAColumn(String rows, String told) {
    StringBuilder log = new StringBuilder(VOLUME + "Day^SG^Temp C^Water added (L)");
    int day = 0;
    for (String row : rows.split(" ; ")) {
      log.append(" ; ").append(day).append('^').append(row.replace("^", "^20^"));
      day += 3;
    }
    assertEquals(told, told(log.toString(), ""));
  }

  private static final String BARE =
      "Day^SG^Temp C^Sugar added (kg) ; 0^1.06^20^ ; 3^1.03^20^1 ; 6^1.045^20^ ; 9^1.01^20^";

  /** The volume: stated, in a column, or asked for. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "'' ! 0:1.0600 2:unknown asks D3",
        "volume = 20 L ! 0:1.0600 2:1.0767",
        "volume = 20 L ; sugar readings = before ! 0:1.0600 2:1.0767",
        "volume = 20 L ; sugar readings = after ! 0:1.0600 1:1.0767 asks B4",
        "volume = 20 L ; sugar added at row 3 = 0 KG ! 0:1.0600 2:slip 3:1.0600",
        "volume = 20 L ; sugar added at row 3 = 1 LB ! 0:1.0600 2:1.0677",
      })
  void aMapSaysHowMuchThereIsAndWhenItWasRead(String map, String told) {
    assertEquals(told, told(BARE, map));
  }

  @Test
  void theVolumeMayStandInAColumn() {
    String log = BARE.replace("(kg) ;", "(kg)^Volume (L) ;");
    assertEquals("0:1.0600 2:1.0767", told(log.replace("20^ ; 3", "20^^20 ; 3"), ""));
    assertEquals("0:1.0600 2:1.0767", told(log.replace("20^1 ;", "20^1^20 ;"), ""));
    assertEquals("0:1.0600 2:1.0767", told(log.replace("20^ ; 3", "20^^20000 ml ; 3"), ""));
  }

  /** A note that tells of sugar is asked about, and so is a rise of which nothing is said. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "1.06^ ; 1.03^ ; 1.02^ ; 1.01^ ! ''",
        "1.06^ ; 1.03^added sugar ; 1.02^ ; 1.01^ ! 0:1.0600 2:unknown asks D3",
        "1.06^ ; 1.03^+ sugar ; 1.02^ ; 1.01^ ! 0:1.0600 2:unknown asks D3",
        "1.06^ ; 1.03^1 kg sugar ; 1.02^ ; 1.01^ ! 0:1.0600 2:unknown asks D3",
        "1.06^ ; 1.03^2 lb sugar ; 1.02^ ; 1.01^ ! 0:1.0600 2:unknown asks D3",
        "1.06^ ; 1.03^no sugar added ; 1.02^ ; 1.01^ ! ''",
        "1.06^ ; 1.03^sugar ; 1.02^ ; 1.01^ ! ''",
        "1.06^ ; 1.03^sugar ; 1.045^ ; 1.01^ ! 0:1.0600 2:unknown asks D3",
        "1.06^ ; 1.03^honey ; 1.045^ ; 1.01^ ! 0:1.0600 2:unknown asks D3",
        "1.06^added sugar ; 1.03^ ; 1.02^ ; 1.01^ ! ''",
        "1.06^ ; 1.03^ ; 1.045^ ; 1.04^ ; 1.01^ ! asks B4",
        "1.06^ ; 1.03^fortified with spirit ; 1.02^ ; 1.01^ ! 0:1.0600 1:unknown asks D3",
        "1.06^ ; 1.03^blended with the other wash ; 1.02^ ; 1.01^ ! 0:1.0600 1:unknown asks D3",
        "1.06^ ; 1.03^not fortified ; 1.02^ ; 1.01^ ! ''",
      })
  void aNoteMayTellOfSugar(String rows, String told) {
    StringBuilder log = new StringBuilder("Day^SG^Temp C^Notes");
    int day = 0;
    for (String row : rows.split(" ; ")) {
      log.append(" ; ").append(day).append('^').append(row.replace("^", "^20^"));
      day += 3;
    }
    assertEquals(told, told(log.toString(), "").strip());
  }

  /** By the rise: nothing of water in between, and no more than some days apart. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "sugar added at row 3 = by the rise ! 0:1.0600 2:1.0740",
        "sugar added at row 4 = by the rise ! 0:1.0600 2:1.0740",
        "sugar added at row 5 = by the rise ! 0:1.0600 4:unknown asks B4",
        "sugar added at row 3 = 0 KG ! 0:1.0600 2:slip 3:1.0600",
      })
  void theRiseTellsHowMuchSugarWentIn(String map, String told) {
    assertEquals(
        told, told("Day^SG^Temp C ; 0^1.06^20 ; 3^1.03^20 ; 3.1^1.045^20 ; 9^1.01^20", map));
  }

  private static String answers(String log) {
    return understood(log, "").doubts().stream()
        .map(
            doubt ->
                doubt.cell()
                    + ": "
                    + doubt.answers().stream()
                        .map(a -> (a.isExample() ? "such as " : "") + String.join(" + ", a.lines()))
                        .collect(Collectors.joining(", or ")))
        .collect(Collectors.joining("; "));
  }

  private static final String NOTED =
      "VOLUMEDay^SG^Temp C^Notes ; 0^1.06^20^FIRST ; 3^1.03^20^NOTE ; 3.1^1.045^20^NEXT"
          + " ; 4^1.04^20^ ; 9^1.01^20^";

  /** What notes tell of amounts and volume is offered, else an example. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        // nothing is told
        "'' ! '' ! '' ! '' ! B4: sugar added at row 4 = by the rise, or such as sugar added at row"
            + " 4 = 1.5 KG + volume = 25 L, or batch from row 4 = Cellar B, or sugar added at row"
            + " 4 = 0 KG",
        "Volume: 20 L ; ! '' ! '' ! '' ! B5: sugar added at row 5 = by the rise, or such as sugar"
            + " added at row 5 = 1.5 KG, or batch from row 5 = Cellar B, or sugar added at row"
            + " 5 = 0 KG",
        // by a note
        "'' ! '' ! added sugar ! '' ! D3: sugar added at row 3 = by the rise, or such as sugar"
            + " added at row 3 = 1.5 KG + volume = 25 L, or sugar added at row 3 = 0 KG",
        "'' ! '' ! added 2 kg sugar ! '' ! D3: sugar added at row 3 = by the rise, or such as sugar"
            + " added at row 3 = 2 KG + volume = 25 L, or sugar added at row 3 = 0 KG",
        "Volume: 20 L ; ! '' ! added 2 kg sugar ! '' ! D4: sugar added at row 4 = by the rise, or"
            + " sugar added at row 4 = 2 KG, or sugar added at row 4 = 0 KG",
        "'' ! '' ! added 2 kg sugar to 18 L ! '' ! D3: sugar added at row 3 = by the rise, or such"
            + " as sugar added at row 3 = 2 KG + volume = 18 L, or sugar added at row 3 = 0 KG",
        "'' ! 22 L of must ! added 2 kg sugar ! '' ! D3: sugar added at row 3 = by the rise, or"
            + " such as sugar added at row 3 = 2 KG + volume = 22 L, or sugar added at row 3 ="
            + " 0 KG",
        "'' ! '' ! added 2 kg sugar ! added 1 kg sugar ! D3: sugar added at row 3 = by the rise,"
            + " or such as sugar added at row 3 = 1.5 KG + volume = 25 L, or sugar added at row"
            + " 3 = 0 KG",
        // honey is not all sugar
        "Volume: 20 L ; ! '' ! added 2 kg honey ! '' ! D4: sugar added at row 4 = by the rise, or"
            + " sugar added at row 4 = 1.6 KG, or sugar added at row 4 = 0 KG",
      })
  void whatTheNotesTellIsOffered(
      String volume, String first, String note, String next, String answers) {
    String log =
        NOTED
            .replace("VOLUME", volume.isEmpty() ? "" : volume + " ")
            .replace("FIRST", first)
            .replace("NOTE", note)
            .replace("NEXT", next);
    assertEquals(answers, answers(log));
  }

  /** Of a column the unit or the volume is asked for. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Sugar added (kg) ! 1 ! D3: such as volume = 25 L, or sugar added at row 3 = by the rise",
        "Sugar added ! 1 ! D3: such as column D = SUGAR_ADDED in KG, or sugar added at row 3 = by"
            + " the rise",
        "Water added ! 1 ! D3: such as column D = WATER_ADDED in L, or sugar added at row 3 = by"
            + " the rise",
      })
  void whatIsMissingIsAskedFor(String header, String amount, String answers) {
    assertEquals(
        answers,
        answers(
            "Day^SG^Temp C^"
                + header
                + " ; 0^1.06^20^ ; 3^1.03^20^"
                + amount
                + " ; 3.1^1.045^20^ ; 9^1.01^20^"));
  }

  /** Honey is a little less than sugar for the same rise: its water goes in too. */
  @Test
  void theRiseByHoneyIsThatOfItsSugarAndItsWater() {
    String log = NOTED.replace("VOLUME", "").replace("FIRST", "").replace("NEXT", "");
    String map = "sugar added at row 3 = by the rise";
    String sugar = told(log.replace("NOTE", "added sugar"), map);
    String honey = told(log.replace("NOTE", "added honey"), map);
    assertEquals("0:1.0600 2:1.0740", sugar);
    assertEquals("0:1.0600 2:1.0737", honey);
  }
}
