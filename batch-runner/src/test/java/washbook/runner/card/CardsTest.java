package washbook.runner.card;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.log.language.Language;
import washbook.runner.card.Card.Kind;
import washbook.runner.card.CardTable.Column;
import washbook.runner.file.UnusableFileException;
import washbook.runner.language.Wording;

/** What stands on the cards. Figures are the catalogue's, whose truth is tested where it is. */
class CardsTest {
  private static final Pattern TEXT =
      Pattern.compile(
          "<text x=\"([-0-9.]+)\" y=\"([-0-9.]+)\" font-family=\"[^\"]*\" font-size=\"([0-9.]+)\""
              + " text-anchor=\"([a-z]+)\"[^>]*>([^<]*)</text>");

  private static final Pattern DECIMAL_POINT = Pattern.compile("\\d\\.\\d");
  private static final double EIGHT_POINTS_MM = 8 * 25.4 / 72;

  private record Shown(double x, double y, double size, String anchor, String text) {
    /** As far as letters of that size reach on average. */
    double end() {
      return anchor.equals("start") ? x + 0.55 * size * text.length() : x;
    }
  }

  private static final Wording ENGLISH = new Wording(Language.EN);

  private static Card card(Instrument instrument) {
    return Cards.of(instrument, ENGLISH);
  }

  private static Instrument of(Kind kind) {
    return new Instrument(kind, false, 20, 0, Double.NaN, false);
  }

  private static List<Shown> texts(String svg) {
    List<Shown> texts = new ArrayList<>();
    Matcher matcher = TEXT.matcher(svg);
    while (matcher.find()) {
      texts.add(
          new Shown(
              Double.parseDouble(matcher.group(1)),
              Double.parseDouble(matcher.group(2)),
              Double.parseDouble(matcher.group(3)),
              matcher.group(4),
              matcher.group(5)));
    }
    return texts;
  }

  private static double height(List<Shown> page, String label, double least, double most) {
    return page.stream()
        .filter(t -> t.text().equals(label) && t.x() > least && t.x() < most)
        .findFirst()
        .orElseThrow()
        .y();
  }

  @Test
  void aMarkStandsAtTheHeightOfItsGravityOnEveryScale() {
    List<Shown> page = texts(CardPages.of(Cards.of(of(Kind.SCALES), ENGLISH), Paper.A4).get(0));
    double water = height(page, "1.000", 0, 43);
    double heavy = height(page, "1.100", 0, 43);
    double each = 31;
    double[][] marks = {
      {1, 20, CardNumber.of("CONVERT", 20.0, "BRIX", "SG")},
      {2, 10, CardNumber.of("CONVERT", 10.0, "BAUME", "SG")},
      {3, 85, 1.085},
      {5, 11, CardNumber.of("CONVERT", 11.0, "POTENTIAL", "SG")}
    };
    for (double[] mark : marks) {
      String label = CardNumber.plain(mark[1], 0);
      double left = Paper.MARGIN + each * mark[0];
      double expected = water + (heavy - water) * (mark[2] - 1) / 0.1;
      assertEquals(expected, height(page, label, left, left + each), 0.01, label);
    }
    double rule = 11 * 17.0;
    double gravity = CardNumber.of("CONVERT", rule, "GL", "SG");
    double left = Paper.MARGIN + each * 4;
    assertEquals(
        water + (heavy - water) * (gravity - 1) / 0.1, height(page, "11", left, left + each), 0.01);
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void nothingIsPrintedBelowEightPointsOrOffThePaper(Language language) {
    for (Paper paper : Paper.values()) {
      nothingIsPrintedBelowEightPointsOrOff(paper, new Wording(language));
    }
  }

  private static void nothingIsPrintedBelowEightPointsOrOff(Paper paper, Wording words) {
    for (Kind kind : Kind.values()) {
      Instrument own = new Instrument(kind, false, 15, 0.001, 1.085, true);
      List<String> pages = CardPages.of(Cards.of(own, words), paper);
      assertEquals(2, pages.size(), kind.name());
      for (String svg : pages) {
        List<Shown> texts = texts(svg);
        assertTrue(texts.size() > 200, kind + " " + texts.size());
        for (Shown text : texts) {
          assertTrue(text.size() > EIGHT_POINTS_MM - 0.01, text.toString());
          assertTrue(text.x() >= 10 && text.x() <= paper.width() - 10, text.toString());
          assertTrue(text.end() <= paper.width() - 4, text.toString());
          assertTrue(text.y() >= 10 && text.y() <= paper.height() - 5, text.toString());
        }
        String all = texts.stream().map(Shown::text).reduce("", (a, b) -> a + " " + b);
        assertTrue(all.contains(words.say("card.safe")), all);
        assertTrue(all.contains(words.say("card.read.here")), all);
        assertTrue(words.language() == Language.EN || !DECIMAL_POINT.matcher(all).find(), all);
      }
    }
  }

  @Test
  void aCorrectionIsWhatTheFunctionAddsToTheReading() {
    Card card = card(new Instrument(Kind.HYDROMETER, false, 15.56, 0.002, 1.085, false));
    Column dry = card.tables().get(1).columns().get(0);
    assertEquals(0.99, dry.reading());
    int row = 40 - 5;
    assertEquals(
        CardNumber.of("CORRECTEDGRAVITY", 0.99, 40.0, 15.56, 1.085, 0.002) - 0.99,
        dry.values()[row]);
    Column sweet = card.tables().get(0).columns().get(4);
    assertEquals(1.08, sweet.reading());
    assertEquals(
        CardNumber.of("CORRECTEDGRAVITY", 1.08, 5.0, 15.56, null, 0.002) - 1.08, sweet.values()[0]);
    assertEquals(36, sweet.values().length);
  }

  /** 65 % vol read at 12 °C is 67.66: OIML R 22:1975, general formula. */
  @Test
  void aStrengthOutsideTheTablesIsMarkedAndNotContinued() {
    CardTable strong = Cards.of(of(Kind.ALCOHOLOMETER), ENGLISH).tables().get(1);
    assertEquals("67.7", strong.columns().get(2).text(12 - 5));
    assertEquals(CardTable.OUTSIDE, strong.columns().get(9).text(0));
    assertEquals("100.0", strong.columns().get(9).text(20 - 5));
  }

  @Test
  void aWashThatCannotHaveFermentedThatFarIsMarked() {
    Card card = card(new Instrument(Kind.HYDROMETER, false, 20, 0, 1.01, false));
    CardTable fermenting = card.tables().get(1);
    assertEquals(0.99, fermenting.columns().get(0).reading());
    assertEquals(CardTable.OUTSIDE, fermenting.columns().get(0).text(0));
  }

  @Test
  void degreesFahrenheitAreThoseOfTheThermometerAlone() {
    Card card = card(new Instrument(Kind.ALCOHOLOMETER, false, 20, 0, Double.NaN, true));
    CardTable table = card.tables().get(0);
    assertEquals(42, table.rows()[0]);
    assertEquals(104, table.rows()[table.rows().length - 1]);
    double at68 = table.columns().get(7).values()[(68 - 42) / 2];
    assertEquals(table.columns().get(7).reading(), at68, 1e-9);
  }

  /**
   * Heads of the drawn scales have room for two lines, those of the table for a sixth of its half.
   */
  @ParameterizedTest
  @EnumSource(Language.class)
  void headsHaveRoomInEveryLanguage(Language language) {
    Wording words = new Wording(language);
    double each = (Paper.A4.width() - 2 * Paper.MARGIN) / GravityScale.values().length;
    for (GravityScale scale : GravityScale.values()) {
      String title = scale.title(words);
      assertTrue(Drawing.wrapped(title, each, Drawing.USUAL).size() <= 2, title);
      assertTrue(scale.unit(words).length() <= 20, scale.unit(words));
      for (String line : scale.narrow(words).split("\\|")) {
        assertTrue(line.length() <= 10, line);
      }
    }
  }

  @Test
  void withoutAnOfficeAPdfIsRefusedWithTheReason() {
    Card card = Cards.of(of(Kind.SCALES), ENGLISH);
    UnusableFileException refused =
        assertThrows(
            UnusableFileException.class, () -> CardPdf.of(card, Paper.A4, List.of(), "/nowhere"));
    assertTrue(refused.getMessage().contains("no program soffice on the PATH"));
  }
}
