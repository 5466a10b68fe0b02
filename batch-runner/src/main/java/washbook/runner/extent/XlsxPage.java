package washbook.runner.extent;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;

/**
 * Writes into a sheet how many pages wide it is printed (ECMA-376-1:2016, 18.3.1.65 pageSetUpPr,
 * which stands first, and 18.3.1.62 pageMargins and 18.3.1.63 pageSetup, near the end).
 */
public final class XlsxPage {
  private static final byte[] PROPERTIES = ascii("sheetPr");
  private static final byte[] FIT = ascii("pageSetUpPr");
  private static final byte[] MARGINS = ascii("pageMargins");
  private static final byte[] SETUP = ascii("pageSetup");

  /** What may stand after the element (18.3.1.99 worksheet). */
  private static final Set<String> LATER =
      Set.of(
          "headerFooter",
          "rowBreaks",
          "colBreaks",
          "customProperties",
          "cellWatches",
          "ignoredErrors",
          "smartTags",
          "drawing",
          "legacyDrawing",
          "legacyDrawingHF",
          "drawingHF",
          "picture",
          "oleObjects",
          "controls",
          "webPublishItems",
          "tableParts",
          "extLst",
          "AlternateContent");

  /** What may stand between the set-up of the page and the breaks. */
  private static final Set<String> BEFORE_BREAKS = Set.of("pageSetup", "headerFooter", "rowBreaks");

  private static final double POINTS_PER_INCH = 72;

  private final PageFit fit;
  private String prefix = "";
  private boolean begun;
  private boolean margins;
  private boolean ended;
  private boolean broken;

  /** Null leaves the sheet as it is. */
  public XlsxPage(PageFit fit) {
    this.fit = fit;
  }

  /** Looks at an element before the cells. */
  public void before(XmlSplicer splicer, Token token) throws IOException {
    if (fit == null || begun) {
      return;
    }
    begun = true;
    prefix = splicer.prefix();
    if (fit.scale() > 0) {
      return;
    }
    String asked = "<" + prefix + "pageSetUpPr fitToPage=\"1\"/>";
    String end = "</" + prefix + "sheetPr>";
    if (!splicer.is(PROPERTIES)) {
      insert(splicer, splicer.tokenStart(), "<" + prefix + "sheetPr>" + asked + end);
    } else if (token == Token.EMPTY) {
      int slash = splicer.tokenEnd() - 2;
      splicer.replace(slash, splicer.tokenEnd(), ascii(">" + asked + end));
    } else {
      inProperties(splicer, asked);
    }
  }

  private static void inProperties(XmlSplicer splicer, String asked) throws IOException {
    boolean there = false;
    int outside = splicer.depth() - 1;
    while (true) {
      Token token = splicer.next();
      if (token == Token.DONE) {
        throw splicer.damaged("how.propertiesOpen");
      }
      if (token == Token.END && splicer.depth() == outside) {
        if (!there) {
          insert(splicer, splicer.tokenStart(), asked);
        }
        return;
      }
      if ((token == Token.START || token == Token.EMPTY) && splicer.is(FIT)) {
        there = true;
        with(splicer, "fitToPage", "1");
      }
    }
  }

  /** Looks at a token after the cells. */
  void after(XmlSplicer splicer, Token token, boolean child) throws IOException {
    boolean last = token == Token.END && splicer.depth() == 0;
    if (fit == null || !child && !last) {
      return;
    }
    if (!ended) {
      setUp(splicer, child, last);
    }
    if (!broken && (last || ended && !BEFORE_BREAKS.contains(splicer.localName()))) {
      broken = true;
      insertBreak(splicer);
    }
  }

  private void setUp(XmlSplicer splicer, boolean child, boolean last) throws IOException {
    if (child && splicer.is(MARGINS)) {
      margins = true;
      if (fit.narrow()) {
        String side = Double.toString(PageFit.MARGIN / POINTS_PER_INCH);
        with(splicer, "left", side, "right", side);
      }
    } else if (child && splicer.is(SETUP)) {
      ended = true;
      insertMargins(splicer);
      with(splicer, attributes());
    } else if (last || LATER.contains(splicer.localName())) {
      ended = true;
      insertMargins(splicer);
      StringBuilder element = new StringBuilder("<" + prefix + "pageSetup");
      String[] attributes = attributes();
      for (int i = 0; i < attributes.length; i += 2) {
        element.append(" ").append(attributes[i]).append("=\"").append(attributes[i + 1]);
        element.append("\"");
      }
      insert(splicer, splicer.tokenStart(), element.append("/>").toString());
    }
  }

  /** What is drawn right of the cells begins a page (18.3.1.14 colBreaks). */
  private void insertBreak(XmlSplicer splicer) throws IOException {
    if (fit.breakBefore() >= 0) {
      String whole =
          "<%scolBreaks count=\"1\" manualBreakCount=\"1\">"
              + "<%sbrk id=\"%d\" max=\"1048575\" man=\"1\"/></%scolBreaks>";
      insert(
          splicer,
          splicer.tokenStart(),
          whole.formatted(prefix, prefix, fit.breakBefore(), prefix));
    }
  }

  /** Those of a sheet that states none, but for the sides: all six have to be there. */
  private void insertMargins(XmlSplicer splicer) throws IOException {
    if (fit.narrow() && !margins) {
      double side = PageFit.MARGIN / POINTS_PER_INCH;
      String usual = " top=\"0.75\" bottom=\"0.75\" header=\"0.3\" footer=\"0.3\"/>";
      String sides = "pageMargins left=\"" + side + "\" right=\"" + side + "\"";
      insert(splicer, splicer.tokenStart(), "<" + prefix + sides + usual);
    }
  }

  private String[] attributes() {
    String pages = Integer.toString(fit.pages());
    String lies = fit.landscape() ? "landscape" : "portrait";
    if (fit.scale() > 0) {
      return new String[] {"orientation", lies, "scale", Integer.toString(fit.scale())};
    }
    return new String[] {"orientation", lies, "fitToWidth", pages, "fitToHeight", "0"};
  }

  /** Gives the current tag these attributes; names and values take turns. */
  private static void with(XmlSplicer splicer, String... attributes) throws IOException {
    int start = splicer.tokenStart();
    int length = splicer.tokenEnd() - start;
    String tag = new String(splicer.bytes(), start, length, StandardCharsets.UTF_8);
    for (int i = 0; i < attributes.length; i += 2) {
      String now = " " + attributes[i] + "=\"" + attributes[i + 1] + "\"";
      Matcher old =
          Pattern.compile("\\s" + attributes[i] + "\\s*=\\s*(\"[^\"]*\"|'[^']*')").matcher(tag);
      tag = old.find() ? old.replaceFirst(now) : tag.replaceFirst("(?=\\s*/?>$)", now);
    }
    splicer.replace(start, splicer.tokenEnd(), tag.getBytes(StandardCharsets.UTF_8));
  }

  private static void insert(XmlSplicer splicer, int at, String markup) throws IOException {
    byte[] bytes = ascii(markup);
    splicer.insert(at, bytes, bytes.length);
  }
}
