package washbook.office.help;

import washbook.log.language.Language;

/** Where the page of a language stands in the extension; made there when it is packed. */
public final class HelpFile {
  private HelpFile() {}

  public static String of(Language language) {
    return "help/" + language.code() + ".html";
  }
}
