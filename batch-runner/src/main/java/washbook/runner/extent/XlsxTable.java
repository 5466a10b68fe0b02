package washbook.runner.extent;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import washbook.log.sheet.ColumnPatch;
import washbook.runner.archive.Archive;
import washbook.runner.archive.ArchiveCopy;
import washbook.runner.archive.Part;
import washbook.runner.archive.PartOutput;
import washbook.runner.markup.ByteBuilder;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;

/**
 * A table of a workbook (ECMA-376-1:2016, 18.5.1.2 table), which takes in new columns that stand
 * beside it. One that is filled from elsewhere, has no header or ends above the log stays as it is.
 */
public final class XlsxTable {
  private static final byte[] TABLE = ascii("table");
  private static final byte[] FILTER = ascii("autoFilter");
  private static final byte[] COLUMNS = ascii("tableColumns");
  private static final byte[] COLUMN = ascii("tableColumn");
  private static final byte[] REF = ascii("ref");
  private static final byte[] COUNT = ascii("count");
  private static final byte[] ID = ascii("id");
  private static final byte[] NAME = ascii("name");
  private static final List<String> OUTSIDE = List.of("tableType", "connectionId");

  private final Part part;
  private final Set<String> names = new HashSet<>();
  private CellRange range;
  private long lastId;
  private int totals;
  private boolean grows = true;

  private XlsxTable(Archive archive, Part part) throws IOException {
    this.part = part;
    try (InputStream in = archive.read(part)) {
      XmlScanner scanner = new XmlScanner(in, part.name(), part.size());
      for (Token token = scanner.next(); token != Token.DONE; token = scanner.next()) {
        if (token == Token.START || token == Token.EMPTY) {
          read(scanner);
        }
      }
    }
  }

  /** Lets a table grow by those of the columns that stand beside it. */
  public static void grow(Archive archive, ArchiveCopy copy, Part part, NewColumns columns)
      throws IOException {
    XlsxTable table = new XlsxTable(archive, part);
    List<ColumnPatch> beside = table.range == null ? List.of() : table.mayTake(columns);
    if (!beside.isEmpty()) {
      copy.change(part, (old, to) -> table.patch(old, to, beside));
    }
  }

  private void read(XmlScanner scanner) throws IOException {
    if (scanner.is(TABLE)) {
      range = scanner.attribute(REF) ? CellRange.of(scanner.value()) : null;
      totals = number(scanner, "totalsRowCount", 0);
      grows &= number(scanner, "headerRowCount", 1) == 1;
      for (String name : OUTSIDE) {
        grows &= !scanner.attribute(ascii(name)) || scanner.value().equals("worksheet");
      }
    } else if (scanner.is(COLUMN)) {
      lastId = Math.max(lastId, scanner.attribute(ID) ? number(scanner, "id", 0) : 0);
      names.add(scanner.attribute(NAME) ? scanner.value().toLowerCase(Locale.ROOT) : "");
    }
  }

  private static int number(XmlScanner scanner, String name, int otherwise) throws IOException {
    if (!scanner.attribute(ascii(name))) {
      return otherwise;
    }
    try {
      return Integer.parseInt(scanner.value().strip());
    } catch (NumberFormatException e) {
      return otherwise;
    }
  }

  private List<ColumnPatch> mayTake(NewColumns columns) {
    List<ColumnPatch> beside = columns.ofTable(range.area());
    boolean fits =
        beside.stream()
            .allMatch(
                c ->
                    c.lastRow() <= range.area().lastRow() - totals
                        && names.add(c.header().toLowerCase(Locale.ROOT)));
    return grows && fits && lastId > 0 ? beside : List.of();
  }

  private void patch(InputStream old, PartOutput to, List<ColumnPatch> beside) throws IOException {
    String ref = range.upTo(range.area().lastColumn() + beside.size());
    XmlSplicer splicer = new XmlSplicer(old, part.name(), to);
    for (Token token = splicer.next(); token != Token.DONE; token = splicer.next()) {
      if (token == Token.END && splicer.depth() == 1 && splicer.is(COLUMNS)) {
        ByteBuilder added = columns(splicer.prefix(), beside);
        splicer.insert(splicer.tokenStart(), added.bytes(), added.length());
      } else if (token == Token.START || token == Token.EMPTY) {
        if ((splicer.is(TABLE) || splicer.is(FILTER)) && splicer.attribute(REF)) {
          String end = splicer.is(TABLE) ? ref : filter(splicer.value(), beside);
          splicer.replace(splicer.valueStart(), splicer.valueEnd(), ascii(end));
        } else if (splicer.is(COLUMNS) && splicer.attribute(COUNT)) {
          byte[] count = ascii(Integer.toString(names.size()));
          splicer.replace(splicer.valueStart(), splicer.valueEnd(), count);
        }
      }
    }
    splicer.finish();
  }

  private static String filter(String ref, List<ColumnPatch> beside) {
    CellRange filter = CellRange.of(ref);
    return filter == null ? ref : filter.upTo(filter.area().lastColumn() + beside.size());
  }

  private ByteBuilder columns(String prefix, List<ColumnPatch> beside) throws IOException {
    ByteBuilder added = new ByteBuilder();
    for (ColumnPatch column : beside) {
      byte[] start =
          ("<" + prefix + "tableColumn id=\"" + ++lastId + "\" name=\"")
              .getBytes(StandardCharsets.UTF_8);
      added.raw(start, 0, start.length).text(column.header()).raw("\"/>");
    }
    return added;
  }
}
