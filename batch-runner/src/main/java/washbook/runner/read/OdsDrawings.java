package washbook.runner.read;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.sheet.Grid.Area;
import washbook.runner.markup.Length;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.sheet.CellReference;

/**
 * The cells that charts and pictures of an OpenDocument spreadsheet lie over (OpenDocument 1.3 part
 * 3, 9.4.6 table:shapes and 19.616 table:end-cell-address). Sheets without any cost no look.
 */
public final class OdsDrawings {
  private static final byte[] STYLE = ascii("style");
  private static final byte[] STYLE_NAME = ascii("style:name");
  private static final byte[] USED_STYLE = ascii("table:style-name");
  private static final byte[] WIDTH = ascii("style:column-width");
  private static final byte[] HEIGHT = ascii("style:row-height");
  private static final byte[] COLUMN = ascii("table-column");
  private static final byte[] SHAPES = ascii("shapes");
  private static final byte[] COLUMNS_REPEATED = ascii("table:number-columns-repeated");
  private static final byte[] END = ascii("table:end-cell-address");
  private static final Pattern END_CELL = Pattern.compile(".*\\.\\$?([A-Z]{1,3})\\$?(\\d{1,7})");

  /** Millimetres, where a style says nothing. */
  public static final double USUAL_WIDTH = 22.58;

  private static final double USUAL_HEIGHT = 4.52;

  private final XmlScanner scanner;
  private final Map<String, Double> sizes = new HashMap<>();
  private final Map<String, OnSheet> sheets = new HashMap<>();
  private final List<Drawn> drawn = new ArrayList<>();
  private OdsEdges columns = new OdsEdges(USUAL_WIDTH);
  private OdsEdges rows = new OdsEdges(USUAL_HEIGHT);
  private int column;

  /**
   * The drawings of a sheet.
   *
   * @param areas the cells that each lies over
   * @param loose those of drawings that stand in a cell and state a size of their own
   * @param columns where columns end, in millimetres
   */
  public record OnSheet(List<Area> areas, List<Area> loose, OdsEdges columns) {
    public static final OnSheet NONE = new OnSheet(List.of(), List.of(), new OdsEdges(USUAL_WIDTH));
  }

  /** A drawing; row and column are -1 where it stands on the sheet itself. Millimetres. */
  private record Drawn(
      int row, int column, double x, double y, double width, double height, String end) {}

  private OdsDrawings(XmlScanner scanner) {
    this.scanner = scanner;
  }

  /** By the names of the sheets. */
  public static Map<String, OnSheet> of(OdsPackage workbook) throws IOException {
    boolean any =
        workbook.archive().parts().stream()
            .anyMatch(p -> p.name().startsWith("Object ") || p.name().startsWith("Pictures/"));
    if (!any) {
      return Map.of();
    }
    try (InputStream in = workbook.archive().read(workbook.content())) {
      OdsDrawings all =
          new OdsDrawings(new XmlScanner(in, workbook.content().name(), workbook.content().size()));
      all.read();
      return all.sheets;
    }
  }

  private void read() throws IOException {
    String style = "";
    String sheet = "";
    boolean inShapes = false;
    for (Token token = scanner.next(); token != Token.DONE; token = scanner.next()) {
      if (token == Token.END) {
        inShapes &= !scanner.is(SHAPES);
        if (scanner.depth() == 3 && scanner.is(OdsReader.TABLE)) {
          endSheet(sheet);
        }
      }
      if (token != Token.START && token != Token.EMPTY) {
        continue;
      }
      if (scanner.is(STYLE) && scanner.attribute(STYLE_NAME)) {
        style = scanner.value();
      } else if (scanner.attribute(WIDTH) || scanner.attribute(HEIGHT)) {
        sizes.put(style, Length.millimetres(scanner.value(), USUAL_HEIGHT));
      } else if (OdsReader.isTable(scanner, token)) {
        sheet = OdsReader.name(scanner);
      } else if (scanner.is(SHAPES)) {
        inShapes = token == Token.START;
      } else if (scanner.is(COLUMN)) {
        int count = scanner.attribute(COLUMNS_REPEATED) ? OdsCell.count(scanner) : 1;
        columns.add(count, size(USUAL_WIDTH));
      } else if (scanner.is(OdsReader.ROW)) {
        rows.add(OdsReader.rowsRepeated(scanner), size(USUAL_HEIGHT));
        column = 0;
      } else if (scanner.is(OdsCell.CELL) || scanner.is(OdsCell.COVERED)) {
        readCell(token);
      } else if (inShapes && scanner.prefix().equals("draw:")) {
        take(token, -1, -1);
      }
    }
  }

  private void readCell(Token first) throws IOException {
    int repeated = scanner.attribute(COLUMNS_REPEATED) ? OdsCell.count(scanner) : 1;
    int outside = scanner.depth() - 1;
    while (first == Token.START && scanner.depth() > outside) {
      Token token = scanner.next();
      if (token == Token.DONE) {
        throw scanner.damaged("how.cellOpen");
      }
      boolean tag = token == Token.START || token == Token.EMPTY;
      if (tag && scanner.prefix().equals("draw:")) {
        take(token, rows.count() - 1, column);
      }
    }
    column = Math.min(column + repeated, Integer.MAX_VALUE / 2);
  }

  private void take(Token token, int row, int atColumn) throws IOException {
    drawn.add(
        new Drawn(
            row,
            atColumn,
            attribute("svg:x"),
            attribute("svg:y"),
            attribute("svg:width"),
            attribute("svg:height"),
            scanner.attribute(END) ? scanner.value() : ""));
    OdsCell.skip(scanner, token);
  }

  private double attribute(String name) throws IOException {
    return scanner.attribute(ascii(name)) ? Length.millimetres(scanner.value(), 0) : 0;
  }

  private double size(double usual) throws IOException {
    return scanner.attribute(USED_STYLE) ? sizes.getOrDefault(scanner.value(), usual) : usual;
  }

  private void endSheet(String sheet) {
    List<Area> loose =
        drawn.stream()
            .filter(one -> one.row >= 0 && one.width > 0 && one.height > 0)
            .map(this::area)
            .toList();
    sheets.put(sheet, new OnSheet(drawn.stream().map(this::area).toList(), loose, columns));
    drawn.clear();
    columns = new OdsEdges(USUAL_WIDTH);
    rows = new OdsEdges(USUAL_HEIGHT);
  }

  private Area area(Drawn one) {
    double left = one.x + (one.column < 0 ? 0 : columns.edge(one.column));
    double top = one.y + (one.row < 0 ? 0 : rows.edge(one.row));
    int lastRow = rows.at(top + one.height);
    int lastColumn = columns.at(left + one.width);
    Matcher end = END_CELL.matcher(one.end);
    if (end.matches()) {
      byte[] cell = ascii(end.group(1) + end.group(2));
      long reference = CellReference.parse(cell, 0, cell.length);
      if (reference >= 0) {
        lastRow = CellReference.row(reference);
        lastColumn = CellReference.column(reference);
      }
    }
    int firstRow = one.row < 0 ? rows.at(top) : one.row;
    int firstColumn = one.column < 0 ? columns.at(left) : one.column;
    return new Area(
        firstRow, firstColumn, Math.max(firstRow, lastRow), Math.max(firstColumn, lastColumn));
  }
}
