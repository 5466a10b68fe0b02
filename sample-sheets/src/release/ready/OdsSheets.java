import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** An {@code .ods} in another language, as an {@code .xlsx} of the same sheets became it. */
final class OdsSheets {
  /** What shows English words: the page's picture and those of charts, which are redrawn. */
  private static final List<String> PICTURES = List.of("Thumbnails/", "ObjectReplacements/");

  private static final String MANIFEST = "META-INF/manifest.xml";
  private static final String TABLE = "<table:table ";
  private static final Pattern REPEATED =
      Pattern.compile(" table:number-(?:columns|rows)-repeated=\"(\\d+)\"");

  private final Words words;
  private final XlsxSheets sheets;
  private final Map<String, byte[]> parts = new TreeMap<>();
  private final Pattern sheet;
  private final TreeSet<String> names = new TreeSet<>();
  private final Map<String, String> styles = new TreeMap<>();

  OdsSheets(Map<String, byte[]> english, Words words, XlsxSheets sheets) {
    this.words = words;
    this.sheets = sheets;
    parts.putAll(english);
    parts.keySet().removeIf(name -> PICTURES.stream().anyMatch(name::startsWith));
    String content = ReadySheets.text(parts.get("content.xml"));
    Matcher name = Pattern.compile("<table:table table:name=\"([^\"]*)\"").matcher(content);
    while (name.find()) {
      names.add(Words.plain(name.group(1)));
    }
    String any = names.stream().map(Pattern::quote).collect(Collectors.joining("|"));
    sheet = Pattern.compile("('?)(?<![\\w.])(" + any + ")\\1\\.(?=\\$?[A-Z]*\\$?\\d)");
    parts.replaceAll(
        (part, bytes) ->
            part.endsWith(".xml") ? ReadySheets.utf8(part(part, ReadySheets.text(bytes))) : bytes);
  }

  Map<String, byte[]> parts() {
    return parts;
  }

  private String part(String name, String text) {
    return switch (name) {
      case "content.xml" -> content(text);
      case "meta.xml" -> Words.elements(text, "dc:title", words::say);
      case "settings.xml" -> settings(text);
      case MANIFEST -> text.replaceAll(
          "\\s*<manifest:file-entry manifest:full-path=\"(?:"
              + String.join("|", PICTURES)
              + "|Configurations2/)[^>]*/>",
          "");
      default -> name.endsWith("/content.xml") ? said(text) : text;
    };
  }

  /** Names of sheets, by which a view is kept. */
  private String settings(String text) {
    String named =
        Words.attributes(text, "config:name", name -> names.contains(name) ? words.say(name) : name);
    return Words.replaced(
        named, "(config:name=\"ActiveTable\"[^>]*>)([^<]*)(</config:config-item>)", words::say);
  }

  private String content(String text) {
    String unpictured = text.replaceAll("<draw:image xlink:href=\"./ObjectReplacements/[^>]*/>", "");
    String[] tables = unpictured.split("(?=" + TABLE + ")");
    StringBuilder content = new StringBuilder(said(tables[0]));
    Pattern scales = scales(tables[0]);
    for (int i = 1; i < tables.length; i++) {
      String said = said(scales.matcher(tables[i]).replaceAll("$1<text:p >$2"));
      String kept = said.replace("<text:p >", "<text:p>");
      content.append(withRoom(kinds(kept, sheets.kinds(i)), sheets.room(i)));
    }
    return content
        .toString()
        .replace(
            "</office:automatic-styles>",
            String.join("", styles.values()) + "</office:automatic-styles>");
  }

  /** Cells to choose a scale in, which stands there as the functions call it. */
  private Pattern scales(String validations) {
    List<String> scales = new ArrayList<>();
    Matcher list =
        Pattern.compile(
                "<table:content-validation table:name=\"(\\w+)\""
                    + " table:condition=\"of:cell-content-is-in-list\\(&quot;([A-Z]+)&quot;")
            .matcher(validations);
    while (list.find()) {
      if (!words.isKind(list.group(2))) {
        scales.add(list.group(1));
      }
    }
    return Pattern.compile(
        "(table:content-validation-name=\"(?:"
            + String.join("|", scales)
            + ")\"[^>]*>)<text:p>([A-Z])");
  }

  private String said(String xml) {
    String text =
        Words.attributes(
            xml,
            "(?:table|calcext|chart|draw|style):[\\w-]*(?:address|ranges|expression|formula|condition|value)",
            this::addressed);
    text =
        Words.attributes(
            text,
            "table:formula|calcext:value|style:condition|loext:label-string",
            formula -> words.formula(formula, ";"));
    text = Words.attributes(text, "table:condition", words::choices);
    text = Words.attributes(text, "table:title|office:string-value|draw:name", words::say);
    // The notes on cells.
    text = Words.replaced(text, "(<text:p text:[^>]*(?<!/)>)([^<]*)(</text:p>)", words::say);
    text = Words.replaced(text, "(" + TABLE + "table:name=\")([^\"]*)(\")", words::say);
    return Pattern.compile("(?:<text:p>[^<]*</text:p>)+")
        .matcher(text)
        .replaceAll(found -> Matcher.quoteReplacement(paragraphs(found.group())));
  }

  /** A line of a cell's text is a paragraph. */
  private String paragraphs(String xml) {
    String lines = xml.substring("<text:p>".length(), xml.length() - "</text:p>".length());
    String text = words.say(Words.plain(lines.replace("</text:p><text:p>", "\n")));
    return Arrays.stream(text.split("\n"))
        .map(line -> "<text:p>" + Words.escaped(line) + "</text:p>")
        .collect(Collectors.joining());
  }

  private String addressed(String text) {
    return sheet
        .matcher(text)
        .replaceAll(name -> Matcher.quoteReplacement("'" + words.say(name.group(2)) + "'."));
  }

  private String kinds(String table, Map<String, List<String>> chosen) {
    String text = table;
    for (Map.Entry<String, List<String>> kind : chosen.entrySet()) {
      String cell = "[." + kind.getKey() + "]";
      String said = words.kind(cell, kind.getValue(), ";");
      text =
          Words.attributes(text, "table:formula", formula -> formula.replace(cell, said));
    }
    return text;
  }

  /** Columns and rows as wide and high as those of the other form. */
  private String withRoom(String table, Room room) {
    int[] at = {1, 1};
    String wide =
        Pattern.compile("<table:table-column table:style-name=\"[^\"]*\"[^>]*/>")
            .matcher(table)
            .replaceAll(column -> Matcher.quoteReplacement(columns(column.group(), at, room)));
    return Pattern.compile("<table:table-row table:style-name=\"([^\"]*)\"([^>]*)>")
        .matcher(wide)
        .replaceAll(row -> Matcher.quoteReplacement(row(row, at, room)));
  }

  private String columns(String column, int[] at, Room room) {
    int count = repeated(column);
    int first = at[0];
    at[0] += count;
    if (room.widened().keySet().stream().noneMatch(c -> c >= first && c < first + count)) {
      return column;
    }
    String one = REPEATED.matcher(column).replaceAll("");
    StringBuilder columns = new StringBuilder();
    for (int i = first; i < first + count; i++) {
      Double width = room.widened().get(i);
      columns.append(width == null ? one : styled(one, style("column", "width", Room.inches(width))));
    }
    return columns.toString();
  }

  private String row(MatchResult row, int[] at, Room room) {
    Double points = room.heightened().get(at[1]);
    int count = repeated(row.group());
    at[1] += count;
    if (points == null) {
      return row.group();
    }
    if (count > 1) {
      throw new IllegalStateException("a row of texts stands for several: " + row.group());
    }
    return styled(row.group(), style("row", "height", points / Room.POINTS_PER_INCH));
  }

  private static int repeated(String element) {
    Matcher repeated = REPEATED.matcher(element);
    return repeated.find() ? Integer.parseInt(repeated.group(1)) : 1;
  }

  private static String styled(String element, String style) {
    return element.replaceFirst(
        "table:style-name=\"[^\"]*\"", "table:style-name=\"" + style + "\"");
  }

  /** A style for a column's width or a row's height. */
  private String style(String what, String size, double inches) {
    long hundredths = Math.round(inches * 100);
    String name = "own-" + size + "-" + hundredths;
    styles.put(
        name,
        ("<style:style style:name=\"%s\" style:family=\"table-%s\"><style:table-%s-properties"
                + " fo:break-before=\"auto\" style:%s-%s=\"%d.%02din\"%s/></style:style>")
            .formatted(
                name,
                what,
                what,
                what,
                size,
                hundredths / 100,
                hundredths % 100,
                what.equals("row") ? " style:use-optimal-row-height=\"false\"" : ""));
    return name;
  }
}
