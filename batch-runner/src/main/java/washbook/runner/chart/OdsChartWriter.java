package washbook.runner.chart;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.fill.BatchCurve;
import washbook.runner.archive.Archive;
import washbook.runner.archive.ArchiveCopy;
import washbook.runner.archive.Part;
import washbook.runner.archive.PartOutput;
import washbook.runner.file.UnusableFileException;
import washbook.runner.markup.XmlScanner.Token;
import washbook.runner.markup.XmlSplicer;
import washbook.runner.read.OdsCell;
import washbook.runner.read.OdsPackage;
import washbook.runner.read.OdsReader;

/**
 * Adds the sheet with charts to an OpenDocument spreadsheet: one table in content.xml, an object
 * for each chart, and their lines in the manifest (OASIS OpenDocument 1.3, part 2, 3.2 and part 3,
 * 9.1 and 11.1).
 */
public final class OdsChartWriter implements ChartWriter {
  private static final byte[] AUTOMATIC = ascii("automatic-styles");
  private static final String MANIFEST = "META-INF/manifest.xml";
  private static final String MANIFEST_NAMES = "urn:oasis:names:tc:opendocument:xmlns:manifest:1.0";
  private static final Pattern OBJECT = Pattern.compile("xlink:href=\"(?:\\./)?([^\"/]+)\"");

  @Override
  public void write(Path source, List<BatchCurve> curves, Optional<String> older, Path target)
      throws IOException {
    ChartPage page = new ChartPage(curves, older);
    try (OdsPackage workbook = OdsPackage.open(source);
        ArchiveCopy copy = new ArchiveCopy(source, workbook.archive())) {
      Archive archive = workbook.archive();
      Set<String> objects = new HashSet<>();
      String[] series = new String[1];
      Part content = workbook.content();
      copy.change(
          content,
          (old, to) ->
              putTable(
                  new XmlSplicer(old, content.name(), to),
                  () -> {
                    series[0] = freeSeries(archive, page, objects);
                    return OdsChartMarkup.table(page, series[0]);
                  },
                  older,
                  objects));
      for (Part part : archive.parts()) {
        if (isOf(objects, part.name())) {
          copy.leaveOut(part);
        }
      }
      declareAll(archive, copy, page, objects, series[0]);
      for (ChartPage.Chart chart : page.charts()) {
        copy.add(
            OdsChartMarkup.object(chart, series[0]) + "/content.xml",
            OdsChartMarkup.chart(chart).getBytes(StandardCharsets.UTF_8));
      }
      copy.write(target);
    }
  }

  /** Puts the new objects beside those of a charts sheet that its user has given another name. */
  private static String freeSeries(Archive archive, ChartPage page, Set<String> objects) {
    Set<String> taken = new HashSet<>();
    for (Part part : archive.parts()) {
      if (!isOf(objects, part.name())) {
        taken.add(part.name().split("/", 2)[0]);
      }
    }
    int series = 1;
    while (true) {
      String mark = series == 1 ? "" : series + "-";
      if (page.charts().stream().noneMatch(c -> taken.contains(OdsChartMarkup.object(c, mark)))) {
        return mark;
      }
      series++;
    }
  }

  /** Whether a part is one of these objects, or a picture that stands for one. */
  private static boolean isOf(Set<String> objects, String name) {
    String[] steps = name.split("/", -1);
    return objects.contains(steps[0])
        || steps.length > 1 && steps[0].equals("ObjectReplacements") && objects.contains(steps[1]);
  }

  /** Puts the table behind the others or in the place of the older one. */
  private static void putTable(
      XmlSplicer splicer, Supplier<String> table, Optional<String> older, Set<String> objects)
      throws IOException {
    boolean inSheets = false;
    boolean seen = false;
    boolean put = older.isPresent();
    for (Token token = splicer.next(); token != Token.DONE; token = splicer.next()) {
      boolean start = token == Token.START;
      boolean tag = start || token == Token.EMPTY;
      int level = splicer.depth() - (start ? 1 : 0);
      if (!inSheets) {
        inSheets = start && level == 2 && splicer.is(OdsReader.SPREADSHEET);
        if (inSheets) {
          refuseLocked(splicer);
        } else if (tag && level == 1 && splicer.is(AUTOMATIC)) {
          putStyles(splicer, token);
        }
      } else if (OdsReader.isTable(splicer, token)) {
        seen = true;
        String name = OdsReader.name(splicer);
        if (older.filter(name::equalsIgnoreCase).isPresent()) {
          replaceTable(splicer, token, table, objects);
          put = true;
        } else {
          OdsCell.skip(splicer, token);
        }
      } else if (token == Token.END && level == 2 || tag && level == 3) {
        if (seen && !put) {
          byte[] markup = table.get().getBytes(StandardCharsets.UTF_8);
          splicer.insert(splicer.tokenStart(), markup, markup.length);
          put = true;
        }
        inSheets = token != Token.END;
        if (inSheets) {
          OdsCell.skip(splicer, token);
        }
      }
    }
    splicer.finish();
  }

  /** Adds the styles of rows that begin a page and of charts, unless they are there. */
  private static void putStyles(XmlSplicer splicer, Token first) throws IOException {
    Map<String, String> missing = new LinkedHashMap<>();
    missing.put(OdsChartMarkup.PAGE_STYLE, OdsChartMarkup.PAGE_STYLE_MARKUP);
    missing.put(OdsChartMarkup.FRAME_STYLE, OdsChartMarkup.FRAME_STYLE_MARKUP);
    if (first == Token.EMPTY) {
      String whole = ">" + String.join("", missing.values()) + "</office:automatic-styles>";
      splicer.replace(splicer.tokenEnd() - 2, splicer.tokenEnd(), ascii(whole));
      return;
    }
    int outside = splicer.depth() - 1;
    while (splicer.depth() > outside) {
      Token token = splicer.next();
      boolean tag = token == Token.START || token == Token.EMPTY;
      if (tag && splicer.attribute(ascii("style:name"))) {
        missing.remove(splicer.value());
      }
      if (token == Token.DONE) {
        throw splicer.damaged("how.stylesOpen");
      }
    }
    byte[] styles = ascii(String.join("", missing.values()));
    splicer.insert(splicer.tokenStart(), styles, styles.length);
  }

  private static void replaceTable(
      XmlSplicer splicer, Token token, Supplier<String> table, Set<String> objects)
      throws IOException {
    splicer.holdFrom(splicer.tokenStart());
    OdsCell.skip(splicer, token);
    int end = splicer.tokenEnd();
    String old =
        new String(splicer.bytes(), splicer.held(), end - splicer.held(), StandardCharsets.UTF_8);
    Matcher object = OBJECT.matcher(old);
    while (object.find()) {
      objects.add(object.group(1).replaceFirst("^ObjectReplacements$", ""));
    }
    objects.remove("");
    splicer.replace(splicer.held(), end, table.get().getBytes(StandardCharsets.UTF_8));
    splicer.release();
  }

  private static void refuseLocked(XmlSplicer splicer) throws IOException {
    if (splicer.attribute(ascii("table:structure-protected")) && splicer.value().equals("true")) {
      throw UnusableFileException.of("write.protected");
    }
  }

  private static void declareAll(
      Archive archive, ArchiveCopy copy, ChartPage page, Set<String> objects, String series)
      throws IOException {
    Part manifest = archive.find(MANIFEST).orElse(null);
    if (manifest == null) {
      copy.add(
          MANIFEST, newManifest(archive, page, objects, series).getBytes(StandardCharsets.UTF_8));
    } else {
      copy.change(manifest, (old, to) -> declare(old, to, page, objects, series));
    }
  }

  /** For a package that has no list of its parts, which programs need to find the charts. */
  private static String newManifest(
      Archive archive, ChartPage page, Set<String> objects, String series) {
    StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    text.append("<manifest:manifest xmlns:manifest=\"").append(MANIFEST_NAMES).append("\">");
    entry(text, "manifest:", "manifest:", "/", "application/vnd.oasis.opendocument.spreadsheet");
    for (Part part : archive.parts()) {
      boolean listed = !part.name().equals("mimetype") && !part.name().endsWith("/");
      if (listed && !isOf(objects, part.name())) {
        String kind = part.name().endsWith(".xml") ? "text/xml" : "";
        entry(text, "manifest:", "manifest:", ChartPage.escaped(part.name()), kind);
      }
    }
    return text.append(entries(page, series, "manifest:", "manifest:"))
        .append("</manifest:manifest>")
        .toString();
  }

  private static void declare(
      InputStream old, PartOutput to, ChartPage page, Set<String> objects, String series)
      throws IOException {
    XmlSplicer splicer = new XmlSplicer(old, MANIFEST, to);
    String attributePrefix = null;
    for (Token token = splicer.next(); token != Token.DONE; token = splicer.next()) {
      boolean tag = token == Token.EMPTY || token == Token.START;
      if (tag && findPath(splicer)) {
        attributePrefix = attributePrefix(splicer);
        if (isOf(objects, splicer.value())) {
          splicer.remove(token);
        }
      } else if (token == Token.END && splicer.depth() == 0) {
        String prefix = splicer.prefix();
        String entries =
            entries(page, series, prefix, attributePrefix == null ? prefix : attributePrefix);
        splicer.insert(splicer.tokenStart(), ascii(entries), entries.length());
      }
    }
    splicer.finish();
  }

  private static boolean findPath(XmlSplicer splicer) throws IOException {
    splicer.rewindAttributes();
    while (splicer.nextAttribute()) {
      if (splicer.attributeHasLocalName("full-path")) {
        return true;
      }
    }
    return false;
  }

  /** The prefix, with its colon, of the attribute found last: it may differ from the element's. */
  private static String attributePrefix(XmlSplicer splicer) {
    int start = splicer.attributeStart();
    int length = splicer.valueStart() - start;
    String attribute = new String(splicer.bytes(), start, length, StandardCharsets.UTF_8);
    return attribute.substring(0, attribute.indexOf("full-path"));
  }

  private static String entries(
      ChartPage page, String series, String prefix, String attributePrefix) {
    StringBuilder entries = new StringBuilder();
    for (ChartPage.Chart chart : page.charts()) {
      String object = OdsChartMarkup.object(chart, series) + "/";
      entry(entries, prefix, attributePrefix, object, OdsChartMarkup.KIND);
      entry(entries, prefix, attributePrefix, object + "content.xml", "text/xml");
    }
    return entries.toString();
  }

  private static void entry(
      StringBuilder entries, String prefix, String attributePrefix, String path, String kind) {
    entries.append('<').append(prefix).append("file-entry ").append(attributePrefix);
    entries.append("full-path=\"").append(path).append("\" ").append(attributePrefix);
    entries.append("media-type=\"").append(kind).append("\"/>");
  }
}
