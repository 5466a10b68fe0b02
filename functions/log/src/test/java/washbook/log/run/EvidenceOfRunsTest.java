package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.StillRun;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/**
 * Strong evidence makes a table a still run, weak evidence asks, contrary evidence leaves it alone.
 */
class EvidenceOfRunsTest {
  private static Understanding understand(String sheet, String text) {
    return SheetUnderstanding.understand(
        TestGrid.of(sheet, text.replace('^', '|').replace(" ;", "\n")), LogMap.none());
  }

  private static String outcome(Understanding found) {
    return !found.runs().isEmpty()
        ? "run"
        : !found.doubts().isEmpty() ? "asks" : !found.leftAlone().isEmpty() ? "alone" : "nothing";
  }

  private static final String FALLS = " ; a^200^74^18 ; b^500^72^18 ; c^500^60^19 ; d^500^40^19";
  private static final String NUMBERED = " ; 1^200^74^18 ; 2^500^72^18 ; 3^500^60^19 ; 4^500^40^19";

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Jar^mL^ABV^Temp C ! run ! asks",
        "Bottle^mL^ABV^Temp C ! asks ! alone",
        "No^mL^ABV^Temp C ! alone ! nothing",
        "Still run ; No^mL^ABV^Temp C ! run ! run",
        "Charge 10 L of 30 % ; No^mL^ABV^Temp C ! run ! run",
        "Stock ; Jar^mL^ABV^Temp C ! alone ! nothing",
        "Jar^mL^ABV^Price ! alone ! nothing",
        "Jar^mL^ABV^€ ! alone ! nothing",
      })
  void wordsAndNumbersCount(String header, String numbered, String lettered) {
    assertEquals(numbered, outcome(understand("Sheet1", header + NUMBERED)), "numbered");
    assertEquals(lettered, outcome(understand("Sheet1", header + FALLS)), "lettered");
  }

  @Test
  void theSheetsNameCounts() {
    assertEquals("run", outcome(understand("Still runs", "No^mL^ABV^Temp C" + NUMBERED)));
    assertEquals("nothing", outcome(understand("Stock", "Jar^mL^ABV^Temp C" + FALLS)));
  }

  /** Strengths of jars fall; by an error of reading, or at the beginning, they rise a little. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "74 72 60 40; run",
        "60 58 55 52; run",
        "60 58 55 52.5; nothing",
        "72 74 60 40; run",
        "72 74.5 60 40; run",
        "72 75 60 40; nothing",
        "74 70 73 60 40; run",
        "74 70 73 60 64; nothing",
        "74 72 60; nothing",
        "74 74 74 74; nothing",
        "40 60 72 74; nothing",
        "74 72 0 60 40; run",
        "74 40 74 40; run",
        "74 40 74 40 74; nothing",
        "60 50 58 52; run",
        "60 50 58 52.5; nothing",
        "60 50 57.9 50; nothing",
      })
  void strengthsThatFallAreThoseOfJars(String strengths, String outcome) {
    StringBuilder jars = new StringBuilder("Jar^mL^ABV^Temp C");
    int jar = 1;
    for (String strength : strengths.split(" ")) {
      jars.append(" ; " + jar++ + "^500^" + strength + "^18");
    }
    assertEquals(outcome, outcome(understand("Sheet1", jars.toString())));
  }

  @ParameterizedTest
  @CsvSource({
    "1 2 3 4, run",
    "5 6 7 8, run",
    "1 2 1 2, run",
    "jar1 jar2 jar3 jar4, run",
    "1 2 4 5, asks",
    "a b c d, asks",
    "10001 10002 10003 10004, asks",
  })
  void jarsThatAreNumberedSpeakForARun(String labels, String outcome) {
    String[] label = labels.split(" ");
    StringBuilder jars = new StringBuilder("Jar^mL^ABV^Temp C");
    for (int i = 0; i < 4; i++) {
      jars.append(" ; " + label[i] + "^500^" + (74 - 10 * i) + "^18");
    }
    assertEquals(outcome, outcome(understand("Sheet1", jars.toString())));
  }

  /** A strength that rises by more than 20 % vol begins another run, which is asked about. */
  @ParameterizedTest
  @CsvSource({"60, 0", "61, 1"})
  void aHigherStrengthMayBeginAnotherRun(int strength, int questions) {
    String log =
        "Still run ; Jar^mL^ABV^Temp C ; a^500^74^18 ; b^500^60^18 ; c^500^40^18 ; d^500^"
            + strength
            + "^18 ; e^500^30^18";
    assertEquals(questions, understand("Still", log).doubts().size());
  }

  /** A run takes a day or two. */
  @ParameterizedTest
  @CsvSource({"3, run", "4, alone"})
  void datesOfMoreThanThreeDaysSpeakAgainstARun(int days, String outcome) {
    StringBuilder jars = new StringBuilder("Jar^mL^ABV^Temp C^Date");
    for (int jar = 1; jar <= 5; jar++) {
      int day = Math.min(jar, days);
      jars.append(" ; " + jar + "^500^" + (80 - 10 * jar) + "^18^#2025-11-0" + day);
    }
    assertEquals(outcome, outcome(understand("Sheet1", jars.toString())));
  }

  @ParameterizedTest
  @ValueSource(strings = {"%d.11.", "%d.11.2025", "2025-11-0%d", "%d Nov", "%d. November 2025"})
  void datesMayBeTexts(String pattern) {
    StringBuilder jars = new StringBuilder("Jar^mL^ABV^Temp C^Date");
    for (int jar = 1; jar <= 5; jar++) {
      jars.append(" ; " + jar + "^500^" + (80 - 10 * jar) + "^18^" + "'" + pattern.formatted(jar));
    }
    assertEquals("alone", outcome(understand("Sheet1", jars.toString())));
  }

  @ParameterizedTest
  @CsvSource({"84 86 89 95, run", "84 84 85 85, nothing", "84 84.5 84.5 85.5, run"})
  void aHeadThatGrowsHotterSpeaksForARun(String heads, String outcome) {
    String[] head = heads.split(" ");
    StringBuilder jars = new StringBuilder("No^mL^ABV^Temp C^Head C");
    for (int jar = 0; jar < 4; jar++) {
      String letter = "" + (char) ('a' + jar);
      jars.append(" ; " + letter + "^500^" + (74 - 10 * jar) + "^18^" + head[jar]);
    }
    assertEquals(outcome, outcome(understand("Sheet1", jars.toString())));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "a^200^74^heads ; b^500^72^hearts ; c^500^60^hearts ; d^500^40^tails ! run",
        "heads^^^ ; a^200^74^ ; hearts^^^ ; b^500^72^ ; c^500^60^ ; d^500^40^ ! run",
        "a^200^74^sharp heads ; b^500^72^plum ; c^500^60^fine ; d^500^40^tails begin ! run",
        "a^200^74^sharp heads ; b^500^72^plum ; c^500^60^fine ; d^500^40^stale ! nothing",
      })
  void twoCutsSpeakForARun(String jars, String outcome) {
    assertEquals(outcome, outcome(understand("Sheet1", "No^mL^ABV^Part ; " + jars)));
  }

  @Test
  void besideASureRunWeakEvidenceIsEnough() {
    String weak = "No^mL^ABV^Temp C" + NUMBERED;
    assertEquals(0, understand("Sheet1", weak).runs().size());
    String sure = "Jar^mL^ABV^Temp C" + NUMBERED;
    assertEquals(2, understand("Sheet1", weak + " ; ; ; " + sure).runs().size());
    assertEquals(
        List.of(0, 7),
        understand("Sheet1", weak + " ; ; ; " + sure).runs().stream()
            .map(run -> run.table().headerRow())
            .toList());
  }

  @Test
  void whatSpeaksMostForAndAgainstIsTold() {
    String asks =
        understand("Sheet1", "Bottle^mL^ABV^Temp C" + NUMBERED).doubts().get(0).question();
    assertTrue(asks.contains("header row = 1"), asks);
    assertTrue(asks.contains("run = yes"), asks);
    assertTrue(asks.contains("its strengths fall as those of a run"), asks);
    assertTrue(asks.contains("nothing else says so"), asks);
    String alone =
        understand("Sheet1", "Jar^mL^ABV^Price" + NUMBERED)
            .leftAlone()
            .get(0)
            .why()
            .in(Language.EN);
    assertTrue(alone.contains("its headers speak of purchases"), alone);
    assertTrue(alone.contains("header row = 1, run = yes"), alone);
    String little =
        understand("Sheet1", "No^mL^ABV^Temp C" + NUMBERED)
            .leftAlone()
            .get(0)
            .why()
            .in(Language.EN);
    assertTrue(little.contains("below row 1 is left alone"), little);
    assertTrue(little.contains("little says that it is one"), little);
    assertEquals(
        "A1", understand("Sheet1", "Jar^mL^ABV^Price" + NUMBERED).leftAlone().get(0).cell());
  }

  @Test
  void runsSideBySideHaveTheirOwnLinesAboveThem() {
    Understanding found =
        understand(
            "Sheet1",
            "Plum 3^^^^^Apple 7 ; Charge 10 L of 30 %^^^^^Charge 8 L of 20 %"
                + " ; Jar^mL^ABV^Temp C^^Jar^mL^ABV^Temp C"
                + " ; 1^200^74^18^^1^150^70^18 ; 2^500^72^18^^2^400^60^18"
                + " ; 3^500^60^19^^3^400^50^19 ; 4^500^40^19^^4^400^40^19");
    assertEquals(
        List.of("Plum 3 10.0", "Apple 7 8.0"),
        found.runs().stream()
            .map(StillRun::parts)
            .map(parts -> parts.get(0).name() + " " + parts.get(0).charge().litres())
            .collect(Collectors.toList()));
    assertEquals("A3:D7", found.runs().get(0).table().range());
    assertEquals("F3:I7", found.runs().get(1).table().range());
  }

  @Test
  void linesOfTheRunAboveAreNotReadAgain() {
    String plum = "Plum 3 ; Charge 10 L of 30 % ; Jar^mL^ABV^Temp C" + NUMBERED;
    String apple = "Apple 7 ; Jar^mL^ABV^Temp C" + NUMBERED;
    Understanding found = understand("Sheet1", plum + " ; ; " + apple);
    assertEquals(2, found.runs().size());
    assertEquals(10, found.runs().get(0).parts().get(0).charge().litres());
    assertEquals("Apple 7", found.runs().get(1).parts().get(0).name());
    assertEquals("", found.runs().get(1).parts().get(0).charge().cell());
  }

  /** A strength that rises by more than 20 % vol begins another run. */
  @Test
  void runsBelowALineOfTheirOwnAreToldApart() {
    Understanding found =
        understand(
            "Still",
            "Jar^mL^ABV^Temp C"
                + NUMBERED
                + " ; Apple 7^^^ ; 1^200^70^18 ; 2^500^50^18"
                + " ; 3^500^40^19");
    assertEquals(1, found.runs().size());
    List<StillRun.Part> parts = found.runs().get(0).parts();
    assertEquals(2, parts.size());
    assertEquals("Apple 7", parts.get(1).name());
    assertEquals(3, parts.get(1).rows().length);
    assertEquals(4, parts.get(0).rows().length);
  }

  @Test
  void aJarNumberedOneBeginsAnotherRunToo() {
    Understanding found =
        understand(
            "Still", "Jar^mL^ABV^Temp C" + NUMBERED + " ; 1^200^70^18 ; 2^500^50^18 ; 3^500^40^19");
    assertEquals(2, found.runs().get(0).parts().size());
    assertEquals(List.of(), found.doubts());
  }
}
