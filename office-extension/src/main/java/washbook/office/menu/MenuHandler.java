package washbook.office.menu;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.DispatchDescriptor;
import com.sun.star.frame.DispatchResultEvent;
import com.sun.star.frame.DispatchResultState;
import com.sun.star.frame.FeatureStateEvent;
import com.sun.star.frame.XDispatch;
import com.sun.star.frame.XDispatchProvider;
import com.sun.star.frame.XDispatchResultListener;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XNotifyingDispatch;
import com.sun.star.frame.XStatusListener;
import com.sun.star.lang.XInitialization;
import com.sun.star.lang.XServiceInfo;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.URL;
import washbook.office.dialog.Outcome;
import washbook.office.dialog.Windows;
import washbook.office.language.OfficeLanguage;

/**
 * Runs the commands of the menu Washbook. A caller that listens for the result gets the text that
 * the user would see.
 */
public final class MenuHandler extends WeakBase
    implements XServiceInfo, XInitialization, XDispatchProvider, XNotifyingDispatch {
  private static final String PROTOCOL = "washbook.office:";
  private static final String SERVICE = "com.sun.star.frame.ProtocolHandler";

  private final XComponentContext context;
  private XFrame frame;

  public MenuHandler(XComponentContext context) {
    this.context = context;
  }

  public static String[] services() {
    return new String[] {SERVICE};
  }

  @Override
  public void initialize(Object[] arguments) {
    if (arguments.length > 0) {
      frame = UnoRuntime.queryInterface(XFrame.class, arguments[0]);
    }
  }

  @Override
  public XDispatch queryDispatch(URL url, String target, int flags) {
    return url.Complete.startsWith(PROTOCOL) ? this : null;
  }

  @Override
  public XDispatch[] queryDispatches(DispatchDescriptor[] descriptors) {
    XDispatch[] found = new XDispatch[descriptors.length];
    for (int i = 0; i < found.length; i++) {
      found[i] =
          queryDispatch(
              descriptors[i].FeatureURL, descriptors[i].FrameName, descriptors[i].SearchFlags);
    }
    return found;
  }

  @Override
  public void dispatch(URL url, PropertyValue[] arguments) {
    run(url);
  }

  @Override
  public void dispatchWithNotification(
      URL url, PropertyValue[] arguments, XDispatchResultListener listener) {
    Outcome outcome = run(url);
    if (listener != null) {
      short state = outcome.done() ? DispatchResultState.SUCCESS : DispatchResultState.FAILURE;
      listener.dispatchFinished(new DispatchResultEvent(this, state, outcome.text()));
    }
  }

  private Outcome run(URL url) {
    Command command = Command.of(url.Complete);
    Windows windows = new Windows(context, frame, command.asks(), OfficeLanguage.of(context));
    return Commands.run(command, windows, () -> OpenSheet.of(frame));
  }

  @Override
  public void addStatusListener(XStatusListener listener, URL url) {
    FeatureStateEvent state = new FeatureStateEvent();
    state.FeatureURL = url;
    state.IsEnabled = true;
    state.Source = this;
    listener.statusChanged(state);
  }

  @Override
  public void removeStatusListener(XStatusListener listener, URL url) {
    // The state never changes, so that nobody is kept.
  }

  @Override
  public String getImplementationName() {
    return MenuHandler.class.getName();
  }

  @Override
  public boolean supportsService(String name) {
    return name.equals(SERVICE);
  }

  @Override
  public String[] getSupportedServiceNames() {
    return services();
  }
}
