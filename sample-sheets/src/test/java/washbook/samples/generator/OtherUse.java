package washbook.samples.generator;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** A table of something that is no ferment, though density or Brix and temperature stand in it. */
final class OtherUse {
  /** Where a word tells what it is. */
  enum Told {
    IN_HEADER,
    IN_TITLE,
    IN_SHEET_NAME,
    NOWHERE
  }

  private static final List<String[]> USES = Words.lines("other-uses.txt");

  private final String[] use;
  private final Words words;
  private final Choice choice;
  private final double lowest;
  private final double highest;
  private final double step;

  private OtherUse(String[] use, Choice choice) {
    this.use = use;
    this.choice = choice;
    words = Words.in(use[1]);
    double[] range = range(use[6]);
    lowest = range[0];
    highest = range[1];
    step = range[2];
  }

  static int kinds() {
    return USES.size();
  }

  static GeneratedLog log(long seed, int number) {
    Choice choice = new Choice(seed, number, 4);
    String[] use = choice.of(USES);
    Told told = choice.among(Told.values());
    Sheet sheet = new OtherUse(use, choice).sheet(told);
    return new GeneratedLog(
        seed,
        number,
        sheet,
        new Truth(Truth.Verdict.NOTHING, List.of()),
        "other, told " + told,
        List.of("other " + use[0], "told " + told));
  }

  private static double[] range(String text) {
    String[] parts = text.split("\\.\\.");
    return new double[] {
      Double.parseDouble(parts[0]),
      Double.parseDouble(parts[1]),
      parts.length > 2 ? Double.parseDouble(parts[2]) : 1
    };
  }

  private Sheet sheet(Told told) {
    String name =
        told == Told.IN_SHEET_NAME
            ? use[3]
            : choice.among("Sheet1", "2024", choice.of(words.all("sheet").subList(4, 6)));
    Sheet sheet = new Sheet(name);
    int row = 0;
    if (told == Told.IN_TITLE) {
      sheet.put(0, 0, use[2]);
      row = choice.whole(1, 2);
    }
    List<String> headers = new ArrayList<>(List.of(words.one("date", choice)));
    boolean fahrenheit = use[1].equals("en") && choice.chance(0.2);
    boolean hours = use[7].equals("SETTLING");
    if (hours) {
      headers.add("min");
    }
    headers.add(told == Told.IN_HEADER ? use[5] : use[4]);
    boolean withTemperature = choice.chance(0.9);
    if (withTemperature) {
      headers.add(words.all("temperature").get(choice.whole(0, 1)) + (fahrenheit ? " °F" : " °C"));
    }
    String[] extra = use[9].split("=", 2);
    boolean withExtra = told == Told.IN_HEADER && choice.chance(0.6);
    if (withExtra) {
      headers.add(extra[0]);
    }
    for (int i = 0; i < headers.size(); i++) {
      sheet.put(row, i, headers.get(i));
    }
    int rows = choice.whole(5, 20);
    double[] values = values(rows);
    double[] warmth = range(use[8]);
    LocalDate date = LocalDate.of(2024, choice.whole(1, 9), choice.whole(1, 28));
    int gap = choice.among(1, 1, 2, 7);
    for (int i = 0; i < rows; i++) {
      row++;
      int column = 0;
      LocalDate day = hours ? date : date.plusDays((long) i * gap);
      sheet.put(row, column++, day);
      if (hours) {
        sheet.put(row, column++, (double) (1 << Math.min(i, 10)) / 2);
      }
      sheet.put(row, column++, values[i]);
      if (withTemperature) {
        double celsius = choice.stepped(warmth[0], warmth[1], 0.5);
        sheet.put(row, column++, fahrenheit ? Math.rint(celsius * 1.8 + 32) : celsius);
      }
      if (withExtra) {
        sheet.put(row, column, extra(extra[1]));
      }
    }
    return sheet;
  }

  private Object extra(String values) {
    if (values.contains("/")) {
      return choice.among(values.split("/"));
    }
    double[] range = range(values);
    return choice.stepped(range[0], range[1], range[2]);
  }

  private double[] values(int rows) {
    double[] values = new double[rows];
    double width = highest - lowest;
    double held = choice.between(lowest + 0.3 * width, highest - 0.3 * width);
    for (int i = 0; i < rows; i++) {
      double part = (double) i / (rows - 1);
      double exact =
          switch (use[7]) {
            case "STEADY" -> held + choice.between(-0.15, 0.15) * width;
            case "RISING" -> lowest + width * (part + choice.between(-0.05, 0.05));
            case "SAWTOOTH" -> highest - width * ((i % 5) / 5.0 + choice.between(0, 0.1));
            case "SETTLING" -> lowest + width * Math.exp(-4 * part);
            default -> choice.between(lowest, highest);
          };
      values[i] = Choice.onStep(Math.min(highest, Math.max(lowest, exact)), step);
    }
    return values;
  }
}
