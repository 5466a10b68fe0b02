package washbook.runner.write;

import static washbook.runner.file.UnusableFileException.message;
import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import washbook.functions.portable.FormulaRewriter;
import washbook.runner.archive.Archive;
import washbook.runner.archive.Part;
import washbook.runner.markup.TextBuffer;
import washbook.runner.markup.XmlScanner;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.read.XlsxPackage;
import washbook.runner.read.XlsxStrings;

/**
 * Finds calls of the pack that no cell holds: in names, conditional formats, checks of entries and
 * columns of tables. They stay, since these places hold short formulas only, and are listed.
 */
final class FormulasOutsideCells {
  private static final byte[] NAME = ascii("name");
  private static final byte[] AREA = ascii("sqref");

  /** ECMA-376-1:2016, 18.2.5, 18.3.1.10, 18.3.1.32, 18.5.1.1; f of the extensions to them. */
  private static final Map<String, String> XLSX =
      Map.of(
          "definedName", "portable.name",
          "formula", "portable.format",
          "formula1", "portable.check",
          "formula2", "portable.check",
          "calculatedColumnFormula", "portable.column",
          "totalsRowFormula", "portable.totals",
          "f", "portable.any");

  /** OpenDocument 1.3 part 3, 9.4.13, 9.4.6 and 16.3, with the attribute that holds the formula. */
  private static final List<Holder> ODS =
      List.of(
          new Holder("named-expression", "table:expression", "portable.name"),
          new Holder("content-validation", "table:condition", "portable.check"),
          new Holder("map", "style:condition", "portable.format"),
          new Holder("condition", "calcext:value", "portable.format"));

  private static final byte[] CELL = ascii("table-cell");

  private static final List<byte[]> ODS_NAMES =
      List.of(ascii("table:name"), ascii("calcext:target-range-address"), ascii("style:name"));

  /** An element and its attribute that holds a formula. */
  private record Holder(byte[] element, byte[] attribute, String key) {
    Holder(String element, String attribute, String key) {
      this(ascii(element), ascii(attribute), key);
    }
  }

  private FormulasOutsideCells() {}

  static void findInXlsx(XlsxPackage workbook, PortableFormulaSet formulas) throws IOException {
    Map<String, String> sheets = new HashMap<>();
    workbook.sheets().forEach(sheet -> sheets.put(sheet.part().name(), sheet.name()));
    for (Part part : workbook.archive().parts()) {
      String name = part.name();
      String sheet = sheets.get(name);
      if (sheet != null || name.matches(".*(workbook|/tables/[^/]+|/charts/[^/]+)\\.xml")) {
        try (InputStream in = workbook.archive().read(part)) {
          scanXlsx(new XmlScanner(in, name, part.size()), sheet, formulas);
        }
      }
    }
  }

  private static void scanXlsx(XmlScanner scanner, String sheet, PortableFormulaSet formulas)
      throws IOException {
    Map<String, byte[]> elements = new HashMap<>();
    XLSX.keySet().forEach(element -> elements.put(element, ascii(element)));
    TextBuffer text = new TextBuffer();
    String name = "";
    String area = "";
    String element = null;
    for (Token token = scanner.next(); token != Token.DONE; token = scanner.next()) {
      switch (token) {
        case START, EMPTY -> {
          element = null;
          if (sheet != null && scanner.is('c')) {
            skip(scanner, token);
            continue;
          }
          name = scanner.attribute(NAME) ? scanner.value() : name;
          area = scanner.attribute(AREA) ? scanner.value() : area;
          for (Map.Entry<String, byte[]> one : elements.entrySet()) {
            if (token == Token.START && scanner.is(one.getValue())) {
              element = one.getKey();
              text.clear();
            }
          }
        }
        case END -> {
          if (element != null && FormulaRewriter.concerns(text.toString())) {
            String where = sheet == null ? name : area.isEmpty() ? sheet : sheet + "!" + area;
            leave(formulas, where, XLSX.get(element));
          }
          element = null;
        }
        default -> {
          if (element != null) {
            XlsxStrings.append(scanner, token, text);
          }
        }
      }
    }
  }

  private static void leave(PortableFormulaSet formulas, String where, String kind) {
    formulas.leave(message("portable.where", where, message(kind)), message("portable.noCell"));
  }

  private static void skip(XmlScanner scanner, Token start) throws IOException {
    if (start == Token.EMPTY) {
      return;
    }
    int outside = scanner.depth() - 1;
    for (Token token = scanner.next();
        token != Token.DONE && !(token == Token.END && scanner.depth() == outside);
        token = scanner.next()) {}
  }

  static void findInOds(Archive archive, PortableFormulaSet formulas) throws IOException {
    for (String name : List.of("content.xml", "styles.xml")) {
      Part part = archive.find(name).orElse(null);
      if (part != null) {
        try (InputStream in = archive.read(part)) {
          scanOds(new XmlScanner(in, name, part.size()), formulas);
        }
      }
    }
  }

  private static void scanOds(XmlScanner scanner, PortableFormulaSet formulas) throws IOException {
    String where = "";
    for (Token token = scanner.next(); token != Token.DONE; token = scanner.next()) {
      if ((token != Token.START && token != Token.EMPTY) || scanner.is(CELL)) {
        continue;
      }
      for (byte[] name : ODS_NAMES) {
        where = scanner.attribute(name) ? scanner.value() : where;
      }
      for (Holder one : ODS) {
        if (scanner.is(one.element())
            && scanner.attribute(one.attribute())
            && FormulaRewriter.concerns(scanner.value())) {
          leave(formulas, where, one.key());
        }
      }
    }
  }
}
