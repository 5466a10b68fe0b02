package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;

/** What values tell where words leave it open: units, instruments, batches, original gravities. */
class ColumnsByTheirValuesTest {
  private static Understanding understand(String log) {
    return SheetUnderstanding.understand(
        TestGrid.of("Cellar", log.replace('^', '|').replace(" ;", "\n")), LogMap.none());
  }

  private static String told(Understanding sheet, int column) {
    String use =
        sheet.tables().stream()
            .flatMap(table -> table.columns().stream())
            .filter(c -> c.column() == column)
            .map(c -> (c.role() + " " + c.unit()).strip())
            .collect(Collectors.joining(", "));
    String asks =
        sheet.doubts().stream().map(d -> " asks " + d.cell()).collect(Collectors.joining());
    return use + asks;
  }

  private static String third(String header, String values) {
    StringBuilder log = new StringBuilder("Day^SG^" + header);
    String[] value = values.split(" ");
    for (int i = 0; i < value.length; i++) {
      log.append("\n" + 2 * i + "^" + (1.085 - 0.02 * i) + "^" + value[i].replace('_', ' '));
    }
    return told(understand(log.toString()), 2);
  }

  /** Below 32 a wash is read in °C, above 60 in °F; where both or neither stand it is asked. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Temp; 20 22 21; TEMPERATURE C",
        "Temp; 31 40 50; TEMPERATURE C",
        "Temp; 32 40 50; TEMPERATURE asks C1",
        "Temp; 60 58 59; TEMPERATURE asks C1",
        "Temp; 61 58 59; TEMPERATURE F",
        "Temp; 68 72 70; TEMPERATURE F",
        "Temp; 68 72 20; TEMPERATURE asks C1",
        "Temp; -1 20 21; TEMPERATURE asks C1",
        "Temp C; 32 40 50; TEMPERATURE C",
        "Temp F; 32 40 50; TEMPERATURE F",
        "Temp (F); 40 50 50; TEMPERATURE F",
        "Temp; 20_C 70_F 21_C; TEMPERATURE",
        // a letter, or a unit in the header
        "T; 20 22 21; TEMPERATURE C",
        "T must; 20 22 21; TEMPERATURE C",
        "How warm (F); 68 72 70; TEMPERATURE F",
        "How warm (C); 20 22 21; TEMPERATURE C",
        "How warm (C); 120 122 121; OTHER asks B1",
        "T; 46 48 47; TEMPERATURE asks C1",
        "T; 1 2 3; OTHER asks B1",
        "T; 120 130 140; OTHER asks B1",
        // degrees in the cells
        "Blorp; 70_°F 72_°F 70_°F; TEMPERATURE",
        "Blorp; 20_°C 22_°C 21; OTHER asks B1",
        "Blorp; 20_°C 22_°C 21_°C; TEMPERATURE",
        "Blorp; 20_grad 22_grad 21_grad; TEMPERATURE C",
        "Blorp; 20_°C 22_°C 21_°C plum pear; TEMPERATURE",
        "Blorp; 20_°C 22_°C 21_°C plum pear quince; OTHER asks B1",
        "Blorp; 20 22 21; OTHER asks B1",
        "Room; 20_°C 22_°C 21_°C; OTHER asks B1",
      })
  void temperaturesAndTheirUnit(String header, String values, String told) {
    assertEquals(told, third(header, values));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Day^SG^Temp C^Temp F ; 0^1.085^20^68 ; 3^1.05^22^71.6 ; 6^1.02^21^69.8 ! OTHER",
        "Day^SG^Temp C^Temp F ; 0^1.085^20^69 ; 3^1.05^22^71.6 ; 6^1.02^21^69.8 ! OTHER",
        "Day^SG^Temp C^Temp F ; 0^1.085^20^70 ; 3^1.05^22^71.6 ; 6^1.02^21^69.8 ! OTHER asks D1",
        "Day^SG^Temp C^Temp F ; 0^1.085^20^ ; 3^1.05^22^71.6 ; 6^1.02^21^69.8 ! OTHER",
        "Day^SG^Temp C^Temp C ; 0^1.085^^20 ; 3^1.05^^22 ; 6^1.02^^21 ! TEMPERATURE C",
        "Day^SG^Temp C^Must temp C ; 0^1.085^15^20 ; 3^1.05^15^22 ; 6^1.02^15^21 ! TEMPERATURE C",
      })
  void twoTemperaturesAreOneWhereTheyAgree(String log, String told) {
    assertEquals(told, told(understand(log), 3));
  }

  private static String brix(String before, String header, String values, String after) {
    StringBuilder log = new StringBuilder(before + (before.isEmpty() ? "" : "\n") + header);
    String[] value = values.split(" ");
    for (int i = 0; i < value.length; i++) {
      log.append("\n" + 2 * i + "^" + value[i] + "^20^");
    }
    return told(understand(log + (after.isEmpty() ? "" : "\n\n" + after)), 1);
  }

  /** A hydrometer ends low, a refractometer stays up: below 3 and three tenths of the first. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "'' ! Day^Brix^Temp C ! 20 12 2 ! '' ! GRAVITY BRIX",
        "'' ! Day^Brix^Temp C ! 20 12 2.9 ! '' ! GRAVITY BRIX",
        "'' ! Day^Brix^Temp C ! 20 12 8 ! '' ! GRAVITY BRIX asks B1",
        "'' ! Day^Brix^Temp C ! 9 5 2.8 ! '' ! GRAVITY BRIX asks B1",
        "'' ! Day^Brix^Temp C ! 10 5 2.9 ! '' ! GRAVITY BRIX",
        "'' ! Day^Brix^Note ! 20 12 2 ! '' ! GRAVITY BRIX asks B1",
        "hydrometer calibrated at 20 C ! Day^Brix^Temp C ! 20 12 8 ! '' ! GRAVITY BRIX",
        "'' ! Day^Brix (hydrometer)^Temp C ! 20 12 8 ! '' ! GRAVITY BRIX",
        "'' ! Day^Extract °P^Temp C ! 20 12 8 ! '' ! GRAVITY PLATO",
        "'' ! Day^Refractometer Brix^Temp C ! 20 12 8 ! '' ! REFRACTOMETER BRIX",
        "'' ! Day^SG^Temp C ! 1.085 1.05 1.03 ! '' ! GRAVITY SG",
        "'' ! Day^Brix^Temp C ! 20 12 8 ! read with a refractometer ! REFRACTOMETER BRIX asks B1",
      })
  void theInstrumentIsToldByItsCourse(
      String before, String header, String values, String after, String told) {
    assertEquals(told, brix(before, header, values, after));
  }

  private static String batch(Batch batch) {
    String original =
        batch.originalGravity().isPresent()
            ? Numbers.fixed(batch.originalGravity().getAsDouble(), 4)
            : "unknown";
    return batch.name() + " " + batch.rows().length + " " + original;
  }

  private static String batches(String log) {
    Understanding sheet = understand(log);
    String batches =
        sheet.tables().stream()
            .flatMap(table -> table.batches().stream())
            .map(ColumnsByTheirValuesTest::batch)
            .collect(Collectors.joining(", "));
    String asks =
        sheet.doubts().stream().map(d -> " asks " + d.cell()).collect(Collectors.joining());
    return batches + asks;
  }

  /** Each batch with the number of its rows and its original gravity. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        // names, blank cells, ditto marks, spellings, volumes behind
        "Plum 3^0^1.085^20 ; ^3^1.05^20 ; Apple 7^0^1.06^20 ; ^3^1.03^20 ! Plum 3 2 1.0850, Apple 7 2 1.0600",
        "Plum 3^0^1.085^20 ; ditto^3^1.05^20 ; Apple 7^0^1.06^20 ; idem^3^1.03^20 ! Plum 3 2 1.0850, Apple 7 2 1.0600",
        "Plum 3^0^1.085^20 ; PLUM 3^3^1.05^20 ; Apple 7^0^1.06^20 ; apple 7^3^1.03^20 ! Plum 3 2 1.0850, Apple 7 2 1.0600",
        "A (18 L)^0^1.085^20 ; A^3^1.05^20 ; B^0^1.06^20 ; B (5,5 gal)^3^1.03^20 ! A 2 1.0850, B 2 1.0600",
        "1^0^1.085^20 ; 2^0^1.06^20 ; 1^3^1.05^20 ; 2^3^1.03^20 ! 1 2 1.0850, 2 2 1.0600",
        "^0^1.085^20 ; ^3^1.05^20 ; Apple 7^0^1.06^20 ; ^3^1.03^20 ! Cellar 2 1.0850, Apple 7 2 1.0600",
        "Plum 3^0^1.085^20 ; ^^^ ; Plum 3^3^1.05^20 ; Apple 7^0^1.06^20 ! Plum 3 2 1.0850, Apple 7 1 1.0600",
      })
  void aColumnNamesTheBatches(String rows, String batches) {
    assertEquals(batches, batches("Batch^Day^SG^Temp C ; " + rows));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        // by a list, a column, a line, else the first reading
        "Plum 3^1.086^0^1.085^20 ; Plum 3^^3^1.05^20 ! Plum 3 2 1.0860",
        "Plum 3^1086^0^1.085^20 ; Plum 3^1.086^3^1.05^20 ! Plum 3 2 unknown asks B3",
        "Plum 3^86^0^1.085^20 ; Plum 3^^3^1.05^20 ! Plum 3 2 unknown asks B2",
        "Plum 3^^0^1.085^20 ; Plum 3^0^3^1.05^20 ! Plum 3 2 1.0850",
        "Plum 3^^0^plum^20 ; Plum 3^^3^1.05^20 ! Plum 3 2 unknown",
        "Plum 3^^0^1.2^20 ; Plum 3^^3^1.05^20 ! Plum 3 2 unknown",
      })
  void theOriginalGravityOfABatch(String rows, String batches) {
    assertEquals(batches, batches("Batch^OG^Day^SG^Temp C ; " + rows));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "OG: 20 °Bx ! 1.0829",
        "OG: 1086 ! 1.0860",
        "OG: 86 °Oe ! 1.0860",
        "OG: 1.086 @ 20 C ! 1.0860",
        "OG: 1.2 ! unknown",
        "OG: 1.086 @ 70 C ! unknown",
        "OG: 20 ! unknown asks A1",
      })
  void aLineStatesTheOriginalGravityOnAnyScale(String line, String original) {
    String log = line + " ; Day^SG^Temp C ; 0^1.08^20 ; 3^1.05^20 ; 6^1.01^20";
    assertEquals("Cellar 3 " + original, batches(log));
  }
}
