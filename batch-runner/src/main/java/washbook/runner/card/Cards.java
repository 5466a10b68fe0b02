package washbook.runner.card;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import washbook.functions.Numbers;
import washbook.runner.card.Card.Kind;
import washbook.runner.card.Card.Setting;
import washbook.runner.card.CardTable.Column;

/** Makes the cards: which rows and columns they have, and what each number is. */
public final class Cards {
  static final String MENISCUS =
      "Read at the bottom of the curve (the meniscus) with your eye at the height of the liquid,"
          + " unless the instrument's own paper says that it is read at the upper rim.";
  static final String SAFE = "No number here says that a spirit is safe to drink.";
  private static final String VALID =
      CardTable.OUTSIDE
          + " means: outside the range for which the figures are valid. Nothing is continued beyond"
          + " it.";
  private static final double COLDEST = 5;
  private static final double WARMEST = 40;
  private static final double TABLE_STEP = 0.002;
  private static final int MOST_COLUMNS = 10;

  private Cards() {}

  public static Card of(Instrument instrument) {
    return switch (instrument.kind()) {
      case SCALES -> scales();
      case HYDROMETER -> hydrometer(instrument);
      case ALCOHOLOMETER -> alcoholometer(instrument);
    };
  }

  private static Card scales() {
    double[] rows = CardNumber.steps(GravityScale.LIGHTEST, GravityScale.HEAVIEST, TABLE_STEP);
    List<Column> columns = new ArrayList<>();
    for (GravityScale scale : GravityScale.values()) {
      if (scale != GravityScale.GRAVITY) {
        columns.add(
            new Column(
                scale.title() + " (" + scale.unit() + ")",
                Double.NaN,
                0,
                scale.decimals(),
                false,
                scale.formula(),
                Arrays.stream(rows).map(scale::at).toArray()));
      }
    }
    return new Card(
        Kind.SCALES,
        "One liquid on all scales, at 20 °C: read straight across. °Brix, °Plato and °Balling are"
            + " one scale here.",
        List.of(),
        List.of(new CardTable("", "SG (20/20 °C)", "", rows, 3, columns)),
        List.of(
            "Potential alcohol is a promise, not a measurement: what a wash could give, not what is"
                + " in the vessel.",
            "Rule: grams of sugar per litre over 17, the trade's plain division (common practice,"
                + " no source); it takes the last gram as fermented. Balance: a malt wash fermented"
                + " down to SG 1.000, by the balance of sugar, alcohol and gas. They differ because"
                + " they do not end at the same point and count another yield.",
            "Below SG 1.000 there is alcohol in the liquid: sugar scales show less than nothing"
                + " there, and a negative potential only says how far below water it is.",
            MENISCUS,
            SAFE));
  }

  private static Card hydrometer(Instrument own) {
    List<CardTable> tables = new ArrayList<>();
    String degrees = cell(own);
    if (own.brix()) {
      tables.add(
          corrections(
              own,
              "Wash before the ferment: add to the reading, °Bx",
              CardNumber.steps(0, 36, 4),
              "WASHBOOK.CORRECTEDBRIX({head}," + degrees + ",{calibration},{offset})-{head}",
              (reading, celsius) ->
                  CardNumber.of(
                      "CORRECTEDBRIX", reading, celsius, own.calibrationC(), own.offset())));
    } else {
      tables.add(
          corrections(
              own,
              "Wash before the ferment: add to the reading, SG",
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
              "Fermenting wash, first SG "
                  + Numbers.round(own.original(), 4)
                  + ": add to the reading, SG",
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
            "Shows too much",
            own.offset(),
            own.brix() ? 1 : 4,
            own.brix() ? "°Bx" : "SG"));
    if (!Double.isNaN(own.original())) {
      settings.add(new Setting("original", "First gravity", own.original(), 4, "SG"));
    }
    return new Card(
        Kind.HYDROMETER,
        "Find the temperature of the wash in the first column and the reading in the head; add the"
            + " number to the reading. The result holds at 20 °C.",
        settings,
        tables,
        List.of(
            "Between two columns or rows take what lies between their numbers. " + VALID,
            "Once it ferments the wash holds alcohol, which expands more than sugar solution."
                + (own.brix() || !Double.isNaN(own.original())
                    ? ""
                    : " A card for a fermenting wash needs its first gravity: --original."),
            "'Shows too much' is the reading in pure water at the calibration temperature, less"
                + (own.brix() ? " 0." : " 1.000."),
            MENISCUS,
            "A ferment gives off carbon dioxide, which can kill in closed rooms: air the room."
                + " "
                + SAFE));
  }

  private static CardTable corrections(
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
    return new CardTable(title, "Wash, " + own.degrees(), "the hydrometer shows", rows, 0, columns);
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

  private static Card alcoholometer(Instrument own) {
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
              "True strength, % vol at 20 °C",
              "Spirit, " + own.degrees(), "the alcoholometer shows, % vol", rows, 0, columns));
    }
    return new Card(
        Kind.ALCOHOLOMETER,
        "Find the temperature of the spirit in the first column and the reading in the head; the"
            + " number is the strength in % vol at 20 °C.",
        List.of(calibration(own)),
        tables,
        List.of(
            "Between two columns or rows take what lies between their numbers. " + VALID,
            "For spirit and water alone: dissolved sugar or wood make it read too low, and no number"
                + " here mends that.",
            MENISCUS,
            "Alcohol vapour burns and can explode: no flame or spark near the sample. Distilling"
                + " needs a licence in most places: local codes and licensed practice decide. "
                + SAFE));
  }

  private static Setting calibration(Instrument own) {
    double celsius = own.calibrationC();
    return new Setting(
        "calibration", "Calibrated at", celsius, celsius == Math.rint(celsius) ? 0 : 2, "°C");
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
