package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.Role;
import washbook.log.StillRun;
import washbook.log.Understanding;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Which tables are still runs, and what their columns are taken for. */
class RunRecognitionTest {
  private static Understanding understand(String text, String map) {
    return SheetUnderstanding.understand(
        TestGrid.of("Sheet1", text.replace(" ; ", "\n")), LogMap.parse(map));
  }

  private static Understanding understand(String text) {
    return understand(text, "");
  }

  private static StillRun run(String text) {
    Understanding understood = understand(text);
    assertEquals(List.of(), understood.doubts());
    assertEquals(1, understood.runs().size());
    return understood.runs().get(0);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Jar | mL | ABV | Temp C | Cut ; 1|200|74|18|heads ; 2|500|72|18|hearts ; 3|500|60|19|hearts"
            + " ; 4|500|40|19|tails",
        "Glas | Menge mL | Vol.-% | °C | Teil ; 1|200|74|18|Vorlauf ; 2|500|72|18|Mittellauf ;"
            + " 3|500|60|19|Mittellauf ; 4|500|40|19|Nachlauf",
        "Bocal | mL | % vol | T °C | Coupe ; 1|200|74|18|têtes ; 2|500|72|18|cœur ; 3|500|60|19|coeur"
            + " ; 4|500|40|19|queues",
        "Frasco | mL | % vol | Temp °C | Corte ; 1|200|74|18|cabezas ; 2|500|72|18|corazón ;"
            + " 3|500|60|19|corazón ; 4|500|40|19|colas",
        "Frazione | mL | Gradazione | Temp °C | Taglio ; 1|200|74|18|testa ; 2|500|72|18|cuore ;"
            + " 3|500|60|19|cuore ; 4|500|40|19|coda",
        "Fração | mL | Teor % vol | Temp °C | Corte ; 1|200|74|18|cabeça ; 2|500|72|18|coração ;"
            + " 3|500|60|19|coração ; 4|500|40|19|cauda",
        "Potje | mL | Sterkte | Temp °C | Deel ; 1|200|74|18|voorloop ; 2|500|72|18|hart ;"
            + " 3|500|60|19|hart ; 4|500|40|19|naloop",
        "Bottel | mL | Sterkte % alk | Temp °C | Deel ; 1|200|74|18|voorloop ; 2|500|72|18|hart ;"
            + " 3|500|60|19|hart ; 4|500|40|19|naloop",
      })
  void jarsWithCutsAreARunInEightLanguages(String text) {
    StillRun run = run(text);
    assertEquals("ML", run.table().column(Role.VOLUME).orElseThrow().unit());
    assertEquals("ABV", run.table().column(Role.STRENGTH).orElseThrow().unit());
    assertEquals("C", run.table().column(Role.TEMPERATURE).orElseThrow().unit());
    assertEquals(List.of("HEADS", "HEARTS", "HEARTS", "TAILS"), run.parts().get(0).cuts());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        // purchases
        "Date | Item | Volume cL | % vol | Price ; 3 Feb|rum|70|50|20 ; 4 May|gin|70|43|18 ;"
            + " 9 Jul|pear|50|40|25 ; 3 Aug|port|75|20|12",
        // a barrel's months
        "Date | Litres left | ABV % | Cellar C ; #2025-01-03|10|63.1|9 ; #2025-03-03|9.8|62|10 ;"
            + " #2025-06-03|9.2|58|18 ; #2025-12-03|8.6|52|9",
        "Cask 2 ; Date | Volume L | ABV % | Temp C ; #2025-01-03|10|63.1|9 ; #2025-03-03|9.8|62|10 ;"
            + " #2025-06-03|9.2|58|18 ; #2025-12-03|8.6|52|9",
        // proofing down
        "Spirit | Litres | % vol before | Temp C | Target % vol | Water L ; Plum|4|71|18|42|3 ;"
            + " Pear|3|68|18|40|2 ; Apple|6|55|18|40|3 ; Quince|2|45|17|40|1",
        "Step | Volume L | % vol | Temp C | Water added L ; 1|4|71|18|1 ; 2|5|57|18|1 ; 3|6|47|18|1 ;"
            + " 4|7|41|18|0",
        // stock
        "Shelf | Bottle | mL | % vol ; A|1|500|42 ; B|2|500|40 ; C|3|700|43 ; D|4|700|40",
        // wines, tanks, a liqueur
        "No | Wine | Volume L | Alcohol % | Temp C ; 1|red|20|14|15 ; 2|white|20|12|15 ;"
            + " 3|rose|20|8|15 ; 4|perry|20|5|15",
        "Tank | Level L | ABV % | Temp C ; 1|400|68|15 ; 2|350|64|15 ; 3|300|55|15 ; 4|100|42|15",
        "Sample | mL | ABV | Temp C | Sugar g ; 1|100|45|20|10 ; 2|100|40|20|20 ; 3|100|33|20|30 ;"
            + " 4|100|25|20|40",
        // strengths of one spirit by several instruments
        "Instrument | Volume mL | ABV | Temp C ; a|200|44.5|18 ; b|200|44.8|18 ; c|200|44.1|18 ;"
            + " d|200|44.6|19",
      })
  void otherTablesOfVolumeAndStrengthAreNoRun(String text) {
    Understanding understood = understand(text);
    assertEquals(List.of(), understood.runs());
    assertEquals(List.of(), understood.doubts());
  }

  @Test
  void aFermentWithVolumeAndAlcoholIsNoRun() {
    Understanding understood =
        understand(
            "Plum 3 wine ; Date | SG | Temp C | Volume L | ABV % ; #2025-09-01|1.085|20|20|0 ;"
                + " #2025-09-03|1.060|20|20|3 ; #2025-09-06|1.030|20|20|7 ;"
                + " #2025-09-12|1.000|20|20|11");
    assertEquals(List.of(), understood.runs());
    assertEquals(1, understood.tables().size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Charge | 14 L | of low wines at | 27 % vol ! 14 ! 27",
        "Charge (L) | 8.5 ; Charge ABV % | 30 ! 8.5 ! 30",
        "In the pot: | 9.0 | L | 29 | % alc/vol ! 9 ! 29",
        "Run 3 | Charge, L | 25 | Strength, % | 10 ! 25 ! 10",
        "Kesselinhalt | 9,5 l | 29 Vol.-% ! 9.5 ! 29",
        "Run 27 Sep | pot filled with | 47 L mash ! 47 ! NaN",
        "Still run ! NaN ! NaN",
      })
  void theChargeIsReadFromTheLinesAbove(String lines, double litres, double percent) {
    StillRun run =
        run(
            lines
                + " ; Jar | mL | ABV | Temp C ; 1|200|74|18 ; 2|500|72|18 ; 3|500|60|19 ;"
                + " 4|500|40|19");
    assertEquals(litres, run.parts().get(0).charge().litres());
    assertEquals(percent, run.parts().get(0).charge().percentVolume());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Jar | mL | ABV | Temp C ! false ! false",
        "Jar | mL | ABV at 20 °C | Note ! true ! false",
        "Jar | mL at 20 °C | ABV corrected | Temp C ! true ! true",
      })
  void headersSayWhatIsAtTwentyDegrees(String header, boolean corrected, boolean at20) {
    String jars = " ; 1|200|74|18 ; 2|500|72|18 ; 3|500|60|19 ; 4|500|40|19";
    StillRun run = understand("Still run ; " + header + jars).runs().get(0);
    assertEquals(corrected, run.settings().corrected());
    assertEquals(at20, run.settings().volumesAt20());
  }

  @Test
  void aLineAboveSaysWhatIsAtTwentyDegrees() {
    StillRun run =
        run(
            "Still run, strengths corrected to 20 °C, volumes also ; Jar | mL | ABV ; 1|200|74 ;"
                + " 2|500|72 ; 3|500|60 ; 4|500|40");
    assertTrue(run.settings().corrected());
    assertTrue(run.settings().volumesAt20());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        // no temperature
        "Jar | mL | ABV ; 1|200|74 ; 2|500|72 ; 3|500|60 ; 4|500|40 ! At which temperature",
        // no unit of volume
        "Jar | Volume | ABV | Temp C ; 1|2|74|18 ; 2|5|72|18 ; 3|5|60|18 ; 4|5|40|18 ! In which unit",
        // sums instead of volumes
        "Jar | mL | ABV | Temp C ; 1|200|74|18 ; 2|700|72|18 ; 3|1200|60|18 ; 4|1700|40|18 ! grow",
        "Jar | L | ABV | Temp C ; 1|0.4|74|18 ; 2|1.3|72|18 ; 3|2.2|68|18 ; 4|2.2|62|18 ; 5|4.9|55|18"
            + " ; 6|5.8|48|18 ; 7|6.8|40|18 ! grow",
        // °C or °F
        "Jar | mL | ABV | Temp ; 1|200|74|38 ; 2|500|72|41 ; 3|500|60|44 ; 4|500|40|45 ! °C or °F",
        // proof by a hydrometer for 60 or 68 °F
        "Jar | mL | US proof | Temp F ; 1|200|148|65 ; 2|500|144|65 ; 3|500|120|66 ; 4|500|80|66 !"
            + " proof hydrometer",
        // two strengths
        "Jar | mL | ABV 1 | ABV 2 | Temp C ; 1|200|74|73|18 ; 2|500|72|71|18 ; 3|500|60|59|18 ;"
            + " 4|500|40|38|18 ! Which column is the strength",
        // a second run begins without a word
        "Jar | mL | ABV | Temp C ; a|200|74|18 ; b|500|60|18 ; c|500|40|18 ; d|500|75|18 ;"
            + " e|500|60|18 ; f|500|40|18 ! another run",
        // jars side by side
        "Still run ; Jar | 1 | 2 | 3 | 4 ; mL | 200 | 500 | 500 | 500 ; ABV | 74 | 72 | 60 | 40"
            + " ! transpose",
      })
  void whatIsOpenIsAskedAndNothingIsFilled(String text, String asked) {
    Understanding understood = understand("Still run ; " + text);
    assertEquals(1, understood.doubts().size(), understood.doubts().toString());
    assertTrue(understood.doubts().get(0).question().contains(asked));
    assertFalse(understood.runs().stream().anyMatch(r -> r.table().settled()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"temperature = 18 C", "corrected = yes\nvolumes at 20 = yes"})
  void aMapAnswersTheQuestionAboutTheTemperature(String map) {
    Understanding understood =
        understand("Jar | mL | ABV ; 1|200|74 ; 2|500|72 ; 3|500|60 ; 4|500|40", map);
    assertEquals(List.of(), understood.doubts());
    assertTrue(understood.runs().get(0).table().settled());
  }

  @Test
  void aMapSaysThatATableIsARunOrNone() {
    String bare = "No | mL | ABV | Temp C ; a|200|74|18 ; b|500|72|18 ; c|500|71|18 ; d|500|70|18";
    assertEquals(List.of(), understand(bare).runs());
    assertEquals(1, understand(bare, "header row = 1\nrun = yes").runs().size());
    String jars = "Jar | mL | ABV | Temp C ; 1|200|74|18 ; 2|500|72|18 ; 3|500|60|19 ; 4|500|40|19";
    assertEquals(1, understand(jars).runs().size());
    assertEquals(List.of(), understand(jars, "header row = 1\nrun = no").runs());
  }

  @Test
  void whatWasUnderstoodIsReadBackFromItsMap() {
    String jars =
        "Still run, charge 10 L of 30 % ; Jar | mL | ABV | Temp C ; 1|200|74|18 ; 2|500|72|18 ;"
            + " 3|500|60|19 ; 4|500|40|19";
    Understanding first = understand(jars);
    Understanding again = understand(jars, LogMap.write(List.of(first)));
    assertEquals(first.runs().get(0).settings(), again.runs().get(0).settings());
    assertEquals(
        first.runs().get(0).parts().get(0).charge().pureAlcohol(),
        again.runs().get(0).parts().get(0).charge().pureAlcohol());
  }
}
