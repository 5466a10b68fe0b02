package washbook.log.overview;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import washbook.functions.ferment.Outlook;
import washbook.log.WarningLimits;
import washbook.log.language.Language;
import washbook.log.overview.Warning.Kind;

/** What is warned of, at both sides of every limit. */
class WarningsTest {
  private static double[] numbers(String text) {
    return text == null
        ? new double[0]
        : Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
  }

  private static BatchReadings readings(String gravities, String temperatures) {
    double[] sg = numbers(gravities);
    double[] warmth = numbers(temperatures);
    return new BatchReadings(
        IntStream.range(1, sg.length + 1).toArray(),
        IntStream.range(0, sg.length).asDoubleStream().toArray(),
        sg,
        IntStream.range(1, warmth.length + 1).toArray(),
        warmth,
        row -> "B" + (row + 1),
        row -> "C" + (row + 1),
        sg.length,
        sg.length - 1);
  }

  private static BatchOverview batch(String state, Double days, Double alcohol, Double left) {
    return new BatchOverview(
        "Sheet1",
        "Plum 3",
        "SUGAR",
        "2025-10-01",
        "2025-10-05",
        days,
        5,
        0,
        1.085,
        1.04,
        alcohol,
        0.1,
        50.0,
        40.0,
        left,
        1.0,
        state,
        null,
        null,
        null,
        null,
        List.of(),
        null);
  }

  private static List<Warning> of(
      BatchOverview batch, BatchReadings readings, Outlook outlook, String... limits) {
    return new Warnings(WarningLimits.parse(List.of(limits)))
        .of(batch, readings, outlook).stream().map(found -> found.in(Language.EN)).toList();
  }

  /** Above 32 °C and below 10 °C, common practice; the furthest one is named. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "20 32 10 | |",
        "20 32.1 20 | | TOO_WARM C3 32.1 °C is above 32 °C.",
        "33 36 36 | | TOO_WARM C3 36.0 °C is above 32 °C.",
        "20 9.9 | | TOO_COLD C3 9.9 °C is below 10 °C.",
        "9 5 5 8 | | TOO_COLD C3 5.0 °C is below 10 °C.",
        "28 29 | warmest=28 | TOO_WARM C3 29.0 °C is above 28 °C.",
        "12 20 | coldest=15 | TOO_COLD C2 12.0 °C is below 15 °C.",
      })
  void aTemperature(String temperatures, String limit, String expected) {
    List<Warning> found =
        of(
            batch("working", 5.0, 5.0, 9.0),
            readings("1.085 1.06 1.04", temperatures),
            null,
            limit == null ? new String[0] : new String[] {limit});
    assertEquals(expected == null ? 0 : 1, found.size());
    for (Warning warning : found) {
      assertEquals(expected, warning.kind() + " " + warning.cell() + " " + warning.reason());
      assertEquals(
          limit == null ? "common practice, no source" : "limit as given", warning.source());
    }
  }

  /** A fall of four points, twice what two readings differ by, is a ferment that has begun. */
  @ParameterizedTest
  @CsvSource({
    "1.085 1.0811, 3.1, lag, true",
    "1.085 1.0809, 3.1, lag, false",
    "1.085 1.0811, 3, lag, false",
    "1.085 1.0811, 3.1, done, false",
    "1.085, 3.1, lag, false",
  })
  void aWashThatHasNotBegunToFall(String gravities, double days, String state, boolean warned) {
    List<Warning> found = of(batch(state, days, 0.0, 20.0), readings(gravities, null), null);
    assertEquals(warned ? List.of(Kind.NOT_FALLING) : List.of(), kinds(found));
  }

  @Test
  void aWashThatHasNotBegunIsToldInDaysAndPoints() {
    BatchOverview batch = batch("lag", 4.0, 0.0, 20.0);
    assertEquals(
        "after 4.0 days the gravity has fallen by 2.0 points; it should have begun within 3 days.",
        of(batch, readings("1.085 1.083", null), null).get(0).reason());
    assertEquals(
        "after 4.0 days the gravity has fallen by 0.0 points; it should have begun within 2 days.",
        of(batch, readings("1.085 1.086", null), null, "lag-days=2").get(0).reason());
    assertEquals(List.of(), of(batch("lag", null, 0.0, 20.0), readings("1.085 1.083", null), null));
  }

  @Test
  void aStuckWashIsToldWithWhatIsLeft() {
    Warning warning =
        of(batch("stuck", 9.0, 6.0, 12.5), readings("1.085 1.05 1.04", null), null).get(0);
    assertEquals(Kind.STUCK, warning.kind());
    assertEquals(
        "the gravity stands still at 1.0400, above its expected end of 1.000; 12.5 % by mass of extract are"
            + " left.",
        warning.reason());
  }

  @ParameterizedTest
  @CsvSource({"10, 10.01, true", "10, 10, false", "10, , false", ", 20, false"})
  void alcoholAboveAPlan(String planned, Double alcohol, boolean warned) {
    String[] limits = planned == null ? new String[0] : new String[] {"planned-abv=" + planned};
    List<Warning> found =
        of(batch("working", 5.0, alcohol, 9.0), readings("1.085 1.06", null), null, limits);
    assertEquals(warned ? List.of(Kind.ABOVE_PLAN) : List.of(), kinds(found));
  }

  /** Eight points outside the two readings beside it, which themselves fall. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.080 1.0881 1.070 | B3 1.0881 is 8.1 points above the readings beside it; more than 8 points.",
        "1.080 1.0879 1.070 |",
        "1.080 1.0619 1.070 | B3 1.0619 is 8.1 points below the readings beside it; more than 8 points.",
        "1.080 1.0621 1.070 |",
        "1.080 1.075 1.070 |",
        "1.080 1.060 1.0821 |",
        "1.080 1.060 1.0819 | B3 1.0600 is 21.9 points below the readings beside it; more than 8 points.",
        "1.099 1.080 1.070 |",
        "1.080 1.070 1.040 |",
        "1.085 1.080 1.050 1.070 1.060 | B4 1.0500 is 20.0 points below the readings beside it; more than 8 points.",
      })
  void aReadingOffThoseBesideIt(String gravities, String expected) {
    List<Warning> found = of(batch("working", 2.0, 5.0, 9.0), readings(gravities, null), null);
    assertEquals(expected == null ? 0 : 1, found.size(), found.toString());
    for (Warning warning : found) {
      assertEquals(Kind.SUSPICIOUS, warning.kind());
      assertEquals(expected, warning.cell() + " " + warning.reason());
    }
  }

  /** A slip that stays between its neighbours is told by the course, if it bends them by twice. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1.085 1.049 1.047 1.046 | 0 -0.014 0.001 0 | B3 1.0490 is 14.5 points below the fitted course; more than 8 points.",
        "1.080 1.078 1.040 1.038 | 0 0.013 -0.001 0 | B3 1.0780 is 13.5 points above the fitted course; more than 8 points.",
        "1.080 1.052 1.050 1.048 | 0 -0.014 0.001 0 |",
        "1.085 1.049 1.047 1.046 | 0 -0.007 0 0 |",
        "1.085 1.049 1.047 1.046 | NaN -0.014 0.001 0 |",
      })
  void aReadingOffTheFittedCourse(String gravities, String offCourse, String expected) {
    Outlook outlook = new Outlook("working", null, numbers(offCourse));
    List<Warning> found = of(batch("working", 5.0, 5.0, 9.0), readings(gravities, null), outlook);
    assertEquals(expected == null ? 0 : 1, found.size(), found.toString());
    for (Warning warning : found) {
      assertEquals(expected, warning.cell() + " " + warning.reason());
    }
  }

  /** Four days without a reading while it works; after 90 the log was put away. */
  @ParameterizedTest
  @CsvSource({
    "working, 2025-10-09, false",
    "working, 2025-10-10, true",
    "lag, 2025-10-10, true",
    "slowing, 2025-10-10, true",
    "restarted, 2025-10-10, true",
    "done, 2025-10-10, false",
    "stuck, 2025-10-10, false",
    "working, 2026-01-03, true",
    "working, 2026-01-04, false",
  })
  void aReadingIsOverdue(String state, LocalDate today, boolean overdue) {
    BatchOverview batch = batch(state, 4.0, 5.0, 9.0);
    assertEquals(overdue, new Warnings(WarningLimits.usual()).overdue(batch, today, 4).isPresent());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "working | it was last read on 2025-10-05, 7 days ago, and was working; more than 4 days.",
        "lag | it was last read on 2025-10-05, 7 days ago, and was not working yet; more than 4 days.",
      })
  void anOverdueReadingIsToldWithItsDate(String state, String reason) {
    Warning warning =
        new Warnings(WarningLimits.usual())
            .overdue(batch(state, 4.0, 5.0, 9.0), LocalDate.of(2025, 10, 12), 4)
            .orElseThrow()
            .in(Language.EN);
    assertEquals(reason, warning.reason());
    assertEquals("", warning.cell());
  }

  @Test
  void aWarningIsToldInThePersonsLanguageWithItsDatesAndDecimals() {
    Warning overdue =
        new Warnings(WarningLimits.usual())
            .overdue(batch("working", 4.0, 5.0, 9.0), LocalDate.of(2025, 10, 12), 4)
            .orElseThrow()
            .in(Language.DE);
    assertEquals(
        "Zuletzt am 05.10.2025 gemessen, vor 7 Tagen (Grenze: 4 Tage); Stand damals: in Gärung.",
        overdue.reason());
    assertEquals("übliche Praxis, ohne Quelle", overdue.source());
    Warning warm =
        new Warnings(WarningLimits.parse(List.of("warmest=28.5")))
            .of(batch("working", 5.0, 5.0, 9.0), readings("1.085 1.06", "20 31.2"), null)
            .get(0)
            .in(Language.FR);
    assertEquals("31,2 °C dépasse 28,5 °C.", warm.reason());
    assertEquals("trop chaud", warm.kind().message().in(Language.FR));
  }

  /** Both ends of each limit are accepted. */
  @ParameterizedTest
  @CsvSource({
    "warmest, -20, 60",
    "coldest, -20, 60",
    "lag-days, 0.1, 60",
    "overdue-days, 0.1, 365",
    "closed-days, 1, 36500",
    "planned-abv, 0.1, 25",
    "final-gravity, 0.98, 1.1",
    "off-points, 1, 200",
  })
  void aLimitHasARange(String word, double least, double most) {
    assertEquals(word + "=" + show(least), WarningLimits.parse(set(word, least)).toString());
    assertEquals(word + "=" + show(most), WarningLimits.parse(set(word, most)).toString());
    String low = refusal(set(word, least - 0.01));
    assertTrue(
        low.contains("must be " + word + "=NUMBER, " + show(least) + " to " + show(most)), low);
    assertEquals(low.substring(low.indexOf(" must")), tail(refusal(set(word, most + 0.01))));
  }

  private static String tail(String refusal) {
    return refusal.substring(refusal.indexOf(" must"));
  }

  private static String show(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  private static List<String> set(String word, double value) {
    return List.of(word + "=" + value);
  }

  private static String refusal(List<String> settings) {
    return assertThrows(IllegalArgumentException.class, () -> WarningLimits.parse(settings))
        .getMessage();
  }

  @Test
  void limitsAreReadWhateverTheirCaseAndSpaces() {
    assertEquals(
        "warmest=28,off-points=5",
        WarningLimits.parse(List.of(" Off-Points = 5", "WARMEST=28")).toString());
    assertEquals("", WarningLimits.usual().toString());
    assertEquals(
        "There is no limit 'hottest'; there are warmest, coldest, lag-days, overdue-days,"
            + " closed-days, planned-abv, final-gravity, off-points.",
        refusal(List.of("hottest=3")));
  }

  private static List<Kind> kinds(List<Warning> warnings) {
    return warnings.stream().map(Warning::kind).toList();
  }

  /** An overview that is looked at later is overdue by the later day, by no other. */
  @ParameterizedTest
  @CsvSource({
    "2025-10-09, 0",
    "2025-10-10, 1",
    "2026-01-03, 1",
    "2026-01-04, 0",
  })
  void anOverviewIsOverdueByTheDayOnWhichItIsLookedAt(LocalDate today, int overdue) {
    BatchOverview plum = batch("working", 4.0, 5.0, 3.0);
    BatchOverview then = plum.asOf(today, WarningLimits.usual(), Language.EN);
    assertEquals(overdue, then.warnings().size());
    BatchOverview again = then.asOf(LocalDate.of(2025, 10, 10), WarningLimits.usual(), Language.EN);
    assertEquals(1, again.warnings().size());
    assertEquals("reading overdue", again.warnings().get(0).kind().word());
    Warning warm = new Warning(Kind.TOO_WARM, "C3", "reason", "source");
    BatchOverview both = then.with(List.of(warm)).asOf(today, WarningLimits.usual(), Language.EN);
    assertEquals(warm, both.warnings().get(0));
    assertEquals(1 + overdue, both.warnings().size());
    WarningLimits later = WarningLimits.parse(List.of("overdue-days=200", "closed-days=300"));
    assertEquals(0, plum.asOf(today, later, Language.EN).warnings().size());
  }

  @Test
  void aStateIsToldInWords() {
    assertEquals("slowing", batch("slowing", 4.0, 5.0, 3.0).stateMessage().in(Language.EN));
    assertEquals(
        "too few readings",
        batch("too few readings", 4.0, 5.0, 3.0).stateMessage().in(Language.EN));
    assertEquals("asleep", batch("asleep", 4.0, 5.0, 3.0).stateMessage().in(Language.EN));
    assertTrue(!batch("done", 4.0, 5.0, 3.0).stateMessage().in(Language.DE).equals("done"));
  }
}
