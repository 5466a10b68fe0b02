package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.log.LogColumn;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;

/** What each column of a log is taken for when all of them are looked at together. */
class ColumnsOfALogTest {
  private static String told(LogColumn column) {
    return (column.role() + " " + column.unit()).strip();
  }

  private static String columns(String log) {
    Understanding sheet =
        SheetUnderstanding.understand(
            TestGrid.of("Cellar", log.replace('^', '|').replace(" ;", "\n")), LogMap.none());
    String columns =
        sheet.tables().stream()
            .flatMap(table -> table.columns().stream())
            .map(ColumnsOfALogTest::told)
            .collect(Collectors.joining(", "));
    return columns
        + sheet.doubts().stream()
            .map(
                d ->
                    " asks "
                        + d.cell()
                        + " "
                        + (d.answers().isEmpty()
                            ? ""
                            : d.answers().stream()
                                .map(a -> String.join("+", a.lines()))
                                .collect(Collectors.joining(" or "))))
            .collect(Collectors.joining());
  }

  /** Three rows of a log with its columns put in: one string of values for each column. */
  private static String log(String headers, String... values) {
    StringBuilder log = new StringBuilder("Day^SG^Temp C^" + headers);
    for (int row = 0; row < 4; row++) {
      log.append("\n").append(2 * row).append('^').append(1.085 - 0.022 * row).append("^20");
      for (String column : values) {
        String[] cells = column.split(",", -1);
        log.append('^').append(row < cells.length ? cells[row].strip() : "");
      }
    }
    return columns(log.toString()).replaceFirst("^DAY, GRAVITY SG, TEMPERATURE C, ", "");
  }

  /** Beside day, reading and temperature. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        // where no header names notes: the column with the most sentences, of three words at least
        "Blorp ! put the yeast in,smells of fruit,, ! NOTE",
        "Blorp ! put the yeast in,smells good,, ! OTHER",
        "Blorp ! yeast in,smells good,, ! OTHER",
        "Note ! yeast in,,, ! NOTE",
        // amounts
        "Sugar added (kg) ! ,1.5,, ! SUGAR_ADDED KG asks D3 volume = 25 L",
        "Sugar added (lb) ! ,1.5,, ! SUGAR_ADDED LB asks D3 volume = 25 L",
        "Sugar added ! none,traces,none,none ! OTHER",
        "Water added (L) ! ,1.5,, ! WATER_ADDED L asks D3 volume = 25 L",
        "Volume (L) ! 25,25,25,24 ! VOLUME L",
        "pH ! 3.4,3.3,3.3,3.2 ! OTHER",
        // the log's own figures
        "Corrected SG ! 1.085,1.063,1.041,1.019 ! OWN_CORRECTED_GRAVITY SG",
        "Corrected gravity (°Oe) ! 85,63,41,19 ! OWN_CORRECTED_GRAVITY OECHSLE",
        "ABV ! 0,2.9,5.8,8.7 ! OWN_ABV",
        // the refractometer beside
        "Refractometer ! 20,16,13,10 ! REFRACTOMETER BRIX",
        "Refractometer SG ! 1.085,1.066,1.053,1.04 ! REFRACTOMETER SG",
        "Refractometer Brix ! 20,16,13,10 ! REFRACTOMETER BRIX",
        "Refractometer °Oe ! 85,66,53,40 ! REFRACTOMETER OECHSLE",
      })
  void aColumnBesideTheReading(String header, String values, String told) {
    assertEquals(told, log(header, values));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        // of two the one with more sentences, the first of equals
        "Blorp^Blarp ! put the yeast in,smells of fruit,, ! put the yeast in,smells of fruit,it is"
            + " clear now, ! OTHER, NOTE",
        "Blorp^Blarp ! put the yeast in,smells of fruit,, ! put the yeast in,smells of fruit,,"
            + " ! NOTE, OTHER",
        // only the first refractometer, sugar, volume
        "Refractometer Brix^Refractometer SG ! 20,16,13,10 ! 1.08,1.06,1.05,1.04"
            + " ! REFRACTOMETER BRIX, OTHER",
        "Sugar added (kg)^Sugar added (lb) ! ,1.5,, ! ,3.3,, ! SUGAR_ADDED KG, OTHER asks D3 volume = 25 L",
        // the lot where a vessel stands beside it
        "Batch^Barrel ! 7,7,7,7 ! 3,3,3,3 ! BATCH, OTHER",
        "Barrel^Batch ! 3,3,3,3 ! 7,7,7,7 ! OTHER, BATCH",
        "Barrel^Blorp ! 3,3,3,3 ! x,x,x,x ! BATCH, OTHER",
      })
  void twoColumnsBesideTheReading(String headers, String one, String other, String told) {
    assertEquals(told, log(headers, one, other));
  }

  /** Where no header names the dates the column that holds nothing else does. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Blorp^SG^Temp C ; 1 Oct 2025^1.085^20 ; 4 Oct 2025^1.05^20 ; 8 Oct 2025^1.02^20 !"
            + " DATE, GRAVITY SG, TEMPERATURE C",
        "Day^SG^Temp C ; 1 Oct 2025^1.085^20 ; 4 Oct 2025^1.05^20 ; 8 Oct 2025^1.02^20 !"
            + " DATE, GRAVITY SG, TEMPERATURE C",
        "Day^SG^Temp C ; #2025-10-01^1.085^20 ; #2025-10-04^1.05^20 ; #2025-10-08^1.02^20 !"
            + " DATE, GRAVITY SG, TEMPERATURE C",
        "Day^SG^Temp C ; 30.11^1.085^20 ; 2.12^1.05^20 ; 8.12^1.02^20 !"
            + " DATE, GRAVITY SG, TEMPERATURE C",
        "Day^SG^Temp C ; 0.11^1.085^20 ; 2.12^1.05^20 ; 8.12^1.02^20 !"
            + " DAY, GRAVITY SG, TEMPERATURE C",
        "Day^SG^Temp C ; 28.12^1.085^20 ; 2.01^1.05^20 ; 8.01^1.02^20 !"
            + " DATE, GRAVITY SG, TEMPERATURE C",
        "Day^SG^Temp C ; 3.11^1.085^20 ; 5.11^1.05^20 ; 8.11^1.02^20 !"
            + " DAY, GRAVITY SG, TEMPERATURE C",
        "Day^Blorp^SG^Temp C ; 0^1 Oct 2025^1.085^20 ; 3^4 Oct 2025^1.05^20 ; 7^8 Oct 2025^1.02^20"
            + " ! DAY, DATE, GRAVITY SG, TEMPERATURE C",
        "Date^Blorp^SG^Temp C ; #2025-10-01^08:00^1.085^20 ; #2025-10-04^17:30^1.05^20"
            + " ; #2025-10-08^8:15^1.02^20 ! DATE, TIME, GRAVITY SG, TEMPERATURE C",
        "Date^Blorp^SG^Temp C ; #2025-10-01^08:00^1.085^20 ; #2025-10-04^25:30^1.05^20"
            + " ; #2025-10-08^8:15^1.02^20 ! DATE, OTHER, GRAVITY SG, TEMPERATURE C",
        "Date^Date racked^SG^Temp C ; #2025-10-01^#2025-11-01^1.085^20 ; #2025-10-04^^1.05^20"
            + " ; #2025-10-08^^1.02^20 ! DATE, OTHER, GRAVITY SG, TEMPERATURE C",
      })
  void theColumnOfTheDates(String log, String told) {
    assertEquals(told, columns(log));
  }

  /** Bare degrees are a temperature where they stay while the gravity falls to its end. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Day^SG^Degrees ; 0^1.085^20 ; 4^1.04^22 ; 8^1.01^21 ! DAY, GRAVITY SG, TEMPERATURE C",
        "Day^SG^Degrees ; 0^1.085^20 ; 4^1.04^22 ; 8^1.014^10 ! DAY, GRAVITY SG, TEMPERATURE C",
        "Day^SG^Degrees ; 0^1.085^68 ; 4^1.04^72 ; 8^1.01^104 ! DAY, GRAVITY SG, TEMPERATURE F",
      })
  void bareDegrees(String log, String told) {
    assertEquals(told, columns(log));
  }

  @Test
  void bareDegreesThatFallWithTheGravityAreNoTemperature() {
    assertFalse(
        columns("Day^SG^Degrees ; 0^1.085^20 ; 4^1.04^12 ; 8^1.01^9").contains("TEMPERATURE C"));
    assertFalse(
        columns("Day^SG^Degrees ; 0^1.085^20 ; 4^1.05^12 ; 8^1.02^11").contains("TEMPERATURE C"));
    assertFalse(
        columns("Day^SG^Degrees ; 0^1.085^20 ; 4^1.04^22 ; 8^1.01^105").contains("TEMPERATURE "));
  }

  /** Every reading on its scale, where the header names it or the figures leave only one. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "SG ! 1.085,1.05,1.02 ! GRAVITY SG",
        "Gravity ! 1.085,1.05,1.02 ! GRAVITY SG",
        "Gravity ! 1085,1050,1020 ! GRAVITY SG",
        "Gravity (kg/m³) ! 1085,1050,1020 ! GRAVITY KGM3",
        "Gravity (g/L) ! 1085,1050,1020 ! GRAVITY KGM3",
        "Gravity (g/cm³) ! 1.085,1.05,1.02 ! GRAVITY GCM3",
        "Extract ! 20,12,5 ! GRAVITY PLATO",
        "Extract ! 40,12,5 ! GRAVITY PLATO",
        "°B ! 20,12,2 ! GRAVITY BRIX",
        "°Oe ! 85,50,20 ! GRAVITY OECHSLE",
        "Gravity degrees ! 85,50,20 ! GRAVITY POINTS",
        "Gravity degrees ! 150,50,20 ! GRAVITY POINTS",
        "Gravity degrees ! 46,30,20 ! GRAVITY POINTS",
        "Potential alcohol ! 11,6,2 ! GRAVITY POTENTIAL",
        "Gravity ! 85,50,20 ! GRAVITY asks B2 column B = GRAVITY in OECHSLE",
        "Gravity ! 42,30,20 ! GRAVITY asks B2 column B = GRAVITY in BRIX or column B ="
            + " REFRACTOMETER in BRIX or column B = GRAVITY in OECHSLE",
        "Gravity ! 20,12,5 ! GRAVITY asks B2 column B = GRAVITY in BRIX or column B ="
            + " REFRACTOMETER in BRIX or column B = GRAVITY in OECHSLE or column B = GRAVITY in"
            + " BAUME or column B = GRAVITY in KMW",
        "°Oe ! 1.085,1.05,1.02 ! GRAVITY asks B2 column B = GRAVITY in SG or column B = GRAVITY in"
            + " GCM3",
        "Gravity (kg/m³) ! 1.085,1.05,1.02 ! GRAVITY asks B2 column B = GRAVITY in SG or column B ="
            + " GRAVITY in GCM3",
        "Gravity (g/cm³) ! 1085,1050,1020 ! GRAVITY asks B2 column B = GRAVITY in SG or column B ="
            + " GRAVITY in KGM3",
      })
  void theScaleOfTheReading(String header, String values, String told) {
    String[] value = values.split(",");
    String log =
        "cider ; Day^"
            + header
            + "^Temp C ; 0^"
            + value[0]
            + "^20 ; 4^"
            + value[1]
            + "^20 ; 8^"
            + value[2]
            + "^20";
    assertEquals(told, columns(log).replace("DAY, ", "").replace(", TEMPERATURE C", ""));
  }

  /** A scale that stands above holds where the figures can be on it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "°Oe ! 1.085,1.05,1.02 ! SG",
        "Brix ! 20,12,2 ! BRIX",
        "Brix ! 85,50,20 ! ''",
        "Brix ! 1.085,1.05,1.02 ! SG",
        "kg/m³ ! 1085,1050,1020 ! KGM3",
        "kg/m³ ! 1.085,1.05,1.02 ! SG",
        "g/cm³ ! 1.085,1.05,1.02 ! GCM3",
      })
  void theScaleAboveHoldsWhereTheFiguresFit(String scale, String values, String told) {
    String[] value = values.split(",");
    String log =
        "cider, hydrometer in SCALE ; Day^Reading^Temp C ; 0^A^20 ; 4^B^20 ; 8^C^20"
            .replace("SCALE", scale)
            .replace("A^", value[0] + "^")
            .replace("B^", value[1] + "^")
            .replace("C^", value[2] + "^");
    assertEquals(
        told,
        columns(log).replaceFirst("DAY, GRAVITY ?", "").replaceFirst(", TEMPERATURE C.*", ""));
  }

  /** Under a short heading of temperatures a single word for the wash is one of them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Temperature ! must ! TEMPERATURE C",
        "Temperatures ! must ! TEMPERATURE C",
        "Temperature of it ! must ! TEMPERATURE C",
        "Temperature of what it is ! must ! OTHER",
        "Taste ! must ! OTHER",
        "Temperature ! must now ! OTHER",
      })
  void aWordForTheWashUnderTemperatures(String group, String header, String told) {
    String found =
        columns("^^" + group + " ; Day^SG^" + header + " ; 0^1.085^20 ; 4^1.05^21 ; 8^1.02^20");
    assertEquals(told, found.replaceFirst("DAY, GRAVITY SG, ", "").replaceFirst(" asks.*", ""));
  }

  /**
   * Most cells with degrees make a temperature; bare numbers among them count where they can be.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "20 °C,21 °C,22 °C,20 ! TEMPERATURE C",
        "20 °C,21 °C,22 °C,plum ! TEMPERATURE",
        "20 °C,21 °C,plum,20 ! OTHER",
      })
  void degreesInTheCells(String values, String told) {
    StringBuilder log = new StringBuilder("Day^SG^Blorp");
    String[] value = values.split(",");
    for (int row = 0; row < value.length; row++) {
      log.append("\n" + 2 * row + "^" + (1.085 - 0.02 * row) + "^" + value[row]);
    }
    assertEquals(
        told,
        columns(log.toString())
            .replaceFirst("DAY, GRAVITY SG, ", "")
            .replaceFirst(" asks.*", "")
            .strip());
  }

  /** A temperature in the header beside a column of them: which of the two holds is asked. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "SG at 20 C ! true",
        "SG ! false",
        "SG (calibrated at 15 C) ! false",
        "SG, hydrometer 20 °C ! false",
        "SG corrected to 20 C ! false",
      })
  void aTemperatureInTheHeaderOfTheReading(String header, boolean asks) {
    String told = columns("Day^" + header + "^Temp C ; 0^1.085^22 ; 4^1.05^22 ; 8^1.02^22");
    assertEquals(asks, told.contains("corrected = yes or corrected = no"), told);
  }

  /** Four decimals are those of a meter that may have allowed for the temperature. */
  @Test
  void aRelativeDensityWithFineDigitsIsAskedAbout() {
    String fine = "Day^SG 20/20^Temp C ; 0^1.0851^22 ; 4^1.0503^22 ; 8^1.0207^22";
    assertTrue(columns(fine).contains("corrected = yes"), columns(fine));
    String coarse = "Day^SG 20/20^Temp C ; 0^1.0850^22 ; 4^1.0505^22 ; 8^1.0207^22";
    assertFalse(columns(coarse).contains("corrected = yes"), columns(coarse));
    String plain = "Day^SG^Temp C ; 0^1.0851^22 ; 4^1.0503^22 ; 8^1.0207^22";
    assertFalse(columns(plain).contains("corrected = yes"), columns(plain));
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void sheetsThatWeAddedAreNoLogs(Language language) {
    String title = SeasonSheet.title(language);
    assertTrue(SeasonSheet.isTitle(title));
    assertFalse(SeasonSheet.isFurther(title));
    assertTrue(SeasonSheet.isFurther(title + ": Plum 3"));
    assertFalse(SeasonSheet.isTitle(title + ": Plum 3"));
    assertTrue(SeasonSheet.isOne(TestGrid.of("x", title)));
    assertTrue(SeasonSheet.isOne(TestGrid.of("x", title + ": Plum 3")));
    assertFalse(SeasonSheet.isOne(TestGrid.of("x", "Washbook of mine: Plum 3")));
    assertFalse(SeasonSheet.isFurther("Washbook of mine: Plum 3"));
    assertFalse(SeasonSheet.isTitle("Washbook of mine"));
    assertFalse(SeasonSheet.isFurther("my " + title + ": Plum 3"));
    String charts = ChartsSheet.title(language);
    assertTrue(ChartsSheet.isOne(TestGrid.of("washbook charts", charts)));
    assertFalse(ChartsSheet.isOne(TestGrid.of("charts", charts)));
    assertFalse(ChartsSheet.isOne(TestGrid.of("Washbook charts", "mine")));
    assertFalse(ChartsSheet.isOne(TestGrid.of("Washbook charts", "3")));
    for (Language other : Language.values()) {
      assertTrue(ChartsSheet.isOne(TestGrid.of(ChartsSheet.name(other), charts)));
    }
  }

  /** 31 characters and without []:*?/\ is what both formats take; a quote would be doubled. */
  @ParameterizedTest
  @EnumSource(Language.class)
  void theChartsSheetHasANameThatEveryProgramTakes(Language language) {
    String name = ChartsSheet.name(language);
    assertTrue(name.matches("[\\p{L} -]{1,31}"), name);
    assertTrue(name.contains("Washbook"), name);
    assertTrue(language == Language.EN || !name.equals(ChartsSheet.name(Language.EN)), name);
  }

  /** Earlier versions wrote it in every language. */
  @Test
  void theEnglishNameOfTheChartsSheetStays() {
    assertEquals("Washbook charts", ChartsSheet.name(Language.EN));
  }
}
