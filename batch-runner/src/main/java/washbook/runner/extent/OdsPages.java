package washbook.runner.extent;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.runner.markup.Length;

/**
 * The page styles of an OpenDocument spreadsheet (OpenDocument 1.3 part 3, 16.5 style:page-layout,
 * 16.9 style:master-page, and LibreOffice's own style:scale-to-X). Sheets share them, so a sheet
 * that is to be printed another way gets a copy.
 */
public final class OdsPages {
  private static final Pattern MASTER = element("master-page");
  private static final Pattern LAYOUT = element("page-layout");
  private static final Pattern PROPERTIES =
      Pattern.compile("<style:page-layout-properties\\b[^>]*>");
  private static final Pattern COUNTRY = Pattern.compile("\\sfo:country=\"(\\w+)\"");
  private static final String LAYOUTS_END = "</office:automatic-styles>";
  private static final String MASTERS_END = "</office:master-styles>";
  private static final double POINTS_PER_MM = 72 / 25.4;

  /** Of A4 and Letter. */
  private static final double[][] PAPERS = {{595.3, 841.9}, {612, 792}};

  /** Where paper is Letter: the Unicode CLDR's supplementalData, measurementData, paperSize. */
  private static final Set<String> LETTER =
      Set.of("BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE");

  /** Where a layout states none: LibreOffice's own 2 cm. */
  private static final double MARGIN = 20 * POINTS_PER_MM;

  private final String styles;
  private final Map<String, String> names = new LinkedHashMap<>();
  private final StringBuilder layouts = new StringBuilder();
  private final StringBuilder masters = new StringBuilder();

  /** Takes the part styles.xml, in UTF-8. */
  public OdsPages(String styles) {
    this.styles = styles;
  }

  private static Pattern element(String name) {
    String tag = "<style:" + name + "\\b[^>]*?";
    return Pattern.compile(tag + "(?:/>|(?<!/)>.*?</style:" + name + "\\s*>)", Pattern.DOTALL);
  }

  /**
   * The name of a page style like {@code master} that prints so wide a sheet readably; null where
   * that one does, or where a person has set how it prints.
   */
  public String fitting(String master, double widthMm) {
    return fitting(
        master, (lies, page, spare) -> PageFit.exact(widthMm * POINTS_PER_MM, lies, page, spare));
  }

  /**
   * The same for a sheet whose cells are narrow enough for one page and that is too wide with the
   * drawings right of them, which are to begin the next; null also where it is not so.
   */
  public String apart(String master, double widthMm, double cellsMm) {
    return fitting(
        master,
        (lies, page, spare) -> {
          PageFit whole = PageFit.exact(widthMm * POINTS_PER_MM, lies, page, spare);
          return whole == null || whole.pages() == 1
              ? null
              : PageFit.exactApart(cellsMm * POINTS_PER_MM, lies, page, spare, 0);
        });
  }

  /** How many pages of that style side by side so wide a sheet takes; 1 where it stays as it is. */
  public int sides(String master, double widthMm) {
    int[] sides = {1};
    fitting(
        master,
        (lies, page, spare) -> {
          sides[0] = PageFit.pages(PageFit.exact(widthMm * POINTS_PER_MM, lies, page, spare));
          return null;
        });
    return sides[0];
  }

  /** Says how a sheet is printed, of the page's lie, its width and what narrow margins add. */
  private interface Fitting {
    PageFit on(boolean landscape, ToDoubleFunction<Boolean> page, double spare);
  }

  private String fitting(String master, Fitting fitting) {
    String page = named(MASTER, master);
    String layout = page == null ? null : named(LAYOUT, value(page, "style:page-layout-name"));
    Matcher tag = PROPERTIES.matcher(layout == null ? "" : layout);
    if (!tag.find() || !styles.contains(LAYOUTS_END) || !styles.contains(MASTERS_END)) {
      return null;
    }
    String properties = tag.group();
    double[] paper = paper(properties);
    if (paper == null || isOwn(properties)) {
      return null;
    }
    double left = margin(properties, "left");
    double right = margin(properties, "right");
    PageFit fit =
        fitting.on(
            value(properties, "style:print-orientation").equals("landscape"),
            turned -> paper[turned ? 1 : 0] - left - right,
            PageFit.spare(left, right));
    return fit == null
        ? null
        : names.computeIfAbsent(
            master + " " + fit, key -> copy(page, layout, properties, paper, fit));
  }

  private String copy(String page, String layout, String properties, double[] paper, PageFit fit) {
    int number = 1;
    while (styles.contains("washbook-page-" + number)
        || masters.indexOf("washbook-page-" + number) >= 0) {
      number++;
    }
    String name = "washbook-page-" + number;
    String changed = with(properties, "style:scale-to", null);
    changed = with(changed, "fo:page-width", points(paper[fit.landscape() ? 1 : 0]));
    changed = with(changed, "fo:page-height", points(paper[fit.landscape() ? 0 : 1]));
    changed = with(changed, "style:print-orientation", fit.landscape() ? "landscape" : "portrait");
    changed =
        fit.scale() > 0
            ? with(changed, "style:scale-to", fit.scale() + "%")
            : with(changed, "style:scale-to-X", Integer.toString(fit.pages()));
    for (String side : fit.narrow() ? List.of("left", "right") : List.<String>of()) {
      changed = with(changed, "fo:margin-" + side, points(PageFit.MARGIN));
    }
    layouts.append(renamed(layout.replace(properties, changed), name));
    String copy = with(page, "style:display-name", null);
    masters.append(renamed(with(copy, "style:page-layout-name", name), name));
    return name;
  }

  private static String renamed(String element, String name) {
    return with(element, "style:name", name);
  }

  /** The whole part with the copies; null where there are none. */
  public byte[] patched() {
    if (names.isEmpty()) {
      return null;
    }
    StringBuilder all = new StringBuilder(styles);
    all.insert(all.lastIndexOf(MASTERS_END), masters);
    all.insert(all.lastIndexOf(LAYOUTS_END), layouts);
    return all.toString().getBytes(StandardCharsets.UTF_8);
  }

  private String named(Pattern kind, String name) {
    Matcher element = kind.matcher(styles);
    while (element.find()) {
      if (value(element.group(), "style:name").equals(name)) {
        return element.group();
      }
    }
    return null;
  }

  /** Whether its scale or number of pages is a person's, or an earlier fill's. */
  private static boolean isOwn(String properties) {
    String scale = value(properties, "style:scale-to");
    return !scale.isEmpty() && !scale.equals("100%")
        || !value(properties, "style:scale-to-pages").isEmpty()
        || !value(properties, "style:scale-to-X").isEmpty()
        || !value(properties, "style:scale-to-Y").isEmpty();
  }

  /** Short and long side in points; null for paper that is neither A4 nor Letter. */
  private double[] paper(String properties) {
    double across = Length.millimetres(value(properties, "fo:page-width"), 0) * POINTS_PER_MM;
    double down = Length.millimetres(value(properties, "fo:page-height"), 0) * POINTS_PER_MM;
    if (across == 0 && down == 0) {
      Matcher country = COUNTRY.matcher(styles);
      return PAPERS[country.find() && LETTER.contains(country.group(1)) ? 1 : 0];
    }
    for (double[] paper : PAPERS) {
      if (Math.abs(Math.min(across, down) - paper[0]) < 3
          && Math.abs(Math.max(across, down) - paper[1]) < 3) {
        return paper;
      }
    }
    return null;
  }

  private static double margin(String properties, String side) {
    String own = value(properties, "fo:margin-" + side);
    String all = value(properties, "fo:margin");
    return Length.millimetres(own.isEmpty() ? all : own, MARGIN / POINTS_PER_MM) * POINTS_PER_MM;
  }

  private static String points(double length) {
    return length + "pt";
  }

  private static Pattern attribute(String name) {
    return Pattern.compile("\\s" + name + "\\s*=\\s*(?:\"([^\"]*)\"|'([^']*)')");
  }

  /** Of the element's own tag; empty where there is none. */
  private static String value(String element, String name) {
    Matcher found = attribute(name).matcher(element.substring(0, element.indexOf('>')));
    return found.find() ? found.group(1) == null ? found.group(2) : found.group(1) : "";
  }

  /** The element with another value in its own tag, or, for null, without it. */
  private static String with(String element, String name, String value) {
    int end = element.indexOf('>');
    String tag = attribute(name).matcher(element.substring(0, end)).replaceAll("");
    int at = tag.endsWith("/") ? tag.length() - 1 : tag.length();
    String added = value == null ? "" : " " + name + "=\"" + value + "\"";
    return tag.substring(0, at) + added + tag.substring(at) + element.substring(end);
  }
}
