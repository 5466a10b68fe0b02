package washbook.runner.write;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.runner.archive.Archive;
import washbook.runner.archive.ArchiveCopy;
import washbook.runner.archive.Part;
import washbook.runner.archive.PartOutput;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;

/**
 * The cell formats of a workbook (ECMA-376-1:2016, 18.8.10 cellXfs). A format that shows so many
 * digits is made from the one a cell would have anyway, and added once.
 */
final class XlsxStyles {
  private static final byte[] NUMBER_FORMATS = ascii("numFmts");
  private static final byte[] NUMBER_FORMAT = ascii("numFmt");
  private static final byte[] CELL_FORMATS = ascii("cellXfs");
  private static final byte[] FORMAT = ascii("xf");
  private static final byte[] ID = ascii("numFmtId");
  private static final byte[] CODE = ascii("formatCode");
  private static final byte[] COUNT = ascii("count");

  /** Numbers below this belong to the formats that every program knows (18.8.30). */
  private static final int FIRST_OWN_FORMAT = 164;

  /** More cell formats than this are refused by spreadsheet programs. */
  private static final int MOST_FORMATS = 64_000;

  /** Beside numbers of decimals in the keys of what is known. */
  private static final int WRAPPING = 0xFE;

  private static final int LOOK = 0xFD;

  private static final Pattern FORMAT_ID =
      Pattern.compile("\\snumFmtId\\s*=\\s*[\"'](\\d{1,9})[\"']");
  private static final Pattern REPLACED =
      Pattern.compile("\\s(numFmtId|applyNumberFormat)\\s*=\\s*(\"[^\"]*\"|'[^']*')");

  private final Optional<Part> part;
  private final List<String> formats = new ArrayList<>();
  private final Map<String, Integer> numbers = new HashMap<>();

  /** Numbers of the format that shows as many digits as there are; some programs add their own. */
  private final Set<Integer> general = new HashSet<>(Set.of(0));

  private final Map<String, Integer> codes = new HashMap<>();
  private final Map<Long, Integer> known = new HashMap<>();
  private final BitSet asked = new BitSet();
  private final BitSet plain = new BitSet();
  private int oldFormats;
  private String oldPrefix = "";
  private int nextCode = FIRST_OWN_FORMAT;
  private final List<Integer> newCodes = new ArrayList<>();

  XlsxStyles(Archive archive, Optional<Part> part) throws IOException {
    this.part = part;
    if (part.isPresent()) {
      try (InputStream in = archive.read(part.get())) {
        read(new XmlScanner(in, part.get().name(), part.get().size()));
      }
    }
    oldFormats = formats.size();
  }

  private void read(XmlScanner scanner) throws IOException {
    for (Token token = scanner.next(); token != Token.DONE; token = scanner.next()) {
      if (token != Token.START && token != Token.EMPTY) {
        continue;
      }
      if (scanner.is(NUMBER_FORMAT) && scanner.attribute(ID)) {
        int number = number(scanner.value());
        nextCode = Math.max(nextCode, number + 1);
        if (scanner.attribute(CODE)) {
          codes.putIfAbsent(scanner.value(), number);
          if (scanner.value().equalsIgnoreCase("General")) {
            general.add(number);
          }
        }
      } else if (token == Token.START && scanner.is(CELL_FORMATS)) {
        oldPrefix = scanner.prefix();
        readFormats(scanner);
      }
    }
  }

  private void readFormats(XmlScanner scanner) throws IOException {
    int outside = scanner.depth() - 1;
    StringBuilder format = new StringBuilder();
    while (true) {
      Token token = scanner.next();
      if (token == Token.END && scanner.depth() == outside) {
        return;
      }
      boolean ownTag =
          scanner.depth() == outside + 1 && token == Token.EMPTY
              || scanner.depth() == outside + 2 && token == Token.START;
      if (ownTag && scanner.is(FORMAT)) {
        format.setLength(0);
      }
      format.append(
          new String(
              scanner.bytes(),
              scanner.tokenStart(),
              scanner.tokenEnd() - scanner.tokenStart(),
              StandardCharsets.UTF_8));
      if (scanner.depth() == outside + 1 && (token == Token.EMPTY || token == Token.END)) {
        numbers.putIfAbsent(format.toString(), formats.size());
        formats.add(format.toString());
        format.setLength(0);
      }
    }
  }

  private static int number(String text) {
    try {
      return Math.min(Integer.parseInt(text.strip()), 1_000_000);
    } catch (NumberFormatException e) {
      return 0;
    }
  }

  /**
   * A cell format like {@code base} that shows that many decimal places; {@code base} itself when
   * that shows numbers in a way of its own.
   */
  int withDecimals(int base, int decimals) {
    if (decimals < 0 || base >= formats.size()) {
      return base;
    }
    return known.computeIfAbsent(
        ((long) base << 8) | decimals, key -> derive(formats.get(base), base, decimals));
  }

  private int derive(String format, int base, int decimals) {
    int tagEnd = format.indexOf('>');
    Matcher id = FORMAT_ID.matcher(format.substring(0, tagEnd));
    boolean isGeneral = !id.find() || general.contains(Integer.valueOf(id.group(1)));
    if (formats.size() >= MOST_FORMATS || !isGeneral) {
      return base;
    }
    boolean empty = format.charAt(tagEnd - 1) == '/';
    String tag = format.substring(0, empty ? tagEnd - 1 : tagEnd);
    String derived =
        REPLACED
                .matcher(tag)
                .replaceAll("")
                .replaceFirst("xf(?=\\s|$)", "xf numFmtId=\"" + code(decimals) + "\"")
                .stripTrailing()
            + " applyNumberFormat=\"1\""
            + (empty ? "/" : "")
            + format.substring(tagEnd);
    Integer number = numbers.putIfAbsent(derived, formats.size());
    if (number != null) {
      return number;
    }
    formats.add(derived);
    return formats.size() - 1;
  }

  /** A cell format like {@code base} in which text wraps. */
  int wrapping(int base) {
    if (base >= formats.size()) {
      return base;
    }
    return known.computeIfAbsent(
        (long) base << 8 | WRAPPING, key -> put(XlsxLook.wrapping(formats.get(base), oldPrefix)));
  }

  /** Whether a cell format has no font, fill or border of its own. */
  boolean isPlain(int base) {
    if (base >= formats.size()) {
      return true;
    }
    if (!asked.get(base)) {
      asked.set(base);
      plain.set(base, XlsxLook.isPlain(formats.get(base)));
    }
    return plain.get(base);
  }

  /** Font, fill and border of {@code base} for numbers with that many places, or text. */
  int lookOf(int base, int decimals) {
    int look =
        known.computeIfAbsent(
            (long) base << 8 | LOOK, key -> put(XlsxLook.lookOf(formats.get(base), oldPrefix)));
    return withDecimals(look, decimals);
  }

  /** The number of a cell format, which is added where the workbook has none like it. */
  private int put(String format) {
    Integer number = numbers.get(format);
    if (number == null && formats.size() < MOST_FORMATS) {
      number = formats.size();
      numbers.put(format, number);
      formats.add(format);
    }
    return number == null ? 0 : number;
  }

  private int code(int decimals) {
    if (decimals == 0) {
      return 1;
    }
    if (decimals == 2) {
      return 2;
    }
    return codes.computeIfAbsent(
        "0." + "0".repeat(decimals),
        code -> {
          newCodes.add(decimals);
          return nextCode++;
        });
  }

  /** Writes the formats that came in, if any. */
  void write(ArchiveCopy copy) throws IOException {
    if (part.isPresent() && formats.size() > oldFormats) {
      copy.change(part.get(), (old, to) -> write(old, part.get().name(), to));
    }
  }

  private void write(InputStream old, String name, PartOutput to) throws IOException {
    XmlSplicer splicer = new XmlSplicer(old, name, to);
    boolean codesDone = newCodes.isEmpty();
    for (Token token = splicer.next(); token != Token.DONE; token = splicer.next()) {
      int start = splicer.tokenStart();
      boolean child =
          token == Token.START && splicer.depth() == 2
              || token == Token.EMPTY && splicer.depth() == 1;
      if (!codesDone && child) {
        codesDone = true;
        if (token == Token.START && splicer.is(NUMBER_FORMATS)) {
          raiseCount(splicer, newCodes.size());
          toEnd(splicer);
          insert(splicer, splicer.tokenStart(), newCodeElements());
          continue;
        }
        String open = "<" + oldPrefix + "numFmts count=\"" + newCodes.size() + "\">";
        String all = open + newCodeElements() + "</" + oldPrefix + "numFmts>";
        int end = splicer.is(NUMBER_FORMATS) ? splicer.tokenEnd() : start;
        splicer.replace(start, end, all.getBytes(StandardCharsets.UTF_8));
      }
      if (token == Token.START && splicer.depth() == 2 && splicer.is(CELL_FORMATS)) {
        raiseCount(splicer, formats.size() - oldFormats);
        toEnd(splicer);
        insert(
            splicer,
            splicer.tokenStart(),
            String.join("", formats.subList(oldFormats, formats.size())));
      }
    }
    splicer.finish();
  }

  private String newCodeElements() {
    StringBuilder elements = new StringBuilder();
    for (int decimals : newCodes) {
      String code = "0." + "0".repeat(decimals);
      elements.append('<').append(oldPrefix).append("numFmt numFmtId=\"").append(codes.get(code));
      elements.append("\" formatCode=\"").append(code).append("\"/>");
    }
    return elements.toString();
  }

  private static void raiseCount(XmlSplicer splicer, int by) throws IOException {
    if (splicer.attribute(COUNT)) {
      byte[] raised = ascii(Integer.toString(number(splicer.value()) + by));
      splicer.replace(splicer.valueStart(), splicer.valueEnd(), raised);
    }
  }

  /** Moves to the end tag of the element whose start tag is the current token. */
  private static void toEnd(XmlSplicer splicer) throws IOException {
    int outside = splicer.depth() - 1;
    while (splicer.next() != Token.END || splicer.depth() != outside) {
      // passes over what is inside
    }
  }

  private static void insert(XmlSplicer splicer, int position, String markup) throws IOException {
    byte[] bytes = markup.getBytes(StandardCharsets.UTF_8);
    splicer.insert(position, bytes, bytes.length);
  }
}
