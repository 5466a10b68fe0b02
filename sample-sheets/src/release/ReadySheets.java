import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;
import washbook.functions.SafetyNote;

/**
 * Makes the ready sheets of the other languages of the English ones: the same formulas and figures,
 * with other texts. Needs washbook.jar on the class path. Arguments: the folder of the English
 * sheets, that of the texts, that to write to.
 */
final class ReadySheets {
  static final List<String> LANGUAGES = List.of("de", "fr", "es", "it", "pt", "nl", "af");

  private static final List<String> BOOKS =
      Arrays.asList(
          ("ferment-log ferment-log-fahrenheit ferment-log-brix ferment-log-oechsle still-run-log"
                  + " plan class")
              .split(" "));

  /** One that a zip file holds without a zone. */
  private static final LocalDateTime MADE = LocalDateTime.of(2026, 1, 1, 0, 0);

  private ReadySheets() {}

  public static void main(String[] arguments) throws IOException {
    Path english = Path.of(arguments[0]);
    Path texts = Path.of(arguments[1]);
    for (String language : LANGUAGES) {
      Words words = Words.read(texts, language);
      for (String form : List.of("pack", "portable")) {
        Path into = Files.createDirectories(Path.of(arguments[2], language, form));
        for (String book : BOOKS) {
          String name = book + ".xlsx";
          write(parts(english.resolve(form).resolve(name)), words, into.resolve(name));
        }
      }
    }
  }

  private static Map<String, byte[]> parts(Path workbook) throws IOException {
    Map<String, byte[]> parts = new TreeMap<>();
    try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(workbook))) {
      for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
        parts.put(entry.getName(), zip.readAllBytes());
      }
    }
    return parts;
  }

  private static void write(Map<String, byte[]> parts, Words words, Path target)
      throws IOException {
    List<String> strings = new ArrayList<>();
    parts.computeIfPresent("xl/sharedStrings.xml", (name, part) -> strings(part, words, strings));
    parts.replaceAll(
        (name, part) ->
            name.endsWith(".xml") && !name.equals("xl/sharedStrings.xml")
                ? utf8(part(name, new String(part, StandardCharsets.UTF_8), words, strings))
                : part);
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(target))) {
      zip.setLevel(Deflater.BEST_COMPRESSION);
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        ZipEntry entry = new ZipEntry(part.getKey());
        entry.setTimeLocal(MADE);
        zip.putNextEntry(entry);
        zip.write(part.getValue());
      }
    }
  }

  private static byte[] strings(byte[] part, Words words, List<String> strings) {
    String text = words.elements(new String(part, StandardCharsets.UTF_8), "t", words::say);
    Matcher each = Pattern.compile("<si>(.*?)</si>|<si/>", Pattern.DOTALL).matcher(text);
    while (each.find()) {
      String inside = each.group(1) == null ? "" : each.group(1);
      strings.add(Words.plain(inside.replaceAll("<[^>]*>", "")));
    }
    return utf8(text);
  }

  private static String part(String name, String text, Words words, List<String> strings) {
    if (name.startsWith("xl/worksheets/")) {
      return new Layout(sheet(text, words), strings).fitted();
    }
    if (name.startsWith("xl/charts/")) {
      String titled = words.elements(text, "a:t", words::say);
      titled = Words.replaced(titled, "(<c:tx><c:v>)([^<]*)(</c:v>)", words::say);
      return words.elements(titled, "c:f", words::formula);
    }
    if (name.equals("xl/workbook.xml")) {
      String named = Words.replaced(text, "(<sheet name=\")([^\"]*)(\")", words::say);
      return words.elements(named, "definedName", words::formula);
    }
    return name.startsWith("xl/comments")
        ? words.elements(text, "t", words::say)
        : name.equals("docProps/core.xml") ? words.elements(text, "dc:title", words::say) : text;
  }

  private static String sheet(String sheet, Words words) {
    String text = words.elements(sheet, "f", words::formula);
    text = words.elements(text, "formula", words::formula);
    text = words.elements(text, "formula1", words::formula);
    text = Words.replaced(text, "(</f><v>)([^<]*)(</v>)", words::say);
    for (String said : List.of("error", "errorTitle", "prompt")) {
      text = Words.replaced(text, "(\\s" + said + "=\")([^\"]*)(\")", words::say);
    }
    return text;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}

/** The texts of a language, found by the English ones. */
final class Words {
  private static final List<String> STATES =
      List.of("lag", "working", "slowing", "stuck", "done", "restarted");
  private static final Pattern LITERAL = Pattern.compile("\"([^\"]*+(?:\"\"[^\"]*+)*+)\"");
  private static final Pattern SHEET = Pattern.compile("(?:'([^']+)'|(?<![\\w'])([A-Za-z]\\w*))!");
  private static final Pattern STATE = Pattern.compile("WASHBOOK\\.FERMENTSTATE\\([^()]*\\)");

  private final Map<String, String> texts = new HashMap<>();

  private Words() {}

  static Words read(Path folder, String language) throws IOException {
    Map<String, String> english = lines(folder.resolve("en.properties"));
    Map<String, String> others = lines(folder.resolve(language + ".properties"));
    Words words = new Words();
    english.forEach((key, text) -> words.texts.put(text, others.get(key)));
    words.texts.put(SafetyNote.text(), SafetyNote.text(language));
    return words;
  }

  static Map<String, String> lines(Path file) throws IOException {
    return Files.readAllLines(file, StandardCharsets.UTF_8).stream()
        .map(line -> line.split(" = ", 2))
        .collect(Collectors.toMap(line -> line[0], line -> line[1]));
  }

  /** A whole text of a cell; as it is where it has no other form, like a unit. */
  String say(String english) {
    String one = english.replace("\n(", " (");
    String found = texts.get(one);
    if (found != null) {
      return one.equals(english) ? found : found.replace(" (", "\n(");
    }
    for (String part : List.of(": ", ". ")) {
      int end = english.indexOf(part);
      while (end >= 0) {
        String first = texts.get(english.substring(0, end + 1));
        if (first != null) {
          String rest = english.substring(end + part.length());
          return first + " " + (part.equals(": ") ? list(rest) : say(rest));
        }
        end = english.indexOf(part, end + 1);
      }
    }
    return english;
  }

  private String list(String words) {
    return Arrays.stream(words.split(", ")).map(this::say).collect(Collectors.joining(", "));
  }

  /** Names of sheets and what is said in a formula; names of scales and kinds stay. */
  String formula(String english) {
    String named =
        SHEET
            .matcher(english)
            .replaceAll(
                sheet -> {
                  String name = sheet.group(1) == null ? sheet.group(2) : sheet.group(1);
                  return Matcher.quoteReplacement("'" + say(name) + "'!");
                });
    String said =
        LITERAL
            .matcher(named)
            .replaceAll(text -> Matcher.quoteReplacement(quoted(literal(text.group(1)))));
    return STATE
        .matcher(said)
        .replaceAll(call -> Matcher.quoteReplacement(state(call.group())));
  }

  /** The state of a ferment in words of this language; the function's own word if it is another. */
  private String state(String call) {
    String names = STATES.stream().map(Words::quoted).collect(Collectors.joining(","));
    String said = STATES.stream().map(s -> quoted(say(s))).collect(Collectors.joining(","));
    return "IFERROR(CHOOSE(MATCH(" + call + ",{" + names + "},0)," + said + ")," + call + ")";
  }

  private static String quoted(String text) {
    return "\"" + text + "\"";
  }

  private String literal(String text) {
    if (text.equals(text.toUpperCase(Locale.ROOT))) {
      return text;
    }
    if (text.endsWith(": ")) {
      return say(text.strip()) + " ";
    }
    return Arrays.stream(text.split(",")).allMatch(texts::containsKey)
        ? Arrays.stream(text.split(",")).map(this::say).collect(Collectors.joining(","))
        : say(text);
  }

  /** The contents of all elements of this name. */
  String elements(String xml, String name, UnaryOperator<String> change) {
    return replaced(xml, "(<" + name + "(?:\\s[^>]*)?(?<!/)>)([^<]*)(</" + name + ">)", change);
  }

  /** The second of three groups changed. */
  static String replaced(String xml, String pattern, UnaryOperator<String> change) {
    return Pattern.compile(pattern)
        .matcher(xml)
        .replaceAll(
            found -> {
              String inside = escaped(change.apply(plain(found.group(2))));
              return Matcher.quoteReplacement(found.group(1) + inside + found.group(3));
            });
  }

  static String plain(String xml) {
    String text = xml.replace("&#xa;", "\n").replace("&quot;", "\"").replace("&apos;", "'");
    return text.replace("&lt;", "<").replace("&gt;", ">").replace("&amp;", "&");
  }

  private static String escaped(String text) {
    String xml = text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    return xml.replace("\"", "&quot;");
  }
}

/** Gives the texts of a sheet the room that they need. */
final class Layout {
  /** A digit of the workbook's font takes so many points, by which the width of a column counts. */
  private static final double DIGIT_POINTS = 5.25;

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
  private static final Pattern CELL =
      Pattern.compile("<c r=\"([A-Z]+)\\d+\" t=\"s\"[^>]*><v>(\\d+)</v></c>");

  private final String sheet;
  private final List<String> strings;
  private final Map<Integer, Double> widths = new TreeMap<>();

  Layout(String sheet, List<String> strings) {
    this.sheet = sheet;
    this.strings = strings;
    Matcher column = COLUMN.matcher(sheet);
    while (column.find()) {
      boolean hidden = column.group(2).contains("hidden");
      widths.put(Integer.valueOf(column.group(1)), hidden ? 0 : Double.parseDouble(column.group(3)));
    }
  }

  String fitted() {
    Matcher row = ROW.matcher(sheet);
    while (row.find()) {
      if (Double.parseDouble(row.group(2)) >= HEAD_POINTS) {
        for (Map.Entry<Integer, String> head : heads(row.group(3)).entrySet()) {
          double needed = Math.ceil(longestWord(head.getValue()));
          widths.computeIfPresent(head.getKey(), (column, width) -> Math.max(width, needed));
        }
      }
    }
    String wide =
        COLUMN
            .matcher(sheet)
            .replaceAll(
                column -> {
                  double width = widths.get(Integer.valueOf(column.group(1)));
                  return width == 0
                      ? Matcher.quoteReplacement(column.group())
                      : "<col min=\"$1\" max=\"$1\"$2 width=\"" + width + "\"/>";
                });
    return ROW.matcher(wide)
        .replaceAll(
            each -> {
              double points = Double.parseDouble(each.group(2));
              double needed = Math.max(points, points(each.group(1), points, each.group(3)));
              String line = "<row r=\"$1\" ht=\"" + needed + "\"";
              return line + Matcher.quoteReplacement(each.group(3)) + "</row>";
            });
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
      if (text.length() <= SENTENCE) {
        heads.put(number(cell.group(1)), text);
      }
    }
    return heads;
  }

  private static double longestWord(String text) {
    return Arrays.stream(text.split("\\s+")).mapToDouble(Layout::digits).max().orElse(0);
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
            .mapToDouble(Layout::ems)
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
