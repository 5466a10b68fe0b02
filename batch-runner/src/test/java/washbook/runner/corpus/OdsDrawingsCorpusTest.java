package washbook.runner.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.poi.ss.util.CellReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
import washbook.runner.Office;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.Length;
import washbook.runner.read.OdsReader;
import washbook.runner.read.XlsxPackage;
import washbook.runner.write.OdsWriter;

/** As {@link DrawingsCorpusTest}, of what the office makes of those workbooks as .ods. */
class OdsDrawingsCorpusTest {
  private static final double MILLIMETRES = 0.2;

  /** What an office states as a size beside the cells of an end. */
  private static final double ROUNDED = 1;

  private static final Pattern END = Pattern.compile(".*\\.\\$?([A-Z]+)\\$?(\\d+)");
  private static final String HIGHER = "washbook-(wrap|note).*";

  @TempDir private Path folder;

  /**
   * Rows and columns from 0, the last row -1 where the end is tied to no cell; where it begins and
   * ends across, in millimetres.
   */
  private record Drawn(
      String sheet, int row, int column, int lastRow, int lastColumn, double x, double right) {}

  private final List<String> wrong = new ArrayList<>();
  private int filled;
  private int seen;
  private int untied;

  @Test
  void noDrawingIsMovedCoveredOrStretched() throws Exception {
    List<Path> logs = new ArrayList<>();
    for (Path file : Corpus.files("xlsx", "xlsm")) {
      for (XlsxPackage.Sheet sheet : DrawingsCorpusTest.drawnSheets(file)) {
        for (int headerRow : new int[] {0, 12}) {
          Path log = folder.resolve(logs.size() + ".xlsx");
          if (DrawingsCorpusTest.inject(file, sheet.part().name(), headerRow, log)) {
            logs.add(log);
          }
        }
      }
    }
    Office office = new Office(folder);
    for (int from = 0; from < logs.size(); from += 10) {
      List<Path> some = logs.subList(from, Math.min(logs.size(), from + 10));
      Path results = office.convert(some, "ods");
      for (Path log : some) {
        Path ods = results.resolve(log.getFileName().toString().replace(".xlsx", ".ods"));
        if (Files.exists(ods)) {
          check(ods);
        }
      }
    }
    System.out.printf(
        ".ods drawings: %d beside %d filled logs, %d without an end%n", seen, filled, untied);
    wrong.forEach(System.out::println);
    assertEquals(0, wrong.size(), String.join("\n", wrong.subList(0, Math.min(20, wrong.size()))));
    assertTrue(filled > 20 && seen - untied > 30, filled + " logs, " + seen + " drawings");
  }

  private void check(Path log) throws Exception {
    List<SheetPatch> patches = new ArrayList<>();
    Path done = folder.resolve("done.ods");
    try {
      for (Grid grid : new OdsReader().read(log)) {
        Filling filling =
            LogFiller.fill(
                grid, SheetUnderstanding.understand(grid, LogMap.none()), FillOptions.usual());
        if (!filling.patch().columns().isEmpty()) {
          patches.add(filling.patch());
        }
      }
      new OdsWriter().write(log, patches, done);
    } catch (UnusableFileException refused) {
      return;
    }
    for (SheetPatch patch : patches) {
      List<Drawn> before = new Sheet(log, patch.sheet()).drawn;
      if (before.isEmpty()) {
        continue;
      }
      filled++;
      Sheet after = new Sheet(done, patch.sheet());
      assertEquals(before.size(), after.drawn.size(), log + " " + patch.sheet());
      for (int i = 0; i < before.size(); i++) {
        seen++;
        compare(log.getFileName() + ": ", before.get(i), after.drawn.get(i), after, patch);
      }
    }
    Path again = folder.resolve("again.ods");
    new OdsWriter().write(done, patches, again);
    assertEquals(-1, Files.mismatch(done, again), log + " filled twice");
  }

  /** One whose end was tied to no cell before is not held in place yet: it goes with its cell. */
  private void compare(String name, Drawn old, Drawn now, Sheet after, SheetPatch patch) {
    if (old.lastRow < 0) {
      untied++;
      return;
    }
    if (Math.abs(old.x - now.x) > MILLIMETRES || old.row != now.row) {
      wrong.add(name + "moved from " + old + " to " + now);
    }
    boolean higher =
        after.higher.stream().anyMatch(row -> row >= old.row && row <= old.lastRow && old.row >= 0);
    boolean tied = now.lastRow >= 0;
    double most = tied ? MILLIMETRES : ROUNDED;
    boolean down = tied && (old.lastRow != now.lastRow || higher);
    if (Math.abs(old.right - now.right) > most || down) {
      wrong.add(name + "stretched from " + old + " to " + now);
    }
    for (ColumnPatch column : patch.columns()) {
      if (now.column <= column.column()
          && now.lastColumn >= column.column()
          && now.row <= column.lastRow()
          && Math.max(old.lastRow, now.lastRow) >= column.headerRow()) {
        wrong.add(name + "column " + column.column() + " is covered by " + now);
      }
    }
  }

  /** A sheet as the platform's own reader of XML sees it. */
  private static final class Sheet {
    private final List<Drawn> drawn = new ArrayList<>();
    private final List<Integer> higher = new ArrayList<>();
    private final List<Double> edges = new ArrayList<>(List.of(0.0));
    private final Map<String, Double> widths = new HashMap<>();

    Sheet(Path file, String name) throws Exception {
      byte[] content = ZipParts.content(file, "content.xml");
      Element root =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(content))
              .getDocumentElement();
      for (Element style : all(root, "style:style")) {
        for (Element column : all(style, "style:table-column-properties")) {
          String width = column.getAttribute("style:column-width");
          widths.put(style.getAttribute("style:name"), Length.millimetres(width, 22.58));
        }
      }
      for (Element table : all(root, "table:table")) {
        if (table.getAttribute("table:name").equals(name)) {
          read(table, name);
        }
      }
    }

    private void read(Element table, String name) {
      for (Element column : all(table, "table:table-column")) {
        double width = widths.getOrDefault(column.getAttribute("table:style-name"), 22.58);
        boolean hidden = column.getAttribute("table:visibility").equals("collapse");
        for (int i = repeated(column, "columns"); i > 0 && edges.size() < 500; i--) {
          edges.add(edges.get(edges.size() - 1) + (hidden ? 0 : width));
        }
      }
      int row = 0;
      for (Element one : all(table, "table:table-row")) {
        int column = 0;
        for (Node cell = one.getFirstChild(); cell != null; cell = cell.getNextSibling()) {
          if (cell instanceof Element element) {
            if (element.getAttribute("table:style-name").matches(HIGHER)) {
              higher.add(row);
            }
            for (Node child = cell.getFirstChild(); child != null; child = child.getNextSibling()) {
              if (child instanceof Element shape && shape.getTagName().startsWith("draw:")) {
                take(shape, name, row, column);
              }
            }
            column += repeated(element, "columns");
          }
        }
        row += repeated(one, "rows");
      }
    }

    private void take(Element shape, String sheet, int row, int column) {
      Matcher end = END.matcher(shape.getAttribute("table:end-cell-address"));
      if (end.matches()) {
        int lastColumn = CellReference.convertColStringToIndex(end.group(1));
        double x = edges.get(column) + Length.millimetres(shape.getAttribute("svg:x"), 0);
        double inside = Length.millimetres(shape.getAttribute("table:end-x"), 0);
        int lastRow = Integer.parseInt(end.group(2)) - 1;
        double right = edges.get(lastColumn) + inside;
        drawn.add(new Drawn(sheet, row, column, lastRow, lastColumn, x, right));
      } else if (!shape.getAttribute("svg:width").isEmpty()) {
        double x = edges.get(column) + Length.millimetres(shape.getAttribute("svg:x"), 0);
        double right = x + Length.millimetres(shape.getAttribute("svg:width"), 0);
        int lastColumn = column;
        while (lastColumn + 1 < edges.size() && edges.get(lastColumn + 1) < right) {
          lastColumn++;
        }
        drawn.add(new Drawn(sheet, row, column, -1, lastColumn, x, right));
      }
    }

    private static int repeated(Element element, String what) {
      String count = element.getAttribute("table:number-" + what + "-repeated");
      return count.isEmpty() ? 1 : Integer.parseInt(count);
    }

    private static List<Element> all(Element in, String tag) {
      NodeList found = in.getElementsByTagName(tag);
      List<Element> all = new ArrayList<>();
      for (int i = 0; i < found.getLength(); i++) {
        all.add((Element) found.item(i));
      }
      return all;
    }
  }
}
