package washbook.office.generate;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import washbook.functions.SafetyNote;
import washbook.functions.XmlText;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.ReferencePage;
import washbook.log.language.Language;
import washbook.office.language.MenuText;
import washbook.office.language.OfficeText;

/**
 * Writes the help page in one language: what each command of the menu does, what cells show, and of
 * each function its arguments and what it gives; the function wizard says what each argument takes.
 */
final class HelpWriter {
  private static final String PAGE =
      """
      <!DOCTYPE html>
      <html lang="%s"><head><meta charset="UTF-8"/>
      <meta name="viewport" content="width=device-width"/>
      <title>%s</title>
      <style>
      :root{color-scheme:light dark}
      body{font:16px/1.5 sans-serif;max-width:48em;margin:1.5em auto;padding:0 1em}
      dt{font-weight:bold;margin-top:1em}
      dd{margin-left:1.5em}
      code{overflow-wrap:anywhere}
      </style></head><body>
      <h1>%s</h1>
      %s</body></html>
      """;

  private final Language language;
  private final WizardText wizard;

  HelpWriter(Language language) {
    this.language = language;
    this.wizard = new WizardText(language);
  }

  String page(String version) {
    String title = XmlText.escaped(say("help.title"));
    return PAGE.formatted(
        language.code(),
        title,
        title + " " + version,
        paragraph(SafetyNote.text(language.code()))
            + section("help.menu", MenuWriter.ENTRIES.stream().map(this::command))
            + section("help.cells", cells())
            + paragraph(say("help.reason"))
            + section("help.functions", functions().map(this::function))
            + paragraph(say("java.missing"))
            + paragraph(say("description.needs")));
  }

  private static Stream<CatalogueFunction> functions() {
    return Stream.concat(Catalogue.all().stream(), Stream.of(ColumnEntry.FUNCTION));
  }

  private String command(String command) {
    return entry(
        XmlText.escaped(MenuText.of("menu." + command, language)), say("help.menu." + command));
  }

  private String function(CatalogueFunction function) {
    return entry(code(ReferencePage.syntax(function)), wizard.of(function));
  }

  private Stream<String> cells() {
    return Stream.of(
        entry(code("#NUM!"), say("help.cells.range")),
        entry(code("#VALUE!"), say("help.cells.text")),
        entry(code("#N/A"), say("help.cells.blankOrZero")),
        entry(code("Err:504"), say("help.cells.java")),
        entry("…", say("help.cells.blank")));
  }

  private String section(String key, Stream<String> entries) {
    return "<h2>" + XmlText.escaped(say(key)) + "</h2>\n<dl>\n" + joined(entries) + "</dl>\n";
  }

  private static String entry(String term, String meaning) {
    return "<dt>" + term + "</dt><dd>" + XmlText.escaped(meaning) + "</dd>\n";
  }

  private static String code(String text) {
    return "<code>" + XmlText.escaped(text) + "</code>";
  }

  private static String paragraph(String text) {
    return "<p>" + XmlText.escaped(text) + "</p>\n";
  }

  private static String joined(Stream<String> parts) {
    return parts.collect(Collectors.joining());
  }

  private String say(String key) {
    return OfficeText.of(key).in(language);
  }
}
