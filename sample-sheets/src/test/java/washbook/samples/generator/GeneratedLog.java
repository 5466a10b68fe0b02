package washbook.samples.generator;

import java.util.List;
import java.util.Locale;

/**
 * One made log.
 *
 * @param group the class it is counted under
 * @param features what is special in it
 */
record GeneratedLog(
    long seed, int number, Sheet sheet, Truth truth, String group, List<String> features) {
  /** Every third log is no ferment. */
  private static final int OTHERS = 3;

  static boolean isOther(int number) {
    return number % OTHERS == OTHERS - 1;
  }

  static GeneratedLog of(long seed, int number) {
    return isOther(number)
        ? OtherUse.log(seed, number)
        : FermentLog.of(seed, number, Variant.asWritten());
  }

  /** A ferment written with other words; the figures are the same. */
  static GeneratedLog ferment(long seed, int number, Variant variant) {
    return FermentLog.of(seed, number, variant);
  }

  /** How the same ferment is to be written. */
  record Variant(String language, boolean wordless) {
    static Variant asWritten() {
      return new Variant("", false);
    }

    static Variant in(String language) {
      return new Variant(language, false);
    }

    /** Without any word of the trade: date, value and temperature only. */
    static Variant withoutWords() {
      return new Variant("", true);
    }
  }

  /** The log as text, its truth behind each row. */
  String print() {
    StringBuilder text = new StringBuilder();
    text.append("log ").append(seed).append('/').append(number).append(", ").append(group);
    text.append(' ').append(features).append(", sheet \"").append(sheet.name()).append("\"\n");
    text.append("verdict ").append(truth.verdict()).append('\n');
    String[] lines = sheet.csv().split("\n", -1);
    for (int row = 0; row < sheet.rows(); row++) {
      text.append(String.format("%3d  %s", row + 1, lines[row]));
      for (Truth.Row r : truth.rows()) {
        if (r.row() == row) {
          text.append("   <- ").append(r.kind());
          if (!Double.isNaN(r.abv())) {
            text.append(String.format(Locale.ROOT, " SG %.4f, %.2f %% vol", r.gravity(), r.abv()));
          }
        }
      }
      text.append('\n');
    }
    return text.toString();
  }
}
