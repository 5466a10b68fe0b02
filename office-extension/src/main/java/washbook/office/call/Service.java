package washbook.office.call;

import com.sun.star.i18n.NumberFormatIndex;
import com.sun.star.lang.Locale;
import com.sun.star.lang.XServiceInfo;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.NumberFormatsSupplier;
import com.sun.star.util.XNumberFormatTypes;
import com.sun.star.util.XNumberFormatter;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.office.language.OfficeLanguage;

/** What the generated add-in class needs besides its methods. */
public abstract class Service extends WeakBase implements XServiceInfo {
  private static final String NAME = "WASHBOOK";

  protected Service(XComponentContext context) {
    DecimalText.askFor(() -> signs(context));
    Reason.askFor(() -> OfficeLanguage.of(context));
  }

  /** What the cell gets for a call with the given arguments. */
  protected static Object answer(CatalogueFunction function, Object[] arguments) {
    return Call.cells(function, arguments);
  }

  /** The same for the entry that takes a function's name and whole ranges. */
  protected static Object column(Object[] arguments) {
    return WholeColumn.cells(arguments);
  }

  private static DecimalText.Signs signs(XComponentContext context) {
    try {
      var supplier = NumberFormatsSupplier.createWithDefaultLocale(context);
      XNumberFormatter formatter =
          UnoRuntime.queryInterface(
              XNumberFormatter.class,
              context
                  .getServiceManager()
                  .createInstanceWithContext("com.sun.star.util.NumberFormatter", context));
      formatter.attachNumberFormatsSupplier(supplier);
      int grouped =
          UnoRuntime.queryInterface(XNumberFormatTypes.class, supplier.getNumberFormats())
              .getFormatIndex(NumberFormatIndex.NUMBER_1000DEC2, new Locale());
      String shown = formatter.convertNumberToString(grouped, 1222.25);
      Matcher signs = Pattern.compile("1(\\D?)222(\\D)25").matcher(shown);
      return signs.matches()
          ? new DecimalText.Signs(signs.group(2), signs.group(1))
          : DecimalText.Signs.ENGLISH;
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException("the office does not format numbers", e);
    }
  }

  @Override
  public final String getImplementationName() {
    return getClass().getName();
  }

  @Override
  public final boolean supportsService(String name) {
    return name.equals(NAME);
  }

  @Override
  public final String[] getSupportedServiceNames() {
    return new String[] {NAME};
  }
}
