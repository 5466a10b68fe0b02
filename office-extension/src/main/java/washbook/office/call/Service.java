package washbook.office.call;

import com.sun.star.lang.XServiceInfo;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.NumberFormatsSupplier;
import com.sun.star.util.XNumberFormatter;
import washbook.functions.catalogue.CatalogueFunction;

/** What the generated add-in class needs besides its methods. */
public abstract class Service extends WeakBase implements XServiceInfo {
  private static final String NAME = "WASHBOOK";

  protected Service(XComponentContext context) {
    DecimalText.askFor(() -> decimalSign(context));
  }

  /** What the cell gets for a call with the given arguments. */
  protected static Object answer(CatalogueFunction function, Object[] arguments) {
    return Call.cells(function, arguments);
  }

  private static String decimalSign(XComponentContext context) {
    try {
      XNumberFormatter formatter =
          UnoRuntime.queryInterface(
              XNumberFormatter.class,
              context
                  .getServiceManager()
                  .createInstanceWithContext("com.sun.star.util.NumberFormatter", context));
      formatter.attachNumberFormatsSupplier(NumberFormatsSupplier.createWithDefaultLocale(context));
      return formatter.convertNumberToString(0, 0.5).replaceAll("[05]", "");
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
