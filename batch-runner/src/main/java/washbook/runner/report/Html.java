package washbook.runner.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import washbook.functions.SafetyNote;
import washbook.functions.XmlText;

/** Pieces of our self-contained pages: style and script stand inside, nothing is fetched. */
public final class Html {
  /** How each of our pages begins. */
  static final String BEGIN = "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset";

  private Html() {}

  public static String text(String text) {
    return XmlText.escaped(ShownText.lines(text)).replace("'", "&#39;");
  }

  public static String head(String title) {
    return """
    <!DOCTYPE html>
    <html lang="en">
    <head>
    <meta charset="utf-8">
    <meta name="viewport" content="width=device-width">
    <meta http-equiv="Content-Security-Policy" content="default-src 'none'; \
    style-src 'unsafe-inline'; script-src 'unsafe-inline'; img-src data:">
    <link rel="icon" href="data:,">
    <title>%s</title>
    <style>
    %s</style>
    </head>
    <body>
    <h1>%s</h1>
    """
        .formatted(text(title), resource("page.css"), text(title));
  }

  /** A table's head; clicking a cell of it sorts by that column. */
  public static String tableHead(List<String> columns) {
    StringBuilder head = new StringBuilder("<table class=\"sortable\">\n<thead><tr>");
    for (String column : columns) {
      // On paper a browser leaves buttons out of heads that it repeats, so the words stand twice.
      head.append("<th scope=\"col\" data-head=\"")
          .append(text(column))
          .append("\"><button type=\"button\">")
          .append(text(column))
          .append("</button></th>");
    }
    return head.append("</tr></thead>\n<tbody>\n").toString();
  }

  public static String cell(String text) {
    return "<td>" + text(text) + "</td>";
  }

  public static String number(String text) {
    return "<td class=\"number\">" + text(text) + "</td>";
  }

  public static String foot() {
    StringBuilder foot = new StringBuilder("<section class=\"safety\">\n<h2>");
    foot.append(text(SafetyNote.TITLE)).append("</h2>\n<ul>\n");
    for (String line : SafetyNote.LINES) {
      foot.append("<li>").append(text(line)).append("</li>\n");
    }
    return foot.append("</ul>\n</section>\n<script>\n")
        .append(resource("page.js"))
        .append("</script>\n</body>\n</html>\n")
        .toString();
  }

  static void copy(Reader from, Writer to) throws IOException {
    try (from) {
      from.transferTo(to);
    }
  }

  private static String resource(String name) {
    try (InputStream in = Html.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException broken) {
      throw new UncheckedIOException(broken);
    }
  }
}
