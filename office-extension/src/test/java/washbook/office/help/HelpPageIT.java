package washbook.office.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import washbook.functions.SafetyNote;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.CatalogueTexts;
import washbook.log.language.Language;
import washbook.office.SharedOffice;
import washbook.office.language.MenuText;
import washbook.office.language.OfficeText;

/** The installed extension has a help page in every language, made from what it is about. */
class HelpPageIT {

  @ParameterizedTest
  @EnumSource(Language.class)
  void tellsEveryCommandAndEveryFunction(Language language) throws Exception {
    HelpPage page = HelpPage.of(SharedOffice.get().context(), language).orElseThrow();
    Document html;
    try (var in = Files.newInputStream(page.file())) {
      html = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(in);
    }
    assertEquals(language.code(), html.getDocumentElement().getAttribute("lang"));
    String text = html.getDocumentElement().getTextContent();
    assertTrue(text.contains(SafetyNote.text(language.code())));
    assertTrue(text.contains(OfficeText.of("java.missing").in(language)));
    List<String> terms = texts(html.getElementsByTagName("dt"));
    List<String> meanings = texts(html.getElementsByTagName("dd"));
    for (String command :
        List.of("fill", "audit", "charts", "explain", "portable", "recalculate", "help")) {
      int place = terms.indexOf(MenuText.of("menu." + command, language));
      assertEquals(OfficeText.of("help.menu." + command).in(language), meanings.get(place));
    }
    CatalogueTexts texts = new CatalogueTexts(language.code());
    for (CatalogueFunction function : Catalogue.all()) {
      String call =
          terms.stream()
              .filter(t -> t.startsWith("WASHBOOK." + function.name() + "("))
              .findFirst()
              .orElseThrow();
      assertTrue(meanings.get(terms.indexOf(call)).startsWith(texts.of(function.summary())), call);
    }
  }

  private static List<String> texts(NodeList nodes) {
    return IntStream.range(0, nodes.getLength())
        .mapToObj(i -> nodes.item(i).getTextContent())
        .toList();
  }
}
