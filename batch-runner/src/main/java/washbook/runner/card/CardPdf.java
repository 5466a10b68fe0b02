package washbook.runner.card;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import washbook.functions.XmlText;
import washbook.runner.file.UnusableFileException;

/** The pages of a card as PDF, made by the office from a document that holds them. */
final class CardPdf {
  private static final long LONGEST_SECONDS = 180;
  private static final String OASIS = " xmlns:%s=\"urn:oasis:names:tc:opendocument:xmlns:%s:1.0\"";

  private static final String SIZE = " svg:width=\"%smm\" svg:height=\"%smm\"";

  /** By how much a picture is smaller than its paper, so that no line of it needs a second page. */
  private static final double SMALLER = 0.4;

  private CardPdf() {}

  /** Whether an office is among the programs of this path, written as the variable PATH is. */
  private static boolean hasOffice(String path) {
    return path != null
        && Stream.of(path.split(File.pathSeparator, -1))
            .anyMatch(folder -> Files.isExecutable(Path.of(folder, "soffice")));
  }

  /**
   * The file's bytes.
   *
   * @param path where programs are looked for
   */
  static byte[] of(Card card, Paper paper, List<String> pages, String path) throws IOException {
    if (!hasOffice(path)) {
      throw UnusableFileException.of("card.office");
    }
    Path work = Files.createTempDirectory("washbook-card");
    try {
      Path sheets = work.resolve("card.fods");
      Files.writeString(sheets, sheets(card, paper, pages), StandardCharsets.UTF_8);
      convert(work, sheets);
      Path made = work.resolve("card.pdf");
      if (!Files.exists(made)) {
        throw UnusableFileException.of("card.said", Files.readString(work.resolve("said.txt")));
      }
      return Files.readAllBytes(made);
    } finally {
      delete(work);
    }
  }

  private static void convert(Path work, Path sheets) throws IOException {
    ProcessBuilder office =
        new ProcessBuilder(
            "soffice",
            "-env:UserInstallation=" + work.resolve("profile").toUri(),
            "--headless",
            "--norestore",
            "--convert-to",
            "pdf:calc_pdf_Export",
            "--outdir",
            work.toString(),
            sheets.toString());
    office.redirectErrorStream(true).redirectOutput(work.resolve("said.txt").toFile());
    Process process = office.start();
    try {
      if (!process.waitFor(LONGEST_SECONDS, TimeUnit.SECONDS)) {
        throw UnusableFileException.of("card.slow", LONGEST_SECONDS);
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw UnusableFileException.from(stopped, "run.interrupted");
    } finally {
      process.descendants().forEach(ProcessHandle::destroyForcibly);
      process.destroyForcibly();
    }
  }

  /**
   * A flat OpenDocument spreadsheet with each page as one picture on a sheet of its own: Calc is
   * the part of the office that those have who keep logs.
   */
  private static String sheets(Card card, Paper paper, List<String> pages) {
    StringBuilder text = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    text.append("<office:document");
    for (String[] name :
        new String[][] {
          {"office", "office"},
          {"style", "style"},
          {"table", "table"},
          {"draw", "drawing"},
          {"svg", "svg-compatible"},
          {"fo", "xsl-fo-compatible"}
        }) {
      text.append(OASIS.formatted(name[0], name[1]));
    }
    text.append(" xmlns:dc=\"http://purl.org/dc/elements/1.1/\" office:version=\"1.3\"")
        .append(" office:mimetype=\"application/vnd.oasis.opendocument.spreadsheet\">")
        .append("<office:meta><dc:title>")
        .append(XmlText.escaped(card.title()))
        .append("</dc:title></office:meta><office:automatic-styles>")
        .append("<style:page-layout style:name=\"paper\"><style:page-layout-properties")
        .append(" fo:margin=\"0mm\" style:print-orientation=\"portrait\"")
        .append(" style:scale-to-X=\"1\" style:scale-to-Y=\"1\"")
        .append(size("fo", paper, 0))
        .append("/><style:header-style/><style:footer-style/></style:page-layout>")
        .append("<style:style style:name=\"sheet\" style:family=\"table\"")
        .append(" style:master-page-name=\"page\"/><style:style style:name=\"across\"")
        .append(" style:family=\"table-column\"><style:table-column-properties")
        .append(" style:column-width=\"")
        .append(paper.width() - SMALLER)
        .append("mm\"/></style:style><style:style style:name=\"down\"")
        .append(" style:family=\"table-row\"><style:table-row-properties style:row-height=\"")
        .append(paper.height() - SMALLER)
        .append("mm\" style:use-optimal-row-height=\"false\"/></style:style>")
        .append("</office:automatic-styles>")
        .append("<office:master-styles><style:master-page style:name=\"page\"")
        .append(" style:page-layout-name=\"paper\"><style:header style:display=\"false\"/>")
        .append("<style:footer style:display=\"false\"/></style:master-page>")
        .append("</office:master-styles><office:body><office:spreadsheet>");
    for (int i = 0; i < pages.size(); i++) {
      byte[] page = pages.get(i).getBytes(StandardCharsets.UTF_8);
      text.append("<table:table table:name=\"")
          .append(i + 1)
          .append("\" table:print-ranges=\"'")
          .append(i + 1)
          .append("'.A1\" table:style-name=\"sheet\"><table:shapes><draw:frame svg:x=\"0mm\"")
          .append(" svg:y=\"0mm\"")
          .append(size("svg", paper, 2 * SMALLER))
          .append("><draw:image><office:binary-data>")
          .append(Base64.getEncoder().encodeToString(page))
          .append("</office:binary-data></draw:image></draw:frame></table:shapes>")
          .append("<table:table-column table:style-name=\"across\"/>")
          .append("<table:table-row table:style-name=\"down\"><table:table-cell/>")
          .append("</table:table-row>")
          .append("</table:table>");
    }
    return text.append("</office:spreadsheet></office:body></office:document>").toString();
  }

  private static String size(String prefix, Paper paper, double less) {
    String words = prefix.equals("fo") ? " fo:page-width=\"%smm\" fo:page-height=\"%smm\"" : SIZE;
    return words.formatted(paper.width() - less, paper.height() - less);
  }

  private static void delete(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
