package washbook.runner.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;

/**
 * Only content.xml may change, and in it only by our styles, declared columns, the style of the
 * sheet, and what is in the patched column; runs of equal rows and cells may be divided. styles.xml
 * may get pages of ours.
 */
public final class OdsChangeCheck implements ChangeCheck {
  private static final String COLUMNS = "table:number-columns-repeated";
  private static final String ROWS = "table:number-rows-repeated";

  /** A run of equal things. */
  private record Run(int count, String what) {}

  @Override
  public void check(
      Path before,
      List<Grid> gridsBefore,
      List<SheetPatch> patches,
      Path after,
      List<Grid> gridsAfter)
      throws Exception {
    SameGrids.check(gridsBefore, patches, gridsAfter);
    checkParts(before, patches, after);
  }

  /** Compares the packages only. */
  public static void checkParts(Path before, List<SheetPatch> patches, Path after)
      throws Exception {
    Set<String> changed = ZipParts.changed(before, after);
    assertTrue(Set.of("content.xml", "styles.xml").containsAll(changed), changed + "");
    assertTrue(changed.contains("content.xml"), changed + "");
    if (changed.contains("styles.xml")) {
      assertEquals(root(before, "styles.xml"), root(after, "styles.xml"));
    }
    Set<Integer> ours = new TreeSet<>();
    for (ColumnPatch column : patches.get(0).columns()) {
      ours.add(column.column());
    }
    String sheet = patches.get(0).sheet();
    assertEquals(describe(before, sheet, ours), describe(after, sheet, ours));
  }

  /** A part without what is ours. */
  private static String root(Path file, String part) throws Exception {
    return describe(parsed(file, part), "", Set.of());
  }

  private static String describe(Path file, String sheet, Set<Integer> ours) throws Exception {
    return describe(parsed(file, "content.xml"), sheet, ours);
  }

  private static Element parsed(Path file, String part) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    Document document =
        factory.newDocumentBuilder().parse(new ByteArrayInputStream(ZipParts.content(file, part)));
    return document.getDocumentElement();
  }

  private static String describe(Node node, String sheet, Set<Integer> ours) {
    if (!(node instanceof Element element)) {
      return node.getNodeType() == Node.TEXT_NODE || node.getNodeType() == Node.CDATA_SECTION_NODE
          ? node.getNodeValue()
          : "";
    }
    if (element.getAttribute("style:name").startsWith("washbook-")) {
      return "";
    }
    if (element.getTagName().equals("table:table")
        && element.getAttribute("table:name").equals(sheet)) {
      List<Run> rows = new ArrayList<>();
      StringBuilder others = new StringBuilder();
      table(element, sheet, ours, rows, others);
      // Blank rows up to one that a patch adds are no change.
      rows.removeIf(run -> run.what.equals("<table:table-row[]>[]"));
      // A sheet grown too wide gets a style of ours, for pages of ours.
      return tag(element, "table:style-name") + others + rows;
    }
    return tag(element, "") + children(element, sheet, ours);
  }

  private static String children(Element element, String sheet, Set<Integer> ours) {
    StringBuilder text = new StringBuilder();
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      text.append(describe(child, sheet, ours));
    }
    return text.append("</>").toString();
  }

  private static String tag(Element element, String but) {
    Set<String> attributes = new TreeSet<>();
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      if (!element.getAttributes().item(i).getNodeName().equals(but)) {
        attributes.add(element.getAttributes().item(i).toString());
      }
    }
    return "<" + element.getTagName() + attributes + ">";
  }

  private static void table(
      Element parent, String sheet, Set<Integer> ours, List<Run> rows, StringBuilder others) {
    for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (!(child instanceof Element element)) {
        continue;
      }
      switch (element.getTagName()) {
        case "table:table-row" ->
            add(rows, count(element, ROWS), tag(element, ROWS) + cells(element, sheet, ours));
        case "table:table-header-rows", "table:table-row-group", "table:table-rows" -> {
          add(rows, 1, tag(element, ""));
          table(element, sheet, ours, rows, others);
          add(rows, 1, "</>");
        }
        case "table:table-column" -> {
          // Declared columns are added at the end; what there was is compared by the office.
        }
        default -> others.append(describe(element, sheet, ours));
      }
    }
  }

  private static List<Run> cells(Element row, String sheet, Set<Integer> ours) {
    List<Run> cells = new ArrayList<>();
    int column = 0;
    for (Node child = row.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element cell) {
        int count = count(cell, COLUMNS);
        int from = column;
        int others = count - (int) ours.stream().filter(c -> c >= from && c < from + count).count();
        add(cells, others, tag(cell, COLUMNS) + children(cell, sheet, ours));
        column += count;
      }
    }
    int last = cells.size() - 1;
    if (last >= 0 && cells.get(last).what.equals("<table:table-cell[]></>")) {
      cells.remove(last);
    }
    return cells;
  }

  private static int count(Element element, String attribute) {
    String count = element.getAttribute(attribute);
    return count.isEmpty() ? 1 : Integer.parseInt(count);
  }

  private static void add(List<Run> runs, int count, String what) {
    int last = runs.size() - 1;
    if (count == 0) {
      return;
    }
    if (last >= 0 && runs.get(last).what.equals(what)) {
      runs.set(last, new Run(runs.get(last).count + count, what));
    } else {
      runs.add(new Run(count, what));
    }
  }
}
