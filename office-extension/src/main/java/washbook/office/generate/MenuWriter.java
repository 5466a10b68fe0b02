package washbook.office.generate;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import washbook.log.language.Language;
import washbook.office.language.MenuText;
import washbook.office.language.OfficeText;

/**
 * Writes the menu and the toolbar; each entry's name is also the command that it starts, and that
 * of its picture.
 */
final class MenuWriter {
  static final List<String> ENTRIES =
      List.of("fill", "audit", "charts", "explain", "portable", "recalculate", "help");

  private static final String CALC = "com.sun.star.sheet.SpreadsheetDocument";

  private MenuWriter() {}

  static String menu() {
    return Configuration.of(
        "Addons",
        "<node oor:name=\"AddonUI\"><node oor:name=\"OfficeMenuBar\">\n"
            + Configuration.node(
                "washbook.office",
                title(language -> OfficeText.of("menu.title").in(language))
                    + Configuration.value("Context", CALC)
                    + "<node oor:name=\"Submenu\">\n"
                    + ENTRIES.stream().map(MenuWriter::entry).collect(Collectors.joining())
                    + "</node>\n")
            + "</node><node oor:name=\"OfficeToolBar\">\n"
            + Configuration.node(
                "washbook.office",
                ENTRIES.stream().map(MenuWriter::button).collect(Collectors.joining()))
            + "</node><node oor:name=\"Images\">\n"
            + ENTRIES.stream().map(MenuWriter::picture).collect(Collectors.joining())
            + "</node></node>\n");
  }

  private static String entry(String command) {
    return item(command, title(language -> OfficeText.of("menu." + command).in(language)));
  }

  private static String button(String command) {
    return item(
        command,
        title(language -> MenuText.of("menu." + command, language))
            + Configuration.value("Context", CALC));
  }

  private static String item(String command, String more) {
    return Configuration.node(
        name(command),
        Configuration.value("URL", BasicWriter.urlOf(command))
            + Configuration.value("Target", "_self")
            + more);
  }

  /** The office looks for a picture by what the entry starts. */
  private static String picture(String command) {
    String file = "%origin%/icons/" + command;
    return Configuration.node(
        name(command),
        Configuration.value("URL", BasicWriter.urlOf(command))
            + "<node oor:name=\"UserDefinedImages\">\n"
            + Configuration.value("ImageSmallURL", file + "_16.png")
            + Configuration.value("ImageBigURL", file + "_26.png")
            + "</node>\n");
  }

  private static String name(String command) {
    return "m" + (1 + ENTRIES.indexOf(command));
  }

  private static String title(Function<Language, String> text) {
    return Configuration.text("Title", List.of(Language.values()), text);
  }
}
