package washbook.runner.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.log.language.Language;

/** What is wrong with a command line is said in the language that it names. */
class WrongCommandLinesTest {
  private static final Pattern ENGLISH =
      Pattern.compile(
          "\\b(unknown|missing|invalid|expected|solutions|there|must|is not"
              + "|the|that|can|be|given|already|needs|exclude|see)\\b",
          Pattern.CASE_INSENSITIVE);

  private static final String[] WRONG = {
    "fill --outt x",
    "fill",
    "fill a.csv --as formulas",
    "fill a.csv --threads many",
    "fill a.csv --threads 0",
    "fill a.csv --out",
    "fill a.csv --out x --in-place",
    "fill a.csv --backup",
    "fill a.csv --columns no-such",
    "fill a.csv --scale no-such",
    "fill a.csv --shard 9/2",
    "fill a.csv --shard nine",
    "fill a.csv --report a.txt",
    "fill a.csv --report no-such/a.html",
    "fill a.csv --chart --columns abv",
    "fill a.csv --quiet --quiet",
    "fill a.csv --map no-such.map",
    "fil a.csv",
    "audit a.csv --report a.txt",
    "season . --out s.txt",
    "season . --out no-such/s.html",
    "season . --threads 0 --out s.html",
    "watch no-such",
    "watch . --threads 0",
    "report merge --out r.txt r.json",
    "calc NOSUCH 1",
    "calc ABV 1.085 1.3"
  };

  @ParameterizedTest
  @EnumSource(value = Language.class, names = "EN", mode = EnumSource.Mode.EXCLUDE)
  void noMistakeIsToldInEnglish(Language language) {
    for (String line : WRONG) {
      String[] words = (line + " --language " + language.code()).split(" ");
      Cli run = Cli.run(words);
      assertTrue(run.code() == ExitCode.USAGE || run.code() == ExitCode.REFUSED, line + run.err());
      String told = run.err().replaceAll("washbook [\\w ]*--help|--[a-z-]+|no-such\\S*", "");
      assertFalse(ENGLISH.matcher(told).find(), line + ": " + told);
      assertFalse(told.isBlank() || told.contains("{"), line + ": " + told);
    }
  }

  @Test
  void whoReadsEnglishGetsTheSentencesOfTheLibrary() {
    assertEquals(
        "Invalid value for option '--threads': 'many' is not an int"
            + System.lineSeparator()
            + "'washbook fill --help' lists what can be given."
            + System.lineSeparator(),
        Cli.run("fill", "a.csv", "--threads", "many", "--language", "en").err());
    assertTrue(
        Cli.run("fill", "a.csv", "--outt", "x", "--language", "en")
            .err()
            .startsWith("Unknown option: '--outt'"));
  }

  @Test
  void aMistakeIsNamedWithWhatWouldBeRight() {
    assertEquals(
        "Ungültiger Wert für --as (FORM): „formulas“ ist keines von values, pack, portable",
        first("fill", "a.csv", "--as", "formulas", "--language", "de"));
    assertEquals(
        "Il manque une valeur pour --out (DIR)",
        first("fill", "a.csv", "--language", "fr", "--out"));
    assertEquals("Falta: FILE", first("fill", "--language", "es"));
  }

  private static String first(String... words) {
    return Cli.run(words).err().lines().findFirst().orElse("");
  }

  @ParameterizedTest
  @ValueSource(strings = {"--language de", "--language=de"})
  void calcSpeaksTheLanguageThatIsNamed(String option) {
    Cli run = Cli.run(("calc ABV 1.085 1.3 " + option).split(" "));
    assertEquals(ExitCode.REFUSED, run.code());
    assertEquals("Dichte: 1,3 ist zu hoch; zulässig ist 0,97 bis 1,19 SG.", run.err().strip());
    assertEquals("23", Cli.run(("calc CONVERT -5 C F " + option).split(" ")).out().strip());
    assertEquals(
        "Die Dichte 1,06 liegt über der Anfangsdichte 1,05.",
        Cli.run(("calc REASON ABV 1.05 1.06 " + option).split(" ")).out().strip());
  }
}
