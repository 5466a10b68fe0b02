package washbook.office.generate;

import java.util.Arrays;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import washbook.functions.SafetyNote;
import washbook.functions.XmlText;
import washbook.functions.catalogue.Catalogue;
import washbook.log.language.Language;
import washbook.office.language.OfficeText;

/**
 * Writes what the extension manager shows. The licence stands in the text and beside it: were it
 * stated as one to be accepted, {@code unopkg} would wait for a "yes". An office newer than those
 * that were tried is let in, since one named as the newest would keep others out.
 */
final class DescriptionWriter {
  static final String IDENTIFIER = "washbook.office";
  static final String UPDATE_FILE = "washbook.update.xml";

  /** The oldest office that has all that we use. */
  static final String LEAST_OFFICE = "7.0";

  /** The offices that the tests ran in, see OFFICES.md. */
  private static final String OLDEST_TRIED = "7.4";

  private static final String NEWEST_TRIED = "26.8";

  private DescriptionWriter() {}

  /** Takes the address of the folder that updates are found in, "" for none. */
  static String description(String version, String updates) {
    return """
        <?xml version="1.0" encoding="UTF-8"?>
        <!-- Licence: Apache-2.0, in the file LICENSE. Tried in LibreOffice %s to %s; newer ones are let in. -->
        <description xmlns="http://openoffice.org/extensions/description/2006" \
        xmlns:l="http://libreoffice.org/extensions/description/2011" \
        xmlns:xlink="http://www.w3.org/1999/xlink">
          <identifier value="%s"/>
          <version value="%s"/>
          <display-name>%s</display-name>
          <publisher>%s</publisher>
          <icon><default xlink:href="icons/washbook.png"/></icon>
          <extension-description>%s</extension-description>
          <dependencies>
            <l:LibreOffice-minimal-version value="%s" l:name="LibreOffice %s"/>
          </dependencies>%s
        </description>
        """
        .formatted(
            OLDEST_TRIED,
            NEWEST_TRIED,
            IDENTIFIER,
            version,
            each(code -> "<name lang=\"" + code + "\">Washbook</name>"),
            each(code -> "<name xlink:href=\"\" lang=\"" + code + "\">Washbook</name>"),
            each(code -> "<src xlink:href=\"" + file(code) + "\" lang=\"" + code + "\"/>"),
            LEAST_OFFICE,
            LEAST_OFFICE,
            updates.isEmpty()
                ? ""
                : "\n  <update-information><src xlink:href=\""
                    + XmlText.escaped(in(updates, UPDATE_FILE))
                    + "\"/></update-information>");
  }

  /** The file with the text in that language. */
  static String file(String code) {
    return code.equals("en") ? "description.txt" : "description-" + code + ".txt";
  }

  /** The address of a file in the folder with updates. */
  static String in(String updates, String file) {
    return updates.isEmpty() || updates.endsWith("/") ? updates + file : updates + "/" + file;
  }

  static String each(UnaryOperator<String> markup) {
    return Arrays.stream(Language.values())
        .map(language -> markup.apply(language.code()))
        .collect(Collectors.joining());
  }

  static String text(Language language) {
    return OfficeText.of("description.what", Catalogue.all().size()).in(language)
        + "\n\n"
        + SafetyNote.text(language.code())
        + "\n\n"
        + OfficeText.of("description.needs").in(language)
        + " "
        + OfficeText.of("description.tried", OLDEST_TRIED, NEWEST_TRIED).in(language)
        + "\n";
  }
}
