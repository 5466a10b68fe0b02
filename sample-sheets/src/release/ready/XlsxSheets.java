import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** An {@code .xlsx} in another language. */
final class XlsxSheets {
  private static final String STRINGS = "xl/sharedStrings.xml";
  private static final Pattern SHEET = Pattern.compile("(?:'([^']+)'|(?<![\\w'])([A-Za-z]\\w*))!");
  private static final Pattern CHOICE =
      Pattern.compile(
          "<dataValidation type=\"list\"[^>]*sqref=\"([A-Z]+)(\\d+)\"[^>]*>"
              + "<formula1>\"([A-Z\\d,]+)\"</formula1>");

  private final Words words;
  private final Map<String, byte[]> parts = new TreeMap<>();
  private final List<String> strings = new ArrayList<>();
  private final List<String> english = new ArrayList<>();
  private final Map<Integer, Map<String, List<String>>> kinds = new TreeMap<>();
  private final Map<Integer, Room> rooms = new TreeMap<>();

  XlsxSheets(Map<String, byte[]> english, Words words) {
    this.words = words;
    parts.putAll(english);
    parts.computeIfPresent(STRINGS, (name, part) -> strings(ReadySheets.text(part)));
    parts.replaceAll(
        (name, part) ->
            name.endsWith(".xml") && !name.equals(STRINGS)
                ? ReadySheets.utf8(part(name, ReadySheets.text(part)))
                : part);
  }

  Map<String, byte[]> parts() {
    return parts;
  }

  /** Cells like $B$14 of a sheet, the first being 1, in which a kind is chosen, and its codes. */
  Map<String, List<String>> kinds(int sheet) {
    return kinds.getOrDefault(sheet, Map.of());
  }

  /** What the texts of a sheet need. */
  Room room(int sheet) {
    return rooms.get(sheet);
  }

  private byte[] strings(String part) {
    String text = Words.elements(part, "t", words::say);
    english.addAll(items(part));
    strings.addAll(items(text));
    return ReadySheets.utf8(text);
  }

  private static List<String> items(String part) {
    List<String> items = new ArrayList<>();
    Matcher each = Pattern.compile("<si>(.*?)</si>|<si/>", Pattern.DOTALL).matcher(part);
    while (each.find()) {
      String inside = each.group(1) == null ? "" : each.group(1);
      items.add(Words.plain(inside.replaceAll("<[^>]*>", "")));
    }
    return items;
  }

  private String part(String name, String text) {
    if (name.startsWith("xl/worksheets/sheet")) {
      int sheet = Integer.parseInt(name.replaceAll("\\D", ""));
      Room room = new Room(sheet(sheet, text), strings);
      rooms.put(sheet, room);
      return room.given();
    }
    if (name.startsWith("xl/charts/")) {
      String titled = Words.elements(text, "a:t", words::say);
      titled = Words.replaced(titled, "(<c:tx><c:v>)([^<]*)(</c:v>)", words::say);
      return Words.elements(titled, "c:f", this::formula);
    }
    if (name.equals("xl/workbook.xml")) {
      String named = Words.replaced(text, "(<sheet name=\")([^\"]*)(\")", words::say);
      return Words.elements(named, "definedName", this::formula);
    }
    if (name.startsWith("xl/drawings/drawing")) {
      return Words.attributes(text, "name|descr|title", words::say);
    }
    return name.startsWith("xl/comments")
        ? Words.elements(text, "t", words::say)
        : name.equals("docProps/core.xml") ? Words.elements(text, "dc:title", words::say) : text;
  }

  private String sheet(int index, String sheet) {
    Map<String, List<String>> chosen = new HashMap<>();
    String text = sheet;
    Matcher choice = CHOICE.matcher(sheet);
    while (choice.find()) {
      List<String> codes = List.of(choice.group(3).split(","));
      if (codes.stream().allMatch(words::isKind)) {
        chosen.put("$" + choice.group(1) + "$" + choice.group(2), codes);
      } else {
        text = inEnglish(text, choice.group(1) + choice.group(2));
      }
    }
    kinds.put(index, chosen);
    text = Words.elements(text, "f", formula -> kinds(formula(formula), chosen));
    text = Words.elements(text, "formula", this::formula);
    text = Words.elements(text, "formula1", words::choices);
    text = Words.replaced(text, "(</f><v>)([^<]*)(</v>)", words::say);
    return Words.attributes(text, "error|errorTitle|prompt", words::say);
  }

  /** A scale that a function takes stands in its own cell as the function calls it. */
  private String inEnglish(String sheet, String cell) {
    return Pattern.compile("(<c r=\"" + cell + "\") t=\"s\"([^>]*>)<v>(\\d+)</v>")
        .matcher(sheet)
        .replaceAll(
            found ->
                "$1 t=\"inlineStr\"$2<is><t>"
                    + english.get(Integer.parseInt(found.group(3)))
                    + "</t></is>");
  }

  private String formula(String english) {
    String named =
        SHEET
            .matcher(english)
            .replaceAll(
                sheet -> {
                  String name = sheet.group(1) == null ? sheet.group(2) : sheet.group(1);
                  return Matcher.quoteReplacement("'" + words.say(name) + "'!");
                });
    return words.formula(named, ",");
  }

  private String kinds(String formula, Map<String, List<String>> chosen) {
    String text = formula;
    for (Map.Entry<String, List<String>> cell : chosen.entrySet()) {
      String kind = words.kind(cell.getKey(), cell.getValue(), ",");
      text =
          text.replaceAll(
              Pattern.quote(cell.getKey()) + "(?!\\d)", Matcher.quoteReplacement(kind));
    }
    return text;
  }
}
