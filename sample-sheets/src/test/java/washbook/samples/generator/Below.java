package washbook.samples.generator;

import java.util.List;
import java.util.OptionalDouble;

/** What stands below a table of readings and is none. */
final class Below {
  private final Sheet sheet;
  private final Words words;
  private final Choice style;
  private final Choice wording;

  Below(Sheet sheet, Words words, Choice style, Choice wording) {
    this.sheet = sheet;
    this.words = words;
    this.style = style;
    this.wording = wording;
  }

  /** Rows of means, or of least and greatest values, as formulas or typed; labelled or not. */
  void averages(int end, int width, List<Truth.Row> truth) {
    int row = end + style.whole(0, 1);
    boolean labelled = style.chance(0.8);
    boolean formulas = style.chance(0.6) || !labelled;
    List<String> kinds = style.chance(0.5) ? List.of("mean") : List.of("min", "max");
    for (String kind : kinds) {
      if (labelled) {
        sheet.put(row, 0, words.one(kind, wording));
      }
      for (int column = labelled ? 1 : 0; column < width; column++) {
        OptionalDouble value = value(kind, column, truth);
        if (value.isPresent()) {
          Double rounded = Choice.onStep(value.getAsDouble(), 0.0001);
          sheet.put(row, column, formulas ? new Sheet.Formula(rounded) : rounded);
        }
      }
      row++;
    }
  }

  private OptionalDouble value(String kind, int column, List<Truth.Row> truth) {
    var values =
        truth.stream()
            .map(r -> sheet.at(r.row(), column))
            .filter(Double.class::isInstance)
            .mapToDouble(v -> (Double) v);
    return switch (kind) {
      case "min" -> values.min();
      case "max" -> values.max();
      default -> values.average();
    };
  }

  /** What came off the still, jar by jar. */
  void spirit(int top) {
    List<String> headers = words.all("spirit");
    for (int i = 0; i < headers.size(); i++) {
      sheet.put(top, i, headers.get(i));
    }
    int jars = style.whole(4, 9);
    double strength = style.whole(68, 78);
    for (int jar = 1; jar <= jars; jar++) {
      sheet.put(top + jar, 0, (double) jar);
      sheet.put(top + jar, 1, strength);
      sheet.put(top + jar, 2, (double) style.whole(8, 10) * 50);
      strength = Math.max(12, strength - style.whole(3, 9));
    }
  }
}
