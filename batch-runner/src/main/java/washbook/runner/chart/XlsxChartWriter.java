package washbook.runner.chart;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import washbook.log.fill.BatchCurve;
import washbook.runner.archive.ArchiveCopy;
import washbook.runner.archive.Part;
import washbook.runner.archive.PartOutput;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.SheetParts;
import washbook.runner.read.XlsxPackage;

/**
 * Adds the sheet with charts to .xlsx and .xlsm: parts of its own, and a line each in the workbook,
 * its relationships and the content types (ECMA-376-1:2016, 18.3, 20.5 and 21.2).
 */
public final class XlsxChartWriter implements ChartWriter {
  /** Names for the parts that no other part has, and for the sheet's relationship. */
  private record Names(String sheet, String drawing, String chart, String relation) {
    static Names free(XlsxPackage workbook, ChartPage page, Set<String> gone, boolean isNew) {
      int series = 1;
      while (true) {
        Names names = numbered(series == 1 ? "" : Integer.toString(series));
        boolean taken =
            names.parts(page).stream().anyMatch(part -> isTaken(workbook, part, gone))
                || isNew && workbook.hasRelation(names.relation);
        if (!taken || series > 1000) {
          return names;
        }
        series++;
      }
    }

    private static Names numbered(String series) {
      return new Names(
          "xl/worksheets/washbook-charts" + series + ".xml",
          "xl/drawings/washbook-charts" + series + ".xml",
          "xl/charts/washbook-chart" + (series.isEmpty() ? "" : series + "-"),
          "washbookCharts" + series);
    }

    private static boolean isTaken(XlsxPackage workbook, String part, Set<String> gone) {
      return workbook.archive().find(part).isPresent() && !gone.contains("/" + part);
    }

    String chart(ChartPage.Chart drawn) {
      return chart + drawn.number() + ".xml";
    }

    List<String> parts(ChartPage page) {
      List<String> parts = new ArrayList<>(List.of(sheet, drawing));
      parts.add(relationsOf(sheet));
      parts.add(relationsOf(drawing));
      page.charts().forEach(drawn -> parts.add(chart(drawn)));
      return parts;
    }
  }

  @Override
  public void write(Path source, List<BatchCurve> curves, Optional<String> older, Path target)
      throws IOException {
    ChartPage page = new ChartPage(curves, older);
    try (XlsxPackage workbook = XlsxPackage.open(source);
        ArchiveCopy copy = new ArchiveCopy(source, workbook.archive())) {
      Part old = older.isPresent() ? older(workbook, older.get()) : null;
      Set<String> gone = new HashSet<>();
      if (old != null) {
        for (Part part : SheetParts.of(workbook.archive(), old)) {
          copy.leaveOut(part);
          gone.add("/" + part.name().toLowerCase(Locale.ROOT));
        }
      }
      String oldRelation = old == null ? null : workbook.relationId(old).orElse(null);
      Names names = Names.free(workbook, page, gone, old == null);
      boolean[] strict = new boolean[1];
      Part main = workbook.workbook();
      String newName = old == null ? page.sheetName() : null;
      copy.change(main, (in, to) -> strict[0] = listSheet(in, to, main, newName, names));
      Part relations = required(workbook.workbookRelations().orElse(null));
      copy.change(relations, (in, to) -> relate(in, to, relations, oldRelation, names, strict[0]));
      Part types = required(workbook.contentTypes().orElse(null));
      copy.change(types, (in, to) -> declare(in, to, types, gone, page, names));
      for (Map.Entry<String, byte[]> part : parts(page, names, strict[0]).entrySet()) {
        copy.add(part.getKey(), part.getValue());
      }
      copy.write(target);
    }
  }

  private static Part older(XlsxPackage workbook, String name) throws UnusableFileException {
    return workbook.sheets().stream()
        .filter(sheet -> sheet.name().equalsIgnoreCase(name))
        .findFirst()
        .orElseThrow(() -> UnusableFileException.of("charts.older"))
        .part();
  }

  private static Part required(Part part) throws UnusableFileException {
    if (part == null) {
      throw UnusableFileException.of("lists.none");
    }
    return part;
  }

  /**
   * Lists the new sheet behind the others; tells whether the workbook is of the Strict kind.
   *
   * @param newName null where the sheet is listed already
   */
  private static boolean listSheet(
      InputStream old, PartOutput to, Part part, String newName, Names names) throws IOException {
    XmlSplicer splicer = new XmlSplicer(old, part.name(), to);
    boolean strict = false;
    int highest = 0;
    for (Token token = splicer.next(); token != Token.DONE; token = splicer.next()) {
      boolean tag = token == Token.START || token == Token.EMPTY;
      if (token == Token.START && splicer.depth() == 1) {
        splicer.rewindAttributes();
        while (splicer.nextAttribute()) {
          strict |= splicer.value().equals(XlsxChartMarkup.STRICT_MAIN);
        }
      } else if (tag && splicer.is(ascii("workbookProtection"))) {
        refuseLocked(splicer, newName != null);
      } else if (tag && splicer.is(ascii("sheet")) && splicer.attribute(ascii("sheetId"))) {
        highest = Math.max(highest, number(splicer.value()));
      } else if (newName != null && token == Token.END && splicer.is(ascii("sheets"))) {
        String sheet =
            "<%ssheet name=\"%s\" sheetId=\"%d\" xmlns:wb=\"%s\" wb:id=\"%s\"/>"
                .formatted(
                    splicer.prefix(),
                    ChartPage.escaped(newName),
                    highest + 1,
                    strict ? XlsxChartMarkup.STRICT_RELATIONS : XlsxChartMarkup.RELATIONS,
                    names.relation());
        byte[] markup = sheet.getBytes(StandardCharsets.UTF_8);
        splicer.insert(splicer.tokenStart(), markup, markup.length);
      }
    }
    splicer.finish();
    return strict;
  }

  private static void refuseLocked(XmlSplicer splicer, boolean isNew) throws IOException {
    boolean locked =
        splicer.attribute(ascii("lockStructure"))
            && (splicer.value().equals("1") || splicer.value().equals("true"));
    if (isNew && locked) {
      throw UnusableFileException.of("write.protected");
    }
  }

  private static int number(String text) {
    try {
      return Integer.parseInt(text.strip());
    } catch (NumberFormatException e) {
      return 0;
    }
  }

  private static void relate(
      InputStream old, PartOutput to, Part part, String oldRelation, Names names, boolean strict)
      throws IOException {
    XmlSplicer splicer = new XmlSplicer(old, part.name(), to);
    for (Token token = splicer.next(); token != Token.DONE; token = splicer.next()) {
      boolean tag = token == Token.START || token == Token.EMPTY;
      if (tag && splicer.attribute(ascii("Id")) && splicer.value().equals(oldRelation)) {
        if (splicer.attribute(ascii("Target"))) {
          splicer.replace(splicer.valueStart(), splicer.valueEnd(), ascii("/" + names.sheet()));
        }
      } else if (token == Token.END && splicer.depth() == 0 && oldRelation == null) {
        String kind = strict ? XlsxChartMarkup.STRICT_RELATIONS : XlsxChartMarkup.RELATIONS;
        String relation =
            "<%sRelationship Id=\"%s\" Type=\"%s/worksheet\" Target=\"/%s\"/>"
                .formatted(splicer.prefix(), names.relation(), kind, names.sheet());
        splicer.insert(splicer.tokenStart(), ascii(relation), relation.length());
      }
    }
    splicer.finish();
  }

  /** Gives every new part its type; relationships too where the package has no type for all. */
  private static void declare(
      InputStream old, PartOutput to, Part part, Set<String> gone, ChartPage page, Names names)
      throws IOException {
    XmlSplicer splicer = new XmlSplicer(old, part.name(), to);
    boolean relationsTyped = false;
    for (Token token = splicer.next(); token != Token.DONE; token = splicer.next()) {
      boolean tag = token == Token.START || token == Token.EMPTY;
      if (tag && splicer.attribute(ascii("Extension"))) {
        relationsTyped |= splicer.value().equalsIgnoreCase("rels");
      }
      if (tag
          && splicer.attribute(ascii("PartName"))
          && gone.contains(splicer.value().toLowerCase(Locale.ROOT))) {
        splicer.remove(token);
      } else if (token == Token.END && splicer.depth() == 0) {
        String types = types(splicer.prefix(), page, names, !relationsTyped);
        splicer.insert(splicer.tokenStart(), ascii(types), types.length());
      }
    }
    splicer.finish();
  }

  private static String types(
      String prefix, ChartPage page, Names names, boolean relationsWithType) {
    StringBuilder types = new StringBuilder();
    String sheets = "application/vnd.openxmlformats-officedocument.";
    type(types, prefix, names.sheet(), sheets + "spreadsheetml.worksheet+xml");
    type(types, prefix, names.drawing(), sheets + "drawing+xml");
    for (ChartPage.Chart chart : page.charts()) {
      type(types, prefix, names.chart(chart), sheets + "drawingml.chart+xml");
    }
    if (relationsWithType) {
      String kind = "application/vnd.openxmlformats-package.relationships+xml";
      type(types, prefix, relationsOf(names.sheet()), kind);
      type(types, prefix, relationsOf(names.drawing()), kind);
    }
    return types.toString();
  }

  private static void type(StringBuilder types, String prefix, String part, String type) {
    types.append('<').append(prefix).append("Override PartName=\"/").append(part);
    types.append("\" ContentType=\"").append(type).append("\"/>");
  }

  private static Map<String, byte[]> parts(ChartPage page, Names names, boolean strict) {
    Map<String, String> parts = new LinkedHashMap<>();
    parts.put(names.sheet(), XlsxChartMarkup.sheet(page));
    parts.put(
        relationsOf(names.sheet()),
        XlsxChartMarkup.relations("drawing", List.of("/" + names.drawing()), strict));
    parts.put(names.drawing(), XlsxChartMarkup.drawing(page));
    List<String> charts = page.charts().stream().map(chart -> "/" + names.chart(chart)).toList();
    parts.put(relationsOf(names.drawing()), XlsxChartMarkup.relations("chart", charts, strict));
    for (ChartPage.Chart chart : page.charts()) {
      parts.put(names.chart(chart), XlsxChartMarkup.chart(chart));
    }
    Map<String, byte[]> bytes = new LinkedHashMap<>();
    parts.forEach(
        (name, text) ->
            bytes.put(name, XlsxChartMarkup.kind(text, strict).getBytes(StandardCharsets.UTF_8)));
    return bytes;
  }

  private static String relationsOf(String part) {
    int slash = part.lastIndexOf('/');
    return part.substring(0, slash + 1) + "_rels" + part.substring(slash) + ".rels";
  }
}
