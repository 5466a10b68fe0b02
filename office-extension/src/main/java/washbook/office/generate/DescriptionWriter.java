package washbook.office.generate;

import washbook.functions.SafetyNote;
import washbook.functions.catalogue.Catalogue;

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
          <display-name><name lang="en">Washbook</name></display-name>
          <icon><default xlink:href="icons/washbook.png"/></icon>
          <extension-description><src xlink:href="description.txt" lang="en"/></extension-description>
          <dependencies>
            <l:LibreOffice-minimal-version value="7.0" l:name="LibreOffice 7.0"/>
          </dependencies>
        </description>
        """
        .formatted(version);
  }

  static String text() {
    return """
        %d functions for people who ferment and distil in small batches and keep their log in Calc: \
        readings made right, alcohol to date, sugar and water for a wash, the still charge, dilution \
        and blends. Type =WASHBOOK. in a cell, or open the function wizard and choose the category \
        Add-in. The menu Washbook fills a log, says why a cell is refused, and turns formulas into \
        plain arithmetic for machines without this extension.

        %s

        Needs Java 17 or later (Tools, Options, LibreOffice, Advanced). Licence: Apache License 2.0, \
        in the file LICENSE of the extension.
        """
        .formatted(Catalogue.all().size(), SafetyNote.text());
  }
}
