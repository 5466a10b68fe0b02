package washbook.runner.chart;

import static washbook.runner.markup.XmlScanner.ascii;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.fill.BatchCurve;
import washbook.log.understand.ChartsSheet;
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
  private static final String MANIFEST = "META-INF/manifest.xml";
  private static final Pattern OBJECT = Pattern.compile("xlink:href=\"(?:\\./)?([^\"/]+)\"");

  @Override
  public void write(Path source, List<BatchCurve> curves, boolean isThere, Path target)
      throws IOException {
    ChartPage page = new ChartPage(curves);
    try (OdsPackage workbook = OdsPackage.open(source);
        ArchiveCopy copy = new ArchiveCopy(source, workbook.archive())) {
      Archive archive = workbook.archive();
      Set<String> objects = new HashSet<>();
      Part content = workbook.content();
      copy.change(
          content,
          (old, to) -> putTable(new XmlSplicer(old, content.name(), to), page, isThere, objects));
      for (Part part : archive.parts()) {
        if (isOf(objects, part.name())) {
          copy.leaveOut(part);
        }
      }
      Part manifest =
          archive
              .find(MANIFEST)
              .orElseThrow(() -> new UnusableFileException("The file has no manifest."));
      copy.change(manifest, (old, to) -> declare(old, to, page, objects));
      for (ChartPage.Chart chart : page.charts()) {
        String name = OdsChartMarkup.object(chart) + "/content.xml";
        Part taken = archive.find(name).orElse(null);
        if (taken != null && !isOf(objects, taken.name())) {
          throw new UnusableFileException(
              "The workbook has a part " + name + " that belongs to no charts sheet.");
        }
        copy.add(name, OdsChartMarkup.chart(chart).getBytes(StandardCharsets.UTF_8));
      }
      copy.write(target);
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
      XmlSplicer splicer, ChartPage page, boolean isThere, Set<String> objects) throws IOException {
    byte[] table = OdsChartMarkup.table(page).getBytes(StandardCharsets.UTF_8);
    boolean inSheets = false;
    boolean seen = false;
    boolean put = isThere;
    for (Token token = splicer.next(); token != Token.DONE; token = splicer.next()) {
      boolean start = token == Token.START;
      int level = splicer.depth() - (start ? 1 : 0);
      if (!inSheets) {
        inSheets = start && level == 2 && splicer.is(OdsReader.SPREADSHEET);
        if (inSheets) {
          refuseLocked(splicer);
        }
      } else if (OdsReader.isTable(splicer, token)) {
        seen = true;
        if (OdsReader.name(splicer).equalsIgnoreCase(ChartsSheet.NAME)) {
          replaceTable(splicer, token, table, objects);
          put = true;
        } else {
          OdsCell.skip(splicer, token);
        }
      } else if (token == Token.END && level == 2 || level == 3 && token != Token.END) {
        if (seen && !put) {
          splicer.insert(splicer.tokenStart(), table, table.length);
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

  private static void replaceTable(
      XmlSplicer splicer, Token token, byte[] table, Set<String> objects) throws IOException {
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
    splicer.replace(splicer.held(), end, table);
    splicer.release();
  }

  private static void refuseLocked(XmlSplicer splicer) throws IOException {
    if (splicer.attribute(ascii("table:structure-protected")) && splicer.value().equals("true")) {
      throw new UnusableFileException(
          "The workbook's structure is protected, so no sheet with charts can be added; lift the"
              + " protection or leave out --chart.");
    }
  }

  private static void declare(InputStream old, PartOutput to, ChartPage page, Set<String> objects)
      throws IOException {
    XmlSplicer splicer = new XmlSplicer(old, MANIFEST, to);
    for (Token token = splicer.next(); token != Token.DONE; token = splicer.next()) {
      boolean end = token == Token.END && splicer.depth() == 0;
      if (token == Token.EMPTY
          && splicer.attribute(ascii(splicer.prefix() + "full-path"))
          && isOf(objects, splicer.value())) {
        splicer.replace(splicer.tokenStart(), splicer.tokenEnd(), new byte[0]);
      } else if (end) {
        StringBuilder entries = new StringBuilder();
        for (ChartPage.Chart chart : page.charts()) {
          String object = OdsChartMarkup.object(chart) + "/";
          entry(entries, splicer.prefix(), object, OdsChartMarkup.KIND);
          entry(entries, splicer.prefix(), object + "content.xml", "text/xml");
        }
        splicer.insert(splicer.tokenStart(), ascii(entries.toString()), entries.length());
      }
    }
    splicer.finish();
  }

  private static void entry(StringBuilder entries, String prefix, String path, String kind) {
    entries.append('<').append(prefix).append("file-entry ").append(prefix);
    entries.append("full-path=\"").append(path).append("\" ").append(prefix);
    entries.append("media-type=\"").append(kind).append("\"/>");
  }
}
