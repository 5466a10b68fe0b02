package washbook.office.language;

import com.sun.star.beans.PropertyState;
import com.sun.star.beans.PropertyValue;
import com.sun.star.container.XNameAccess;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.util.Optional;
import washbook.log.language.Language;

/** The language of the office's menus and dialogs. */
public final class OfficeLanguage {
  private static final String SETUP = "/org.openoffice.Setup/L10N";

  private OfficeLanguage() {}

  /**
   * The language that the office says it is in; where it does not say, that of the user's
   * environment; English where that is none of ours.
   */
  public static Language of(XComponentContext context) {
    try {
      return said(context).map(OfficeLanguage::ours).orElseGet(OfficeLanguage::ofUser);
    } catch (com.sun.star.uno.Exception | RuntimeException notSaid) {
      return ofUser();
    }
  }

  private static Language ours(String locale) {
    return Language.of(locale).orElse(Language.EN);
  }

  private static Language ofUser() {
    return Language.ofUser(System.getenv());
  }

  /** The office writes there at its start which of its languages it has chosen. */
  private static Optional<String> said(XComponentContext context)
      throws com.sun.star.uno.Exception {
    XMultiServiceFactory configuration =
        UnoRuntime.queryInterface(
            XMultiServiceFactory.class,
            context
                .getServiceManager()
                .createInstanceWithContext(
                    "com.sun.star.configuration.ConfigurationProvider", context));
    Object setup =
        configuration.createInstanceWithArguments(
            "com.sun.star.configuration.ConfigurationAccess",
            new Object[] {new PropertyValue("nodepath", 0, SETUP, PropertyState.DIRECT_VALUE)});
    Object locale = UnoRuntime.queryInterface(XNameAccess.class, setup).getByName("ooLocale");
    return locale instanceof String text && !text.isBlank() ? Optional.of(text) : Optional.empty();
  }
}
