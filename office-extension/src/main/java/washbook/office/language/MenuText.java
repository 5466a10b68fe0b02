package washbook.office.language;

import washbook.log.language.Language;

/** The name of a menu entry where no menu is: without the mark of its key and the dots. */
public final class MenuText {
  private MenuText() {}

  public static String of(String key, Language language) {
    return OfficeText.of(key).in(language).replace("~", "").replaceFirst("\\.\\.\\.$", "");
  }
}
