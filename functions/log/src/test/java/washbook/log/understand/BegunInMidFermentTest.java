package washbook.log.understand;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.functions.Numbers;
import washbook.log.Batch;
import washbook.log.LogTable;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;

/**
 * Batches that begin in the middle of a ferment: parted from another, blended of several, or noted
 * too late. Their first reading is no original gravity.
 */
class BegunInMidFermentTest {
  private static String original(Batch batch) {
    return batch.originalGravity().isPresent()
        ? Numbers.fixed(batch.originalGravity().getAsDouble(), 4)
        : "unknown";
  }

  private static String told(String log) {
    Understanding sheet = SheetUnderstanding.understand(TestGrid.of("Cellar", log), LogMap.none());
    return sheet.tables().stream()
        .map(LogTable::batches)
        .flatMap(batches -> batches.stream().map(b -> b.name() + " " + original(b)))
        .collect(Collectors.joining(", "));
  }

  private static final String PLUM =
      "Plum 3\nDate|SG|Temp C\n#2025-10-01|1.085|20\n#2025-10-05|1.05|20\n#2025-10-08|1.04|20\n\n";

  private static String table(String name, int day, double first) {
    return name
        + "\nDate|SG|Temp C\n#2025-10-%02d|%s|20\n#2025-10-24|1.01|20\n#2025-10-29|1.005|20\n"
            .formatted(day, first);
  }

  /** Within ten points below and four above where the other one ended, within two days. */
  @ParameterizedTest
  @CsvSource({
    "8, 1.04, unknown",
    "10, 1.04, unknown",
    "11, 1.04, 1.0400",
    "9, 1.0435, unknown",
    "9, 1.045, 1.0450",
    "9, 1.031, unknown",
    "9, 1.029, 1.0290",
    "5, 1.05, unknown",
    "5, 1.053, unknown",
    "5, 1.047, unknown",
    "5, 1.056, 1.0560",
    "3, 1.05, 1.0500",
  })
  void aTableThatBeginsWhereAnotherStoodWasParted(int day, double first, String original) {
    assertEquals("Plum 3 1.0850, Barrel " + original, told(PLUM + table("Barrel", day, first)));
  }

  @Test
  void whatBeginsHighIsAFreshWash() {
    String plum = PLUM.replace("1.05|", "1.066|").replace("1.085", "1.1");
    assertEquals("Plum 3 1.1000, Barrel 1.0660", told(plum + table("Barrel", 5, 1.066)));
    assertEquals("Plum 3 1.1000, Barrel unknown", told(plum + table("Barrel", 5, 1.064)));
    assertEquals("Plum 3 1.1000, Barrel unknown", told(plum + table("Barrel", 5, 1.065)));
  }

  @Test
  void anotherMustHaveBegunClearlyHigher() {
    String low = PLUM.replace("1.085", "1.053");
    assertEquals("Plum 3 1.0530, Barrel 1.0400", told(low + table("Barrel", 8, 1.04)));
    String higher = PLUM.replace("1.085", "1.056");
    assertEquals("Plum 3 1.0560, Barrel unknown", told(higher + table("Barrel", 8, 1.04)));
  }

  @Test
  void aTableThatBeginsLowOnTheSameDayIsAPartToo() {
    String barrel = table("Barrel", 8, 1.04) + "\n";
    assertEquals(
        "Plum 3 1.0850, Barrel unknown, Keg unknown", told(PLUM + barrel + table("Keg", 8, 1.055)));
    assertEquals(
        "Plum 3 1.0850, Barrel unknown, Keg 1.0550", told(PLUM + barrel + table("Keg", 10, 1.055)));
    assertEquals(
        "Plum 3 1.0850, Barrel unknown, Keg 1.0700", told(PLUM + barrel + table("Keg", 8, 1.07)));
  }

  @Test
  void aTableAboveIsNotPartedFromOneBelow() {
    assertEquals(
        "Barrel 1.0400, Plum 3 1.0850", told(table("Barrel", 8, 1.04) + "\n" + PLUM.strip()));
  }

  private static final String COLUMN =
      """
      Batch|Date|SG|Temp C|Note
      Plum 3|#2025-10-01|1.085|20|
      Plum 3|#2025-10-04|1.06|20|
      Plum 3|#2025-10-08|1.04|20|NOTED
      Plum 3|#2025-10-12|1.02|20|
      Plum 3|#2025-10-20|1.0|20|
      """;

  private static String column(String note, String... rows) {
    return told(COLUMN.replace("NOTED", note) + String.join("\n", rows));
  }

  /** The other one has lost three tenths of its extract, and goes on below. */
  @ParameterizedTest
  @CsvSource({
    "8, 1.04, unknown",
    "8, 1.043, unknown",
    "8, 1.03, unknown",
    "8, 1.046, 1.0460",
    "8, 1.05, 1.0500",
    "12, 1.02, unknown",
    "4, 1.06, 1.0600",
    "8, 1.0255, unknown",
    "8, 1.07, 1.0700",
    "8, 1.0245, unknown",
  })
  void aBatchThatBeginsWhereAnotherStandsWasParted(int day, double first, String original) {
    assertEquals(
        "Plum 3 1.0850, Barrel " + original,
        column(
            "",
            "Barrel|#2025-10-%02d|%s|20|".formatted(day, first),
            "Barrel|#2025-10-25|1.015|20|"));
  }

  @Test
  void aBatchThatBeginsLaterIsParted() {
    String[] later = {"Keg|#2025-10-21|1.055|20|", "Keg|#2025-10-25|1.03|20|"};
    assertEquals("Plum 3 1.0850, Keg 1.0550", column("", later));
  }

  /** A note tells of parts up to seven days before. */
  @ParameterizedTest
  @CsvSource({
    "racked off into a barrel, 9, 1.06, unknown",
    "racked off into a barrel, 15, 1.06, unknown",
    "racked off into a barrel, 16, 1.06, 1.0600",
    "racked off into a barrel, 7, 1.06, 1.0600",
    "smells good, 9, 1.06, 1.0600",
  })
  void aNoteTellsThatABatchWasParted(String note, int day, double first, String original) {
    assertEquals(
        "Plum 3 1.0850, Barrel " + original,
        column(
            note,
            "Barrel|#2025-10-%02d|%s|20|".formatted(day, first),
            "Barrel|#2025-10-25|1.03|20|"));
  }

  private static final String TWO =
      """
      Batch|Date|SG|Temp C
      Plum 3|#2025-10-01|1.085|20
      Plum 3|#2025-10-08|1.04|20
      Apple 7|#2025-10-01|1.07|20
      Apple 7|#2025-10-08|1.03|20
      """;

  /** One that begins when two end, between their last readings, was put together of them. */
  @ParameterizedTest
  @CsvSource({
    "8, 1.035, unknown",
    "9, 1.035, unknown",
    "11, 1.035, 1.0350",
    "8, 1.052, 1.0520",
  })
  void aBatchBetweenTheEndsOfTwoIsTheirBlend(int day, double first, String original) {
    assertEquals(
        "Plum 3 1.0850, Apple 7 1.0700, Cask " + original,
        told(TWO + "Cask|#2025-10-%02d|%s|20\nCask|#2025-10-25|1.01|20".formatted(day, first)));
  }

  /** A log that counts its days has its first reading before the third. */
  @ParameterizedTest
  @CsvSource({
    "Day, 2, 1.06, 1.0600",
    "Day, 3, 1.06, unknown",
    "Day, 3, 1.07, 1.0700",
    "Hours, 71, 1.06, 1.0600",
    "Hours, 72, 1.06, unknown",
  })
  void aLogThatCountsItsDaysMayBeginLate(
      String header, int first, double gravity, String original) {
    int next = header.equals("Day") ? 1 : 24;
    assertEquals(
        "Cellar " + original,
        told(
            header
                + "|SG|Temp C\n%d|%s|20\n%d|1.03|20\n%d|1.01|20"
                    .formatted(first, gravity, first + 4 * next, first + 9 * next)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "original gravity not measured",
        "no original gravity taken",
        "readings only from day 4 on",
      })
  void whatIsSaidToHaveBeenReadLateHasNoOriginal(String said) {
    String log = "Date|SG|Temp C\n#2025-10-01|1.07|20\n#2025-10-04|1.04|20\n#2025-10-09|1.01|20";
    assertEquals("Cellar 1.0700", told(log));
    assertEquals("Cellar unknown", told(said + "\n" + log));
    assertEquals("Cellar unknown", told(log + "\n\n" + said));
  }

  @Test
  void aNoteOfTheFirstReadingMaySayThatItFermentedAlready() {
    String log =
        "Date|SG|Temp C|Note\n#2025-10-01|%s|20|already fermenting\n#2025-10-04|1.04|20|"
            + "\n#2025-10-09|1.01|20|";
    assertEquals("Cellar unknown", told(log.formatted("1.06")));
    assertEquals("Cellar 1.0700", told(log.formatted("1.07")));
  }

  /** What is parted from a batch that began without a known original gravity has none either. */
  @Test
  void whatWasPartedOfAWashUnderAStatedGravityIsAskedAbout() {
    String stated = "OG: 1.09\n" + COLUMN.replace("NOTED", "racked off into a barrel");
    String rows = "Barrel|#2025-10-09|1.06|20|\nBarrel|#2025-10-25|1.03|20|";
    assertEquals("Plum 3 1.0900, Barrel unknown", told(stated + rows));
    String quiet = "OG: 1.09\n" + COLUMN.replace("NOTED", "smells good");
    assertEquals("Plum 3 1.0900, Barrel 1.0900", told(quiet + rows));
    String unread = "Barrel|#2025-10-09|foam|20|\nBarrel|#2025-10-25|foam|20|";
    assertEquals("Plum 3 1.0900, Barrel 1.0900", told(stated + unread));
  }
}
