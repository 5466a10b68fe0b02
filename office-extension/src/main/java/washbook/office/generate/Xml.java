package washbook.office.generate;

/** Text inside XML. */
final class Xml {
  private Xml() {}

  static String escape(String text) {
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
  }
}
