package washbook.runner.card;

import java.util.List;
import washbook.functions.XmlText;

/** The pages of a card as one file for a browser, which prints each on a sheet of its own. */
final class CardHtml {
  static final String BEGIN = "<!DOCTYPE html>\n<html lang=\"";

  private CardHtml() {}

  static String of(Card card, Paper paper, List<String> pages) {
    String title = XmlText.escaped(card.title());
    StringBuilder html = new StringBuilder(BEGIN);
    html.append(card.words().language().code())
        .append(
            "\">\n<head>\n<meta charset=\"utf-8\">\n<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none';")
        .append(" style-src 'unsafe-inline'; img-src data:\">\n")
        .append("<link rel=\"icon\" href=\"data:,\">\n<title>")
        .append(title)
        .append("</title>\n<style>\n@page { size: ")
        .append(paper == Paper.A4 ? "A4" : "letter")
        .append(" portrait; margin: 0; }\nbody { margin: 0; background: #fff; }\n")
        .append("section { break-after: page; }\nsection:last-child { break-after: auto; }\n")
        .append("svg { display: block; margin: 0 auto; }\n")
        .append("@media screen { svg { border-bottom: 1px solid #767676; max-width: 100%; }")
        .append(" }\n</style>\n</head>\n<body>\n");
    for (String page : pages) {
      html.append("<section>\n").append(page).append("</section>\n");
    }
    return html.append("</body>\n</html>\n").toString();
  }
}
