package washbook.log.run;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.log.MapAnswer;
import washbook.log.StillRun;
import washbook.log.Understanding;
import washbook.log.language.Language;
import washbook.log.sheet.TestGrid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Which proof is meant, what single rows say of their strength, and slips among strengths. */
class StrengthsOfJarsTest {
  private static TestGrid grid(String text) {
    return TestGrid.of("Run", text.replace('^', '|').replace(" ;", "\n"));
  }

  private static Understanding understand(TestGrid grid, String map) {
    return SheetUnderstanding.understand(grid, LogMap.parse(map));
  }

  /** True strengths, - where there is none. */
  private static String strengths(TestGrid grid, String map) {
    StringJoiner told = new StringJoiner(" ");
    for (StillRun run : understand(grid, map).runs()) {
      JarRows rows = new JarRows(grid, run);
      for (StillRun.Part part : run.parts()) {
        for (int row : part.rows()) {
          rows.read(row);
          boolean none = Double.isNaN(rows.trueStrength);
          told.add(none ? "-" : String.format(Locale.ROOT, "%.1f", rows.trueStrength));
        }
      }
    }
    return told.toString();
  }

  private static TestGrid proofs(String title, String header) {
    return grid(
        title
            + " ; Jar^mL^"
            + header
            + "^Temp C ; 1^200^140^20 ; 2^500^133^20 ; 3^500^120^20 ; 4^500^70^20");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Still run, strengths corrected to 20 °C; Proof US; 70.0 66.5 60.0 35.0",
        "Still run, strengths corrected to 20 °C; US proof; 70.0 66.5 60.0 35.0",
        "Still run, strengths corrected to 20 °C; Proof (UK); 80.0 76.0 68.6 40.0",
        "Still run, strengths corrected to 20 °C; British proof; 80.0 76.0 68.6 40.0",
        "Still run of 60 proof (US), strengths corrected to 20 °C; Proof; 70.0 66.5 60.0 35.0",
        "Still run of 60 UK proof, strengths corrected to 20 °C; Proof; 80.0 76.0 68.6 40.0",
        "Still run, proof 100 = 57.1 %, strengths corrected to 20 °C; Proof; 80.0 76.0 68.6 40.0",
      })
  void theSheetSaysWhichProof(String title, String header, String strengths) {
    assertEquals(strengths, strengths(proofs(title, header), ""));
  }

  @Test
  void proofAloneIsAskedForAndEitherAnswerFills() {
    TestGrid grid =
        proofs("Still run, 9 gallons (imperial), strengths corrected to 20 °C", "Proof");
    List<MapAnswer> answers = understand(grid, "").doubts().get(0).answers();
    assertEquals(
        List.of("column C = STRENGTH in PROOFUS", "column C = STRENGTH in PROOFUK"),
        answers.stream().map(a -> a.lines().get(0)).toList());
    String header = "header row = 2\n";
    assertEquals("70.0 66.5 60.0 35.0", strengths(grid, header + answers.get(0).lines().get(0)));
    assertEquals("80.0 76.0 68.6 40.0", strengths(grid, header + answers.get(1).lines().get(0)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "The glass hydrometer is a 60F one; 140/9",
        "Hydrometer set for 60 F; 140/9",
        "Alcoholometer 15 °C, not corrected; 15",
        "Spindel 20°C; 20",
        "Old British proof at 60 °F; 140/9",
      })
  void whatTheInstrumentIsMadeForIsItsCalibration(String line, String celsius) {
    RunLines lines = new RunLines(grid(line), 0, 0, 0, 0);
    double wanted = celsius.equals("140/9") ? 140.0 / 9 : Double.parseDouble(celsius);
    assertEquals(wanted, lines.calibrationC, 1e-9);
    assertEquals(Double.NaN, lines.temperatures.ofAll(List.of()));
  }

  /** Degrees of strength are no temperature of the spirit. */
  @ParameterizedTest
  @CsvSource({"wine 120 L 8 °GL glass", "spirit of 27°, charge", "50 L of spirit at 27º"})
  void degreesOfStrengthAreNoTemperature(String line) {
    assertEquals(Double.NaN, new RunLines(grid(line), 0, 0, 0, 0).temperatures.ofAll(List.of()));
  }

  private static final String READ_72 =
      String.format(
          Locale.ROOT,
          "%.1f",
          ((Answer.Number) Catalogue.get("TRUESTRENGTH").call(72.0, 25.0, 20.0)).value());

  private static TestGrid states(String title, String header, String... marks) {
    StringBuilder text = new StringBuilder(title + " ; Jar^mL^ABV^" + header + "^Temp C");
    int strength = 80;
    for (int i = 0; i < marks.length; i++) {
      text.append(" ; " + (i + 1) + "^500^" + strength + "^" + marks[i] + "^25");
      strength -= 8;
    }
    return grid(text.toString());
  }

  @Test
  void aColumnTellsRowByRowWhetherAStrengthIsAsRead() {
    String[] words = {"corrected", "read", "corrected", "corrected", ""};
    assertEquals(
        "80.0 " + READ_72 + " 64.0 56.0 -", strengths(states("Still run", "State", words), ""));
    String[] marks = {"C", "L", "C", "C", ""};
    assertEquals(
        "80.0 " + READ_72 + " 64.0 56.0 -",
        strengths(states("Still run; L = read; C = corrected to 20 °C", "L/C", marks), ""));
  }

  @Test
  void aNoteTellsOfItsOwnRow() {
    String[] notes = {"this one corrected to 20 °C", "", "", "", ""};
    String told = strengths(states("Still run", "Note", notes), "");
    assertTrue(told.startsWith("80.0 " + READ_72), told);
  }

  @Test
  void aNoteTellsTheTemperatureOfARowThatHasNone() {
    TestGrid grid =
        grid(
            "Still run; spirit read at 20 °C ; Jar^mL^ABV^Note ; 1^500^80^ ; 2^500^72^warm jar,"
                + " 25 °C ; 3^500^64^cellar 12 °C ; 4^500^50^vapour 85 °C");
    assertEquals("80.0 " + READ_72 + " 64.0 50.0", strengths(grid, ""));
  }

  @Test
  void dittoMarksRepeatATemperature() {
    TestGrid grid =
        grid(
            "Still run ; Jar^mL^ABV^Temp C ; 1^500^80^20 ; 2^500^72^25 ; 3^500^72^\" ;"
                + " 4^500^72^\" ; 5^500^50^20");
    assertEquals("80.0 " + (READ_72 + " ").repeat(3) + "50.0", strengths(grid, ""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "80 78 7.6 74 70; 80.0 78.0 - 74.0 70.0",
        "80 78 97 74 70; 80.0 78.0 - 74.0 70.0",
        "80 78 ca._76 74 70; 80.0 78.0 - 74.0 70.0",
        "80 78 76? 74 70; 80.0 78.0 - 74.0 70.0",
      })
  void aSlipOrAnInexactStrengthIsRefused(String jars, String told) {
    StringBuilder text = new StringBuilder("Still run ; Jar^mL^ABV^Temp C");
    int jar = 1;
    for (String strength : jars.split(" ")) {
      text.append(" ; " + jar++ + "^500^" + strength.replace('_', ' ') + "^20");
    }
    assertEquals(told, strengths(grid(text.toString()), ""));
  }

  @Test
  void aSlipIsRefusedWithItsReason() {
    TestGrid grid =
        grid(
            "Still run ; Jar^mL^ABV^Temp C ; 1^500^80^20 ; 2^500^7.8^20 ; 3^500^76^20 ;"
                + " 4^500^50^20");
    JarRows rows = new JarRows(grid, understand(grid, "").runs().get(0));
    rows.read(3);
    assertTrue(
        rows.refusal.reason(Language.EN).contains("7.8 does not fit between"),
        rows.refusal.reason(Language.EN));
  }

  @Test
  void whereOnlyTheOwnTrueStrengthStandsItIsTaken() {
    TestGrid grid =
        grid(
            "Still run ; Jar^mL^ABV read^ABV at 20 °C^Temp C ; 1^500^80^79^20 ; 2^500^72^71^25 ;"
                + " 3^500^^64.4^25 ; 4^500^50^^20");
    assertEquals("80.0 " + READ_72 + " 64.4 50.0", strengths(grid, ""));
  }

  @Test
  void anotherRunIsAnsweredWithItsRow() {
    TestGrid grid =
        grid(
            "Still run ; Time^mL^ABV^Temp C ; a^500^80^20 ; b^500^60^20 ; c^500^40^20 ;"
                + " d^500^78^20 ; e^500^60^20 ; f^500^40^20");
    MapAnswer answer =
        understand(grid, "header row = 2\nrun = yes").doubts().get(0).answers().get(0);
    assertEquals(List.of("batch from row 6 = Still run 2"), answer.lines());
    String map = "header row = 2\nrun = yes\n" + answer.lines().get(0);
    assertEquals(2, understand(grid, map).runs().get(0).parts().size());
    assertEquals("Still run 2", understand(grid, map).runs().get(0).parts().get(1).name());
  }

  @Test
  void aCellWithItsOwnUnitIsReadInIt() {
    TestGrid grid =
        grid(
            "Still run ; Jar^mL^ABV^Temp C ; 1^500^80^20 ; 2^500^72^77 °F ; 3^500^64^20 ;"
                + " 4^500^50^20");
    assertEquals("80.0 " + READ_72 + " 64.0 50.0", strengths(grid, ""));
  }

  private static StillRun runWith(String below) {
    String jars =
        "Still run ; Jar^mL^ABV^Temp C ; 1^500^80^20 ; 2^500^72^ ; 3^500^64^20 ; 4^500^50^20 ; ; ";
    return understand(grid(jars + below), "").runs().get(0);
  }

  /** Lines below speak of the whole that was made as well as of the jars. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Alcoholometer calibrated at 15 °C ! 15 ! false ! NaN ! NaN",
        "Strengths corrected to 20 °C ! 20 ! true ! NaN ! NaN",
        "Charge 10 L of 30 % ! 20 ! false ! NaN ! 10",
        "All mixed, strength corrected to 20 °C 62 % ! 20 ! false ! NaN ! NaN",
        "Spirit rests at 12 °C ! 20 ! false ! NaN ! NaN",
        "Distilled 3.2 L of 62 % ! 20 ! false ! NaN ! NaN",
        "Left in the pot 5 L of 2 % ! 20 ! false ! NaN ! NaN",
      })
  void linesBelowSpeakOfTheJarsToo(
      String line, double calibration, boolean corrected, double temperature, double charged) {
    StillRun run = runWith(line);
    assertEquals(calibration, run.settings().calibrationC());
    assertEquals(corrected, run.settings().corrected());
    assertEquals(temperature, run.settings().temperatureC());
    assertEquals(charged, run.parts().get(0).charge().litres());
  }

  @ParameterizedTest
  @CsvSource({
    "18 20 30 45, TEMPERATURE in C",
    "84 85 88 91, HEAD_TEMPERATURE in C",
  })
  void degreesThatMayBeAnythingAreAskedFor(String degrees, String first) {
    String[] each = degrees.split(" ");
    StringBuilder text = new StringBuilder("Still run ; Jar^mL^ABV^T");
    for (int i = 0; i < 4; i++) {
      text.append(" ; " + (i + 1) + "^500^" + (80 - 10 * i) + "^" + each[i]);
    }
    List<MapAnswer> answers = understand(grid(text.toString()), "").doubts().get(0).answers();
    assertEquals(
        List.of("column D = " + first, "column D = TEMPERATURE in F"),
        answers.stream().map(a -> a.lines().get(0)).toList());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "corrected to 20 °C?;no;yes",
        "¿corregido a 20 °C?;no;sí",
        "korrigiert?;nein;ja",
        "corrigé ?;non;oui",
        "gecorrigeerd;n;j",
      })
  void aColumnMayAskWhetherAStrengthIsCorrected(String header, String no, String yes) {
    TestGrid grid =
        grid(
            "Still run ; Jar^mL^% vol^"
                + header
                + "^Temp C ; 1^200^77^"
                + no
                + "^15 ; 2^500^75^"
                + yes
                + "^15 ; 3^500^70^"
                + yes
                + "^ ; 4^500^60^"
                + no
                + "^20 ; 5^500^50^^20");
    assertEquals("78.5 75.0 70.0 60.0 -", strengths(grid, ""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "Run 2, from here the new alcoholometer, calibrated at 15 °C;true",
        "Brand 2, ab hier das neue Alkoholometer, geeicht bei 15 °C;true",
        "Run 2, calibrated at 20 °C like the first;false",
      })
  void anotherInstrumentFromALineOnIsAskedAbout(String line, boolean asked) {
    TestGrid grid =
        grid(
            "Still run ; Jar^mL^% vol^Temp C ; 1^200^77^15 ; 2^500^75^15 ; 3^500^60^15 ; "
                + line
                + " ; 1^200^76^15 ; 2^500^70^15 ; 3^500^55^15");
    assertEquals(asked, !understand(grid, "").doubts().isEmpty());
    assertEquals(asked, strengths(grid, "").isEmpty());
  }

  /** What is said of the still, of its charge or of the company settles nothing of the spirit. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Still run, low wines brought to 30 % abv ! 20 ! false",
        "Still run, low wines of 28 % brought to the boil slowly ! 20 ! false",
        "Destillato riportato in caldaia al 30 %, still run ! 20 ! false",
        "Still run. Kettle set at 18 °C overnight ! 20 ! false",
        "Still run. Still set at 92 °C ! 20 ! false",
        "Still run. Alcoholmeter at 18 °C all day ! 20 ! false",
        "Still run. Alcoholmeter for 15 °C ! 15 ! false",
        "Still run. All strengths adjusted to 20 °C ! 20 ! true",
      })
  void onlyWhatIsSaidOfTheSpiritCounts(String line, double calibration, boolean corrected) {
    StillRun run =
        understand(
                grid(
                    line
                        + " ; Jar^mL^ABV^Temp C ; 1^500^80^20 ; 2^500^72^21 ; 3^500^64^20 ;"
                        + " 4^500^50^20"),
                "")
            .runs()
            .get(0);
    assertEquals(calibration, run.settings().calibrationC());
    assertEquals(corrected, run.settings().corrected());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "Still run for two of us, 5 gal of 9 % charged ! false",
        "Still run, 5 US gal of 9 % charged ! true",
        "Still run, english apples, 5 gal of 9 % charged ! false",
      })
  void gallonsAreAmericanWhereThatStandsBesideThem(String line, boolean known) {
    Understanding sheet =
        understand(
            grid(line + " ; Jar^gal^ABV^Temp C ; 1^0.1^80^20 ; 2^0.1^72^20 ; 3^0.1^60^20"), "");
    assertEquals(known, sheet.doubts().isEmpty(), sheet.doubts().toString());
  }

  @Test
  void aDittoMarkRepeatsTheUnitToo() {
    TestGrid grid =
        grid(
            "Still run ; Jar^mL^ABV^Temp C ; 1^500^80^20 ; 2^1.5 L^72^20 ; 3^\"^60^20 ;"
                + " 4^400^50^20");
    JarRows rows = new JarRows(grid, understand(grid, "").runs().get(0));
    rows.read(4);
    assertEquals(1.5, rows.readLitres, 1e-9);
  }

  @Test
  void jarsOfTheCutsAreOfOneRun() {
    TestGrid grid =
        grid(
            "Still run ; Jar^mL^ABV^Temp C ; F1^200^70^20 ; F2^200^69.1^20 ; H1^500^76^20 ;"
                + " H2^500^70^20 ; T1^500^40^20");
    assertEquals(1, understand(grid, "").runs().get(0).parts().size());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '!',
      value = {
        "garage down to 5 °C ! NaN",
        "condenser at 38 °C ! NaN",
        "spirit at 12 °C ! 12",
        "read at 12 °C ! 12",
      })
  void aNoteTellsTheTemperatureOfTheSpiritOnly(String note, double celsius) {
    TestGrid grid =
        grid(
            "Still run ; Jar^mL^ABV^Temp C^Notes ; 1^500^80^20^ ; 2^500^72^^"
                + note
                + " ; 3^500^60^20^ ; 4^400^50^20^");
    JarRows rows = new JarRows(grid, understand(grid, "").runs().get(0));
    rows.read(3);
    assertEquals(celsius, rows.temperatureC);
  }
}
