package washbook.runner.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import washbook.log.sheet.CellAddress;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;

/**
 * Only the sheet part and the cell formats may change, and in them only by additions and the height
 * of the header's row; in the sheet's drawings only the cells that they are tied to; of tables,
 * filters, print areas and row shading only how far right they reach; of the page only that it is
 * turned and how many are printed side by side.
 */
public final class XlsxChangeCheck implements ChangeCheck {
  private static final String PAGES = "fitToPage|fitToWidth|fitToHeight|orientation";

  @Override
  public void check(
      Path before,
      List<Grid> gridsBefore,
      List<SheetPatch> patches,
      Path after,
      List<Grid> gridsAfter)
      throws Exception {
    SameGrids.check(gridsBefore, patches, gridsAfter);
    ColumnPatch column = patches.get(0).columns().get(0);
    Set<String> changed = ZipParts.changed(before, after);
    int sheets = 0;
    for (String part : changed) {
      byte[] old = ZipParts.content(before, part);
      byte[] now = ZipParts.content(after, part);
      if (part.toLowerCase(Locale.ROOT).contains("styles")) {
        assertOnlyFormatsAdded(parse(old), parse(now));
      } else if (part.matches("(?i).*(/tables/|workbook[^/]*$).*")) {
        assertEquals(withoutReach(old), withoutReach(now), part);
      } else if (part.toLowerCase(Locale.ROOT).contains("drawings/")) {
        assertEquals(withoutCells(old), withoutCells(now), part);
      } else {
        sheets++;
        assertEquals(withoutColumn(parse(old), column), withoutColumn(parse(now), column), part);
      }
    }
    assertEquals(1, sheets, "exactly one sheet part changes: " + changed);
  }

  private static String withoutCells(byte[] drawing) {
    return new String(drawing, StandardCharsets.UTF_8)
        .replaceAll("((?:col|colOff|row|rowOff)>)\\s*\\d+\\s*<", "$1<");
  }

  private static String withoutReach(byte[] part) {
    return new String(part, StandardCharsets.UTF_8)
        .replaceAll("<tableColumn [^>]*name=\"" + ForcedPatch.HEADER + "\"/>", "")
        .replaceAll("<tableColumns count=\"\\d+\"", "<tableColumns")
        .replaceAll("( ref=\"[A-Z]+\\d+:)[A-Z]+", "$1")
        .replaceAll("(<definedName[^>]*_xlnm[.](Print_Area|_Filter)[^>]*>[^<,]*:\\$)[A-Z]+", "$1");
  }

  private static Document parse(byte[] bytes) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    factory.setNamespaceAware(true);
    factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
  }

  /** The part as text without the cells, widths and hints that a patch may add or change. */
  private static String withoutColumn(Document part, ColumnPatch column) {
    Set<String> ours = new TreeSet<>();
    ours.add(CellAddress.of(column.headerRow(), column.column()));
    for (int row = column.firstRow(); row <= column.lastRow(); row++) {
      ours.add(CellAddress.of(row, column.column()));
    }
    StringBuilder text = new StringBuilder();
    describe(part.getDocumentElement(), ours, column.column() + 1, text);
    return text.toString();
  }

  private static void describe(Node node, Set<String> ours, int columnNumber, StringBuilder to) {
    if (!(node instanceof Element element)) {
      to.append(node.getNodeType() == Node.ELEMENT_NODE ? "" : node.getNodeValue());
      return;
    }
    String name = element.getLocalName();
    if (name.equals("c") && ours.contains(element.getAttribute("r"))) {
      return;
    }
    if (name.matches("pageSetup|pageSetUpPr") && isAboutPagesOnly(element)
        || name.equals("sheetPr") && !element.hasAttributes() && isAboutPagesOnly(element)) {
      return;
    }
    if (name.equals("pageMargins") && hasUsualHeight(element)) {
      return;
    }
    if (name.equals("colBreaks") && isBreakBehind(element, columnNumber)) {
      return;
    }
    if (name.equals("cols")) {
      describeColumns(element, columnNumber, to);
      return;
    }
    String headerRow = Integer.toString(ForcedPatch.HEADER_ROW + 1);
    boolean isHeader = name.equals("row") && element.getAttribute("r").equals(headerRow);
    StringBuilder inside = new StringBuilder();
    for (Node child = node.getFirstChild(); child != null; child = child.getNextSibling()) {
      describe(child, ours, columnNumber, inside);
    }
    Set<String> attributes = new TreeSet<>();
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      Node attribute = element.getAttributes().item(i);
      boolean hint =
          name.equals("row") && attribute.getNodeName().equals("spans")
              || name.equals("pageMargins") && attribute.getNodeName().matches("left|right")
              || name.startsWith("pageSet") && attribute.getNodeName().matches(PAGES)
              || isOurScale(element, attribute)
              || isHeader && attribute.getNodeName().equals("ht")
              || name.equals("dimension") && attribute.getNodeName().equals("ref");
      if (!hint) {
        boolean reach = name.equals("autoFilter") || name.equals("conditionalFormatting");
        String value = attribute.getNodeValue();
        attributes.add(
            attribute.getNodeName()
                + "="
                + (reach ? value.replaceAll(":[A-Z]+(\\d)", ":$1") : value));
      }
    }
    if (name.equals("row") && inside.isEmpty() && attributes.size() <= 1) {
      return;
    }
    to.append('<').append(node.getNodeName()).append(attributes).append('>');
    to.append(inside).append("</>");
  }

  /** What is drawn beside a log may begin a page, behind the new column. */
  private static boolean isBreakBehind(Element breaks, int columnNumber) {
    return breaks.getChildNodes().getLength() == 1
        && breaks.getFirstChild() instanceof Element only
        && Integer.parseInt(only.getAttribute("id")) >= columnNumber;
  }

  /** The usual scale, and that of a log on one page with the drawings on the next. */
  private static boolean isOurScale(Element element, Node attribute) {
    return element.getLocalName().equals("pageSetup")
        && attribute.getNodeName().equals("scale")
        && attribute.getNodeValue().matches("100|80");
  }

  /** Whether margins say nothing but how wide they are; a sheet without any may get such ones. */
  private static boolean hasUsualHeight(Element margins) {
    return margins.getAttribute("top").equals("0.75")
        && margins.getAttribute("bottom").equals("0.75")
        && margins.getAttribute("header").equals("0.3")
        && margins.getAttribute("footer").equals("0.3");
  }

  /** Whether an element, with what is in it, says nothing but how many pages are printed. */
  private static boolean isAboutPagesOnly(Element element) {
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      if (!element.getAttributes().item(i).getNodeName().matches(PAGES)) {
        return false;
      }
    }
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      boolean more =
          !(child instanceof Element inside)
              || !inside.getLocalName().equals("pageSetUpPr")
              || !isAboutPagesOnly(inside);
      if (more) {
        return false;
      }
    }
    return true;
  }

  /** Every column but ours with what it had, however the columns are grouped. */
  private static void describeColumns(Element cols, int columnNumber, StringBuilder to) {
    for (Node child = cols.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element col) {
        int last = Integer.parseInt(col.getAttribute("max"));
        for (int i = Integer.parseInt(col.getAttribute("min")); i <= last; i++) {
          if (i != columnNumber) {
            Set<String> attributes = new TreeSet<>();
            for (int a = 0; a < col.getAttributes().getLength(); a++) {
              Node attribute = col.getAttributes().item(a);
              if (!attribute.getNodeName().matches("min|max")) {
                attributes.add(attribute.toString());
              }
            }
            to.append("col ").append(i).append(attributes);
          }
        }
      }
    }
  }

  private static void assertOnlyFormatsAdded(Document before, Document after) {
    Element old = before.getDocumentElement();
    Element now = after.getDocumentElement();
    for (String list : List.of("numFmts", "cellXfs")) {
      Element oldList = child(old, list);
      Element newList = child(now, list);
      if (oldList == null) {
        if (newList != null) {
          now.removeChild(newList);
        }
        continue;
      }
      int oldCount = elements(oldList);
      assertTrue(elements(newList) >= oldCount);
      while (elements(newList) > oldCount) {
        newList.removeChild(newList.getLastChild());
      }
      oldList.removeAttribute("count");
      newList.removeAttribute("count");
      trim(oldList);
      trim(newList);
    }
    old.normalize();
    now.normalize();
    assertTrue(old.isEqualNode(now), "only formats are added");
  }

  private static void trim(Element list) {
    while (list.getLastChild() != null && !(list.getLastChild() instanceof Element)) {
      list.removeChild(list.getLastChild());
    }
  }

  private static int elements(Element list) {
    int count = 0;
    for (Node child = list.getFirstChild(); child != null; child = child.getNextSibling()) {
      count += child instanceof Element ? 1 : 0;
    }
    return count;
  }

  private static Element child(Element parent, String name) {
    for (Node child = parent.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element element && name.equals(element.getLocalName())) {
        return element;
      }
    }
    return null;
  }
}
