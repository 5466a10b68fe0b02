package washbook.runner.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import washbook.functions.Numbers;
import washbook.runner.card.Card.Kind;
import washbook.runner.card.Card.Setting;
import washbook.runner.card.CardTable.Column;
import washbook.runner.language.Wording;

/** Makes the cards: which rows and columns they have, and what each number is. */
public final class Cards {
  private static final double COLDEST = 5;
  private static final double WARMEST = 40;
  private static final double TABLE_STEP = 0.002;
  private static final int MOST_COLUMNS = 10;

  private final Wording words;

  private Cards(Wording words) {
    this.words = words;
  }

  /** The card of an instrument in its reader's language. */
  public static Card of(Instrument instrument, Wording words) {
    Cards cards = new Cards(words);
    return switch (instrument.kind()) {
      case SCALES -> cards.scales();
      case HYDROMETER -> cards.hydrometer(instrument);
      case ALCOHOLOMETER -> cards.alcoholometer(instrument);
    };
  }

  private Card scales() {
    double[] rows = CardNumber.steps(GravityScale.LIGHTEST, GravityScale.HEAVIEST, TABLE_STEP);
    List<Column> columns = new ArrayList<>();
    for (GravityScale scale : GravityScale.values()) {
      if (scale != GravityScale.GRAVITY) {
        columns.add(
            new Column(
                scale.title(words) + " (" + scale.unit(words) + ")",
                Double.NaN,
                0,
                scale.decimals(),
                false,
                scale.formula(),
                Arrays.stream(rows).map(scale::at).toArray()));
      }
    }
    return new Card(
        words,
        Kind.SCALES,
        words.say("card.scales.purpose"),
        List.of(),
        List.of(new CardTable("", words.say("card.corner.gravity"), "", rows, 3, columns)),
        List.of(
            words.say("card.scales.promise"),
            words.say("card.scales.rule"),
            words.say("card.scales.below"),
            words.say("card.meniscus"),
            words.say("card.safe")));
  }

  private Card hydrometer(Instrument own) {
    List<CardTable> tables = new ArrayList<>();
    String degrees = cell(own);
    if (own.brix()) {
      tables.add(
          corrections(
              own,
              words.say("card.before", "°Bx"),
              CardNumber.steps(0, 36, 4),
              "WASHBOOK.CORRECTEDBRIX({head}," + degrees + ",{calibration},{offset})-{head}",
              (reading, celsius) ->
                  CardNumber.of(
                      "CORRECTEDBRIX", reading, celsius, own.calibrationC(), own.offset())));
    } else {
      tables.add(
          corrections(
              own,
              words.say("card.before", gravity()),
              CardNumber.steps(1, 1.16, 0.02),
              "WASHBOOK.CORRECTEDGRAVITY({head}," + degrees + ",{calibration},,{offset})-{head}",
              (reading, celsius) ->
                  CardNumber.of(
                      "CORRECTEDGRAVITY",
                      reading,
                      celsius,
                      own.calibrationC(),
                      null,
                      own.offset())));
    }
    if (!Double.isNaN(own.original())) {
      tables.add(
          corrections(
              own,
              words.say("card.during", words.decimal(Numbers.round(own.original(), 4))),
              fermenting(own.original()),
              "WASHBOOK.CORRECTEDGRAVITY({head},"
                  + degrees
                  + ",{calibration},{original},{offset})-{head}",
              (reading, celsius) ->
                  CardNumber.of(
                      "CORRECTEDGRAVITY",
                      reading,
                      celsius,
                      own.calibrationC(),
                      own.original(),
                      own.offset())));
    }
    List<Setting> settings = new ArrayList<>();
    settings.add(calibration(own));
    settings.add(
        new Setting(
            "offset",
            words.say("card.setting.offset"),
            own.offset(),
            own.brix() ? 1 : 4,
            own.brix() ? "°Bx" : gravity()));
    if (!Double.isNaN(own.original())) {
      settings.add(
          new Setting(
              "original", words.say("card.setting.original"), own.original(), 4, gravity()));
    }
    return new Card(
        words,
        Kind.HYDROMETER,
        words.say("card.hydrometer.purpose"),
        settings,
        tables,
        List.of(
            between(),
            words.say("card.hydrometer.fermenting")
                + (own.brix() || !Double.isNaN(own.original())
                    ? ""
                    : " " + words.say("card.hydrometer.needs")),
            words.say("card.hydrometer.offset", words.decimal(own.brix() ? "0" : "1.000")),
            words.say("card.meniscus"),
            words.say("card.hydrometer.air") + " " + words.say("card.safe")));
  }

  /** The sign of specific gravity. */
  private String gravity() {
    return GravityScale.GRAVITY.title(words);
  }

  private String between() {
    return words.say("card.between") + " " + words.say("card.valid", CardTable.OUTSIDE);
  }

  private CardTable corrections(
      Instrument own,
      String title,
      double[] readings,
      String formula,
      DoubleBinaryOperator corrected) {
    double[] rows = temperatures(own);
    List<Column> columns = new ArrayList<>();
    for (double reading : readings) {
      double[] values = new double[rows.length];
      for (int i = 0; i < rows.length; i++) {
        values[i] = corrected.applyAsDouble(reading, own.celsius(rows[i])) - reading;
      }
      columns.add(
          new Column("", reading, own.brix() ? 0 : 3, own.brix() ? 2 : 4, true, formula, values));
    }
    return new CardTable(
        title,
        words.say("card.corner.wash", own.degrees()),
        words.say("card.across.hydrometer"),
        rows,
        0,
        columns);
  }

  /** From the driest reading up to the first gravity, in steps that leave few enough columns. */
  private static double[] fermenting(double original) {
    double least = GravityScale.LIGHTEST;
    for (double step : new double[] {0.01, 0.02}) {
      double[] readings = CardNumber.steps(least, Math.max(least, original), step);
      if (readings.length <= MOST_COLUMNS) {
        return readings;
      }
    }
    return CardNumber.steps(least, original, 0.025);
  }

  private Card alcoholometer(Instrument own) {
    List<CardTable> tables = new ArrayList<>();
    for (double least : new double[] {5, 55}) {
      double[] rows = temperatures(own);
      List<Column> columns = new ArrayList<>();
      for (double reading : CardNumber.steps(least, least + 45, 5)) {
        double[] values = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
          values[i] =
              CardNumber.of("TRUESTRENGTH", reading, own.celsius(rows[i]), own.calibrationC());
        }
        columns.add(
            new Column(
                "",
                reading,
                0,
                1,
                false,
                "WASHBOOK.TRUESTRENGTH({head}," + cell(own) + ",{calibration})",
                values));
      }
      tables.add(
          new CardTable(
              words.say("card.strength"),
              words.say("card.corner.spirit", own.degrees()),
              words.say("card.across.alcoholometer"),
              rows,
              0,
              columns));
    }
    return new Card(
        words,
        Kind.ALCOHOLOMETER,
        words.say("card.alcoholometer.purpose"),
        List.of(calibration(own)),
        tables,
        List.of(
            between(),
            words.say("card.alcoholometer.alone"),
            words.say("card.meniscus"),
            words.say("card.alcoholometer.fire") + " " + words.say("card.safe")));
  }

  private Setting calibration(Instrument own) {
    double celsius = own.calibrationC();
    return new Setting(
        "calibration",
        words.say("card.setting.calibration"),
        celsius,
        celsius == Math.rint(celsius) ? 0 : 2,
        "°C");
  }

  /** By sums and not by a call: its plain form ends a hair above 40 °C at 104 °F. */
  private static String cell(Instrument own) {
    return own.fahrenheit() ? "({row}-32)/1.8" : "{row}";
  }

  /** From 5 to 40 °C by one degree, or the even degrees Fahrenheit between. */
  private static double[] temperatures(Instrument own) {
    return own.fahrenheit() ? CardNumber.steps(42, 104, 2) : CardNumber.steps(COLDEST, WARMEST, 1);
  }
}
