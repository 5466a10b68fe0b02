package washbook.functions.log;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A row with a value in the reading column is a reading or a refusal. */
class VanishingRowsTest {
  private static Filling filling(TestGrid grid, LogMap map) {
    return LogFiller.fill(grid, LogReader.understand(grid, map), FillOptions.usual());
  }

  private static int read(TestGrid grid) {
    return filling(grid, LogMap.none()).tables().stream()
        .flatMap(t -> t.batches().stream())
        .mapToInt(Filling.BatchCount::rows)
        .sum();
  }

  private static TestGrid log(String header, String second, String third) {
    return TestGrid.of(
        "Plum 3",
        header
            + "\nMo 02.11.2026 | 1.085 | 20 | x\n"
            + second
            + "\n"
            + third
            + "\nFr 06.11.2026 | 1.030 | 20 | x");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Mo Di Mi Do Fr Sa So Montag Dienstag Mittwoch Donnerstag Freitag Samstag Sonntag",
        "Mon Tue Wed Thu Fri Sat Sun Monday Tuesday Wednesday Thursday Friday Saturday Sunday",
        "lun mar mer jeu ven sam dim lundi mardi mercredi jeudi vendredi samedi dimanche",
        "lun mar mie jue vie sab dom lunes martes miercoles jueves viernes domingo",
        "lun mar mer gio ven sab dom luned\u00ec marted\u00ec mercoled\u00ec domenica",
        "seg ter qua qui sex s\u00e1b dom segunda-feira ter\u00e7a quarta quinta sexta",
        "ma di wo do vr za zo maandag dinsdag woensdag donderdag vrijdag zaterdag zondag",
        "Ma Di Wo Do Vr Sa So Maandag Dinsdag Woensdag Donderdag Vrydag Saterdag Sondag",
        "A B C D E F G H I J K L M N O P Q R S T U V W X Y Z",
        "MK FG OG SG DF PA TA AA RA RS BX GU OE PH KG"
      })
  void aWeekdayALetterOrInitialsDropNoRow(String words) {
    for (String word : words.split(" ")) {
      assertEquals(
          4,
          read(
              log(
                  "Date | SG | Temp C | Who",
                  word + " 03.11.2026 | 1.070 | 20 | x",
                  "Mi | 1.050 | 20 | x")),
          word);
      assertEquals(
          4,
          read(log("Date | SG | Temp C | Who", word + " | 1.070 | 20 | x", "Mi | 1.050 | 20 | x")),
          word);
      assertEquals(
          4,
          read(
              log(
                  "Date | SG | Temp C | Who",
                  "Di | 1.070 | 20 | " + word,
                  word + " | 1.050 | 20 |")),
          word);
      assertEquals(
          3,
          read(
              TestGrid.of(
                  "Plum 3",
                  "Date | By | SG | Temp C\n#2026-11-02 | x | 1.085 | 20\nDi | "
                      + word
                      + " | 1.070 | 20\n"
                      + word
                      + " | "
                      + word
                      + " | 1.050 | 20")),
          word);
    }
  }

  @Test
  void aDateWithAWeekdayIsThatDate() {
    for (String text :
        List.of("Di 03.11.2026", "Tue, 03/11/2026", "mar. 3/11/2026", "mar 3 nov 2026")) {
      assertEquals(
          DateText.serial("2026-11-03", DateText.Order.DAY_FIRST),
          DateText.serial(text, DateText.Order.DAY_FIRST),
          text);
    }
  }

  @ParameterizedTest
  @CsvSource({"1.001?", "'1,0O1'", "1.00l", "abt. 1.001 ?", "'1.0.01'"})
  void aLastRowThatCannotBeReadIsRefused(String typed) {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            "Date | SG | Temp C\n#2026-11-02 | 1.085 | 20\n#2026-11-06 | 1.030 | 20\n#2026-11-09 | '"
                + typed
                + " | 20");
    Filling filling = filling(grid, LogMap.none());
    assertEquals(1, filling.refusals().size());
    assertEquals("B4", filling.refusals().get(0).cell());
    assertTrue(filling.refusals().get(0).reason().contains(typed), filling.refusals().toString());
  }

  @Test
  void anAverageThatAgreesIsNoReadingAndOneThatDoesNotIsRefused() {
    String log = "Date | SG | Temp C\n#2026-11-02 | 1.080 | 20\n#2026-11-06 | 1.040 | 20\n";
    assertEquals(2, read(TestGrid.of("Plum 3", log + "Average | 1.06 | 20")));
    assertEquals(2, read(TestGrid.of("Plum 3", log + "Maximum | 1.08 | 20\nMinimum | 1.04 | 20")));
    Filling other = filling(TestGrid.of("Plum 3", log + "Average | 1.031 | 20"), LogMap.none());
    assertEquals("B4", other.refusals().get(0).cell());
    assertTrue(other.refusals().get(0).reason().contains("Average"), other.refusals().toString());
  }

  @Test
  void aSummaryBelowTheTableIsNoPartOfIt() {
    TestGrid grid =
        TestGrid.of(
            "Plum 3",
            """
            Date | SG | Temp C
            #2026-11-02 | 1.080 | 20
            #2026-11-06 | 1.010 | 20
            |
            Final gravity | 1.010 |
            Volume | 25 |""");
    assertEquals(List.of(), filling(grid, LogMap.none()).refusals());
    assertEquals(2, read(grid));
  }

  @Test
  void sugarAddedOnAWeekdayIsNotLost() {
    TestGrid grid =
        TestGrid.of(
            "Sugar 4",
            """
            Volume: 25 L
            Date | SG | Temp C | Sugar added kg
            Mo | 1.080 | 20 |
            Di | | | 2
            Mi | 1.040 | 20 |""");
    Understanding understood = LogReader.understand(grid, LogMap.none());
    assertEquals(2, understood.tables().get(0).batches().get(0).steps().size(), "begun and fed");
  }
}
