package washbook.office.generate;

import java.util.Arrays;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import washbook.functions.SafetyNote;
import washbook.functions.catalogue.Catalogue;
import washbook.log.language.Language;
import washbook.office.language.OfficeText;

/** Writes what the extension manager shows. */
final class DescriptionWriter {
  private DescriptionWriter() {}

  static String description(String version) {
    return """
        <?xml version="1.0" encoding="UTF-8"?>
        <description xmlns="http://openoffice.org/extensions/description/2006" \
        xmlns:l="http://libreoffice.org/extensions/description/2011" \
        xmlns:xlink="http://www.w3.org/1999/xlink">
          <identifier value="washbook.office"/>
          <version value="%s"/>
          <display-name>%s</display-name>
          <icon><default xlink:href="icons/washbook.png"/></icon>
          <extension-description>%s</extension-description>
          <dependencies>
            <l:LibreOffice-minimal-version value="7.0" l:name="LibreOffice 7.0"/>
          </dependencies>
        </description>
        """
        .formatted(
            version,
            each(code -> "<name lang=\"" + code + "\">Washbook</name>"),
            each(code -> "<src xlink:href=\"" + file(code) + "\" lang=\"" + code + "\"/>"));
  }

  /** The file with the text in that language. */
  static String file(String code) {
    return code.equals("en") ? "description.txt" : "description-" + code + ".txt";
  }

  private static String each(UnaryOperator<String> markup) {
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
        + "\n";
  }
}
