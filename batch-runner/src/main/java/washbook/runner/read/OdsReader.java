package washbook.runner.read;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.sheet.CompactGrid;
import washbook.runner.sheet.SheetReader;
import washbook.runner.sheet.Texts;

/** Reads the sheets of an OpenDocument spreadsheet; formulas by their stored results. */
public final class OdsReader implements SheetReader {
  public static final byte[] SPREADSHEET = ascii("spreadsheet");
  public static final byte[] TABLE = ascii("table");
  public static final byte[] ROW = ascii("table-row");
  private static final byte[] BODY = ascii("body");
  private static final byte[] NAME = ascii("table:name");
  private static final byte[] ROWS_REPEATED = ascii("table:number-rows-repeated");
  private static final byte[] AUTOMATIC = ascii("automatic-styles");

  private static final byte[][] ROW_HOLDERS = {
    ascii("table-header-rows"), ascii("table-row-group"), ascii("table-rows")
  };

  /** Elements in a table that only hold rows or columns together. */
  private static final byte[][] HOLDERS = {
    ROW_HOLDERS[0],
    ROW_HOLDERS[1],
    ROW_HOLDERS[2],
    ascii("table-header-columns"),
    ascii("table-column-group"),
    ascii("table-columns")
  };

  @Override
  public List<Grid> read(Path file) throws IOException {
    try (OdsPackage workbook = OdsPackage.open(file);
        InputStream in = workbook.archive().read(workbook.content())) {
      XmlScanner scanner = new XmlScanner(in, workbook.content().name(), workbook.content().size());
      Texts texts = new Texts();
      OdsInside inside = new OdsInside();
      Map<String, OdsDrawings.OnSheet> drawings = OdsDrawings.of(workbook);
      List<Grid> grids = new ArrayList<>();
      boolean inSheets = false;
      for (Token token = scanner.next(); token != Token.DONE; token = scanner.next()) {
        boolean start = token == Token.START;
        if (start && scanner.depth() == 1) {
          OdsPackage.missingNamespaces(scanner);
        } else if (start && scanner.depth() == 3) {
          inSheets = scanner.is(SPREADSHEET);
        } else if (inSheets && isTable(scanner, token)) {
          CompactGrid grid = new CompactGrid(name(scanner), texts).in(file);
          if (start) {
            new Sheet(scanner, grid, inside.onSheet()).read();
          }
          for (Grid.Area area :
              drawings.getOrDefault(grid.name(), OdsDrawings.OnSheet.NONE).areas()) {
            grid.draw(area);
          }
          grids.add(grid);
        } else if (start && scanner.depth() > 3 && inSheets) {
          OdsCell.skip(scanner, token);
        } else if (token == Token.END && scanner.depth() == 2) {
          inSheets = false;
        } else if (start && scanner.depth() == 2 && scanner.is(AUTOMATIC)) {
          inside.readStyles(scanner);
        } else if (start && scanner.depth() == 2 && !scanner.is(BODY)) {
          OdsCell.skip(scanner, token);
        }
      }
      if (grids.isEmpty()) {
        throw UnusableFileException.of("damaged.sheets");
      }
      return grids;
    }
  }

  /** Whether the current token begins a sheet, given that the sheets' element is open. */
  public static boolean isTable(XmlScanner scanner, Token token) {
    boolean child =
        token == Token.START && scanner.depth() == 4
            || token == Token.EMPTY && scanner.depth() == 3;
    return child && scanner.is(TABLE);
  }

  /** The name of the sheet whose tag is the current token. */
  public static String name(XmlScanner scanner) throws UnusableFileException {
    return scanner.attribute(NAME) ? scanner.value() : "";
  }

  /** Whether the present element only holds rows or columns together. */
  public static boolean isHolder(XmlScanner scanner) {
    return isAny(scanner, HOLDERS);
  }

  /** Whether the present element only holds rows together. */
  public static boolean isRowHolder(XmlScanner scanner) {
    return isAny(scanner, ROW_HOLDERS);
  }

  private static boolean isAny(XmlScanner scanner, byte[][] holders) {
    for (byte[] holder : holders) {
      if (scanner.is(holder)) {
        return true;
      }
    }
    return false;
  }

  /** How many rows the row element of the current token stands for. */
  public static int rowsRepeated(XmlScanner scanner) throws UnusableFileException {
    return scanner.attribute(ROWS_REPEATED) ? OdsCell.count(scanner) : 1;
  }

  /** The rows of one sheet. */
  private static final class Sheet {
    private final XmlScanner scanner;
    private final CompactGrid grid;
    private final OdsInside inside;
    private final OdsCell cell = new OdsCell();
    private final List<Filled> filled = new ArrayList<>();
    private int row;

    /** A filled cell of a row that stands for several. */
    private record Filled(
        int column, Kind kind, double number, String text, boolean formula, boolean inside) {}

    Sheet(XmlScanner scanner, CompactGrid grid, OdsInside inside) {
      this.scanner = scanner;
      this.grid = grid;
      this.inside = inside;
    }

    void read() throws IOException {
      int outside = scanner.depth() - 1;
      while (true) {
        Token token = scanner.next();
        if (token == Token.DONE) {
          throw scanner.damaged("how.sheetOpen");
        }
        if (token == Token.END && scanner.depth() == outside) {
          return;
        }
        if (token != Token.START && token != Token.EMPTY) {
          continue;
        }
        if (scanner.is(ROW)) {
          int repeated = rowsRepeated(scanner);
          inside.startRow(scanner);
          if (token == Token.START) {
            readRow(repeated);
          }
          row = Math.min(row + repeated, Integer.MAX_VALUE / 2);
        } else if (!isHolder(scanner)) {
          inside.addColumn(scanner);
          OdsCell.skip(scanner, token);
        }
      }
    }

    private void readRow(int repeated) throws IOException {
      int outside = scanner.depth() - 1;
      int column = 0;
      filled.clear();
      while (true) {
        Token token = scanner.next();
        if (token == Token.DONE) {
          throw scanner.damaged("how.rowOpen");
        }
        if (token == Token.END && scanner.depth() == outside) {
          break;
        }
        if (token != Token.START && token != Token.EMPTY) {
          continue;
        }
        if (!scanner.is(OdsCell.CELL) && !scanner.is(OdsCell.COVERED)) {
          OdsCell.skip(scanner, token);
          continue;
        }
        cell.read(scanner, token, OdsCell::skip);
        take(column, repeated > 1);
        column = Math.min(column + cell.repeated(), Integer.MAX_VALUE / 2);
      }
      for (int copy = 1; copy < repeated && !filled.isEmpty(); copy++) {
        for (Filled one : filled) {
          put(row + copy, one.column, one.kind, one.number, one.text, one.formula);
          if (one.inside) {
            grid.keepInside(row + copy, one.column);
          }
        }
      }
    }

    private void take(int column, boolean keep) throws IOException {
      if (cell.columnsSpanned() > 1 || cell.rowsSpanned() > 1) {
        grid.merge(
            new Grid.Area(
                row, column, row + cell.rowsSpanned() - 1, column + cell.columnsSpanned() - 1));
      }
      if (cell.kind() == Kind.BLANK) {
        return;
      }
      String text = cell.kind() == Kind.TEXT ? cell.text() : "";
      boolean formula = cell.formula() != null;
      for (int i = 0; i < cell.repeated(); i++) {
        put(row, column + i, cell.kind(), cell.number(), text, formula);
        boolean stays = !text.isEmpty() && inside.keeps(cell.style(), column + i);
        if (stays) {
          grid.keepInside(row, column + i);
        }
        if (keep) {
          filled.add(new Filled(column + i, cell.kind(), cell.number(), text, formula, stays));
        }
      }
    }

    private void put(int row, int column, Kind kind, double number, String text, boolean formula)
        throws IOException {
      switch (kind) {
        case NUMBER -> grid.putNumber(row, column, number, formula);
        case DATE -> grid.putDate(row, column, number, formula);
        case LOGICAL -> grid.putLogical(row, column, number != 0, formula);
        case TEXT -> grid.putText(row, column, text, formula);
        case ERROR -> grid.putError(row, column, formula);
        case BLANK -> {
          // nothing to keep
        }
      }
    }
  }
}
