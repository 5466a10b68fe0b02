import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Gives the texts of a sheet the room that they need. */
final class Room {
  /** A digit of the workbook's font takes so many points, by which the width of a column counts. */
  private static final double DIGIT_POINTS = 5.25;

  /** As an office takes the width of a column of an {@code .xlsx}. */
  private static final double DIGIT_POINTS_IN_OFFICE = 5.55;

  static final double POINTS_PER_INCH = 72;

  /** What is free between a text and what stands beside it. */
  private static final double BETWEEN_DIGITS = 0.5;

  /** And where it stands clear of what is at its left. */
  private static final double INDENT_DIGITS = 2;

  /** How much narrower the letters of a text are that is not bold. */
  private static final double PLAIN_TO_BOLD = 0.93;

  /** In a head of 10 points, and what is free beside its words. */
  private static final double LETTER_POINTS = 10;

  private static final double FREE_POINTS = 2.5;

  /** In a sentence more letters fit than digits. */
  private static final double LETTERS_PER_DIGIT = 1.1;

  private static final double LINE_POINTS = 13;
  private static final double SENTENCE_POINTS = 12;
  private static final double BELOW_POINTS = 8;
  private static final double HEAD_POINTS = 30;
  private static final int SENTENCE = 60;

  private static final Pattern COLUMN =
      Pattern.compile("<col min=\"(\\d+)\" max=\"\\1\"([^>]*) width=\"([\\d.]+)\"/>");
  private static final Pattern ROW =
      Pattern.compile("<row r=\"(\\d+)\" ht=\"([\\d.]+)\"(.*?)</row>", Pattern.DOTALL);
  /** A cell that holds something. */
  private static final Pattern BESIDE = Pattern.compile("<c r=\"[A-Z]+\\d+\"[^>/]*>");

  private static final Pattern CELL =
      Pattern.compile("<c r=\"([A-Z]+)\\d+\" t=\"s\"[^>]*><v>(\\d+)</v></c>");

  private final String sheet;
  private final List<String> strings;
  private final Map<Integer, Double> widths = new TreeMap<>();
  private final Map<Integer, Double> widened = new TreeMap<>();
  private final Map<Integer, Double> heightened = new TreeMap<>();

  Room(String sheet, List<String> strings) {
    this.sheet = sheet;
    this.strings = strings;
    Matcher column = COLUMN.matcher(sheet);
    while (column.find()) {
      boolean hidden = column.group(2).contains("hidden");
      widths.put(Integer.valueOf(column.group(1)), hidden ? 0 : Double.parseDouble(column.group(3)));
    }
  }

  /** The sheet with its columns as wide and its rows as high as the texts need. */
  String given() {
    Matcher row = ROW.matcher(sheet);
    while (row.find()) {
      if (Double.parseDouble(row.group(2)) >= HEAD_POINTS) {
        heads(row.group(3)).forEach((column, head) -> widen(column, longestWord(head)));
      } else {
        labels(row.group(1), row.group(3));
      }
    }
    String wide =
        COLUMN
            .matcher(sheet)
            .replaceAll(
                column -> {
                  Double width = widened.get(Integer.valueOf(column.group(1)));
                  return width == null
                      ? Matcher.quoteReplacement(column.group())
                      : "<col min=\"$1\" max=\"$1\"$2 width=\"" + width + "\"/>";
                });
    return ROW.matcher(wide)
        .replaceAll(
            each -> {
              double points = Double.parseDouble(each.group(2));
              double needed = Math.max(points, points(each.group(1), points, each.group(3)));
              if (needed > points) {
                heightened.put(Integer.valueOf(each.group(1)), needed);
              }
              String line = "<row r=\"$1\" ht=\"" + needed + "\"";
              return line + Matcher.quoteReplacement(each.group(3)) + "</row>";
            });
  }

  /** Columns, the first being 1, that had to become wider, and how wide they are. */
  Map<Integer, Double> widened() {
    return widened;
  }

  /** Rows, the first being 1, that had to become higher, and their points. */
  Map<Integer, Double> heightened() {
    return heightened;
  }

  /** How wide a column is on paper. */
  static double inches(double width) {
    return width * DIGIT_POINTS_IN_OFFICE / POINTS_PER_INCH;
  }

  private void widen(int column, double needed) {
    if (widths.getOrDefault(column, Double.MAX_VALUE) < needed) {
      widths.put(column, Math.ceil(needed));
      widened.put(column, Math.ceil(needed));
    }
  }

  /** A line's label and its unit end before what stands beside them; a word chosen has its cell. */
  private void labels(String row, String cells) {
    Matcher text = CELL.matcher(cells);
    while (text.find()) {
      String column = text.group(1);
      String label = strings.get(Integer.parseInt(text.group(2)));
      boolean isMerged = sheet.contains("<mergeCell ref=\"" + column + row + ":");
      boolean isBeside = BESIDE.matcher(cells.substring(text.end())).lookingAt();
      if (!isCode(label) && !isMerged && (column.equals("B") || isBeside && "AC".contains(column))) {
        double free = column.equals("C") ? INDENT_DIGITS : BETWEEN_DIGITS;
        widen(number(column), PLAIN_TO_BOLD * digits(label) + free);
      }
    }
  }

  /** Names of functions, kinds and scales are the English ones, and have their room. */
  private static boolean isCode(String text) {
    return text.equals(text.toUpperCase(Locale.ROOT));
  }

  private double width(int last) {
    return widths.entrySet().stream()
        .filter(column -> column.getKey() <= last)
        .mapToDouble(Map.Entry::getValue)
        .sum();
  }

  private double points(String row, double points, String cells) {
    Matcher merged =
        Pattern.compile("<mergeCell ref=\"A" + row + ":([A-Z]+)" + row + "\"/>").matcher(sheet);
    Matcher first = CELL.matcher(cells);
    if (first.find() && first.group(1).equals("A") && merged.find()) {
      String text = strings.get(Integer.parseInt(first.group(2)));
      double letters = width(number(merged.group(1))) * LETTERS_PER_DIGIT;
      double lines = Math.ceil(text.length() / letters);
      return text.length() > SENTENCE ? SENTENCE_POINTS * lines + BELOW_POINTS : points;
    }
    if (points < HEAD_POINTS) {
      return points;
    }
    return heads(cells).entrySet().stream()
        .mapToDouble(
            head -> 7 + LINE_POINTS * lines(head.getValue(), widths.get(head.getKey())))
        .max()
        .orElse(points);
  }

  private Map<Integer, String> heads(String cells) {
    Map<Integer, String> heads = new TreeMap<>();
    Matcher cell = CELL.matcher(cells);
    while (cell.find()) {
      String text = strings.get(Integer.parseInt(cell.group(2)));
      if (text.length() <= SENTENCE && !isCode(text)) {
        heads.put(number(cell.group(1)), text);
      }
    }
    return heads;
  }

  private static double longestWord(String text) {
    return Arrays.stream(text.split("\\s+")).mapToDouble(Room::digits).max().orElse(0);
  }

  private static int lines(String text, double width) {
    int lines = 0;
    for (String line : text.split("\n")) {
      String used = "";
      for (String word : line.split(" ")) {
        boolean fits = !used.isEmpty() && digits(used + " " + word) <= width;
        lines += fits ? 0 : 1;
        used = fits ? used + " " + word : word;
      }
    }
    return lines;
  }

  /** How wide a bold text is, in digits; about the widths of Arial. */
  private static double digits(String text) {
    double ems =
        Normalizer.normalize(text, Normalizer.Form.NFD)
            .replaceAll("\\p{M}", "")
            .chars()
            .mapToDouble(Room::ems)
            .sum();
    return (LETTER_POINTS * ems + FREE_POINTS) / DIGIT_POINTS;
  }

  private static double ems(int letter) {
    if ("ijlI.,:;' ftr()/-".indexOf(letter) >= 0) {
      return "ftr()/-".indexOf(letter) >= 0 ? 0.37 : 0.28;
    }
    return "mMwW%".indexOf(letter) >= 0 ? 0.87 : Character.isUpperCase(letter) ? 0.72 : 0.6;
  }

  private static int number(String letters) {
    return letters.chars().reduce(0, (sum, letter) -> 26 * sum + letter - 'A' + 1);
  }
}
