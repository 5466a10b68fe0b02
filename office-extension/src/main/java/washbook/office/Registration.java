package washbook.office;

import com.sun.star.lang.XSingleComponentFactory;
import com.sun.star.lib.uno.helper.Factory;
import washbook.office.menu.MenuHandler;

/** Where the office asks for the extension's components; named in the jar's manifest. */
public final class Registration {
  private Registration() {}

  /** The name is the office's. */
  @SuppressWarnings("MethodName")
  public static XSingleComponentFactory __getComponentFactory(String implementation) {
    if (implementation.equals(WashbookFunctions.class.getName())) {
      return Factory.createComponentFactory(WashbookFunctions.class, new String[] {"WASHBOOK"});
    }
    if (implementation.equals(MenuHandler.class.getName())) {
      return Factory.createComponentFactory(MenuHandler.class, MenuHandler.services());
    }
    return null;
  }
}
