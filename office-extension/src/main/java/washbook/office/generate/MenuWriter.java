package washbook.office.generate;

import java.util.List;
import java.util.stream.Collectors;
import washbook.log.language.Language;
import washbook.office.language.OfficeText;

/** Writes the menu; each entry's name is also the command that it starts. */
final class MenuWriter {
  static final List<String> ENTRIES = List.of("fill", "explain", "portable", "recalculate");

  private MenuWriter() {}

  static String menu() {
    return Configuration.of(
        "Addons",
        "<node oor:name=\"AddonUI\"><node oor:name=\"OfficeMenuBar\">\n"
            + Configuration.node(
                "washbook.office",
                title("menu.title")
                    + Configuration.value("Context", "com.sun.star.sheet.SpreadsheetDocument")
                    + "<node oor:name=\"Submenu\">\n"
                    + ENTRIES.stream().map(MenuWriter::entry).collect(Collectors.joining())
                    + "</node>\n")
            + "</node></node>\n");
  }

  private static String entry(String command) {
    return Configuration.node(
        "m" + (1 + ENTRIES.indexOf(command)),
        Configuration.value("URL", BasicWriter.urlOf(command))
            + title("menu." + command)
            + Configuration.value("Target", "_self"));
  }

  private static String title(String key) {
    return Configuration.text(
        "Title", List.of(Language.values()), language -> OfficeText.of(key).in(language));
  }
}
