package washbook.office;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XHierarchicalNameAccess;
import com.sun.star.container.XHierarchicalNameReplace;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XChangesBatch;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.log.language.Language;
import washbook.office.generate.WizardText;
import washbook.office.language.OfficeLanguage;
import washbook.office.language.OfficeText;
import washbook.office.testing.Book;

/** The extension speaks the language of the office. */
class OfficeLanguagesIT {
  private static final String READ = "com.sun.star.configuration.ConfigurationAccess";
  private static final String WRITE = "com.sun.star.configuration.ConfigurationUpdateAccess";

  /** What the office would show in that language, whether or not that language is installed. */
  private static XHierarchicalNameAccess shownIn(String locale, String node) throws Exception {
    return UnoRuntime.queryInterface(
        XHierarchicalNameAccess.class,
        configuration(READ, property("nodepath", node), property("locale", locale)));
  }

  private static Object configuration(String access, Object... arguments) throws Exception {
    return SharedOffice.get()
        .service("com.sun.star.configuration.ConfigurationProvider", XMultiServiceFactory.class)
        .createInstanceWithArguments(access, arguments);
  }

  private static PropertyValue property(String name, Object value) {
    PropertyValue property = new PropertyValue();
    property.Name = name;
    property.Value = value;
    return property;
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void theWizardSpeaksEachLanguage(Language language) throws Exception {
    XHierarchicalNameAccess shown =
        shownIn(
            language.code(), "/org.openoffice.Office.CalcAddIns/AddInInfo/WASHBOOK/AddInFunctions");
    WizardText texts = new WizardText(language);
    for (String name : List.of("CONVERT", "ABV", "FINALGRAVITY", "CHARGEHEAT", "REASON")) {
      CatalogueFunction function = Catalogue.get(name);
      String node = function.methodName();
      assertEquals(texts.of(function), shown.getByHierarchicalName(node + "/Description"));
      assertEquals("WASHBOOK." + name, shown.getByHierarchicalName(node + "/DisplayName"));
      for (int i = 0; i < function.parameters().size(); i++) {
        String argument = node + "/Parameters/" + function.parameters().get(i).name();
        assertEquals(texts.of(function, i), shown.getByHierarchicalName(argument + "/Description"));
      }
    }
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  void theMenuSpeaksEachLanguage(Language language) throws Exception {
    XHierarchicalNameAccess menu =
        shownIn(
            language.code(),
            "/org.openoffice.Office.Addons/AddonUI/OfficeMenuBar/washbook.office/Submenu");
    assertEquals(OfficeText.of("menu.fill").in(language), menu.getByHierarchicalName("m1/Title"));
    assertEquals(
        OfficeText.of("menu.recalculate").in(language), menu.getByHierarchicalName("m6/Title"));
  }

  @Test
  void aRegionHasItsLanguageAndAnyOtherOfficeHasEnglish() throws Exception {
    String fill = "/org.openoffice.Office.Addons/AddonUI/OfficeMenuBar/washbook.office/Submenu/m1";
    for (String locale : List.of("pt-BR", "de-AT", "en-US", "sv")) {
      Language language = Language.of(locale).orElse(Language.EN);
      assertEquals(
          OfficeText.of("menu.fill").in(language),
          shownIn(locale, fill).getByHierarchicalName("Title"),
          locale);
    }
  }

  /** The office has its own language only at its start, ours is asked for at each command. */
  @ParameterizedTest
  @CsvSource({"de, DE", "pt-BR, PT", "fr, FR", "sv, EN", "en-US, EN"})
  void commandsAnswerInTheLanguageThatTheOfficeIsSetTo(String locale, Language language)
      throws Exception {
    Object setup = configuration(WRITE, property("nodepath", "/org.openoffice.Setup/L10N"));
    XHierarchicalNameReplace set = UnoRuntime.queryInterface(XHierarchicalNameReplace.class, setup);
    XChangesBatch changes = UnoRuntime.queryInterface(XChangesBatch.class, setup);
    Object before = set.getByHierarchicalName("ooLocale");
    try (Book book = SharedOffice.get().newBook()) {
      set.replaceByHierarchicalName("ooLocale", locale);
      changes.commitChanges();
      assertEquals(language, OfficeLanguage.of(SharedOffice.get().context()));
      book.text("A1", "Plum 3").select("A1");
      assertEquals(
          OfficeText.of("explain.noCall", "A1").in(language),
          book.dispatch("washbook.office:explain?ask=no"));
      assertEquals(
          OfficeText.of("command.unknown", "no-such").in(language),
          book.dispatch("washbook.office:no-such?ask=no"));
      book.formula("A2", "=WASHBOOK.REASON(\"ABV\";1.085;1.3)");
      Answer.Refusal refusal = (Answer.Refusal) Catalogue.get("ABV").call(1.085, 1.3);
      assertEquals(refusal.told().in(language.code()), book.shown("A2"));
    } finally {
      set.replaceByHierarchicalName("ooLocale", before);
      changes.commitChanges();
    }
  }
}
