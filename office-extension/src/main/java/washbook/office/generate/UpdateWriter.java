package washbook.office.generate;

import washbook.functions.XmlText;
import washbook.log.language.Language;
import washbook.office.language.OfficeText;

/** Writes what whoever hosts the extension puts beside it, so that offices find a newer one. */
final class UpdateWriter {
  private UpdateWriter() {}

  /** Takes the address of the folder that updates are found in, "" where it is not known yet. */
  static String information(String version, String updates) {
    return """
        <?xml version="1.0" encoding="UTF-8"?>
        <!-- Every href has to be a whole address, with https for LibreOffice 26.8: pack with -Dwashbook.updates=ADDRESS OF THE FOLDER. -->
        <description xmlns="http://openoffice.org/extensions/update/2006" \
        xmlns:d="http://openoffice.org/extensions/description/2006" \
        xmlns:l="http://libreoffice.org/extensions/description/2011" \
        xmlns:xlink="http://www.w3.org/1999/xlink">
          <identifier value="%s"/>
          <version value="%s"/>
          <d:dependencies>
            <l:LibreOffice-minimal-version value="%s" d:name="LibreOffice %s"/>
          </d:dependencies>
          <update-download><src xlink:href="%s"/></update-download>
          <release-notes>%s</release-notes>
        </description>
        """
        .formatted(
            DescriptionWriter.IDENTIFIER,
            version,
            DescriptionWriter.LEAST_OFFICE,
            DescriptionWriter.LEAST_OFFICE,
            address(updates, "washbook-" + version + ".oxt"),
            DescriptionWriter.each(
                code ->
                    "<src xlink:href=\""
                        + address(updates, notesFile(code))
                        + "\" lang=\""
                        + code
                        + "\"/>"));
  }

  private static String address(String updates, String file) {
    return XmlText.escaped(DescriptionWriter.in(updates, file));
  }

  /** The file with the notes on a version in that language. */
  static String notesFile(String code) {
    return "release-notes-" + code + ".txt";
  }

  static String notes(String version, Language language) {
    return OfficeText.of("description.news", version).in(language) + "\n";
  }
}
