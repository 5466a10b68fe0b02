package washbook.office.testing;

import com.sun.star.beans.NamedValue;
import com.sun.star.deployment.XExtensionManager;
import com.sun.star.deployment.XPackage;
import com.sun.star.lib.uno.helper.ComponentBase;
import com.sun.star.task.XAbortChannel;
import com.sun.star.task.XInteractionApprove;
import com.sun.star.task.XInteractionContinuation;
import com.sun.star.task.XInteractionHandler;
import com.sun.star.task.XInteractionRequest;
import com.sun.star.ucb.XCommandEnvironment;
import com.sun.star.ucb.XProgressHandler;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.nio.file.Path;
import java.util.Optional;

/** The office's extension manager, with somebody at hand who says yes. */
public final class Extensions {
  private static final String IDENTIFIER = "washbook.office";
  private static final String USER = "user";

  private final XComponentContext context;
  private final XExtensionManager manager;

  Extensions(XComponentContext context, XExtensionManager manager) {
    this.context = context;
    this.manager = manager;
  }

  /** Installs it, or updates what is there; in force when the office starts the next time. */
  public void add(Path extension) {
    try {
      manager.addExtension(
          extension.toUri().toString(), new NamedValue[0], USER, noAbort(), new Consent());
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException("not installed: " + extension, e);
    }
  }

  public void remove(String fileName) {
    try {
      manager.removeExtension(IDENTIFIER, fileName, USER, noAbort(), new Consent());
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException("not removed", e);
    }
  }

  /** What is installed under our identifier. */
  public Optional<XPackage> installed() {
    try {
      for (XPackage found : manager.getDeployedExtensions(USER, noAbort(), new Consent())) {
        if (IDENTIFIER.equals(found.getIdentifier().Value)) {
          return Optional.of(found);
        }
      }
      return Optional.empty();
    } catch (com.sun.star.uno.Exception e) {
      throw new IllegalStateException(e);
    }
  }

  public XComponentContext context() {
    return context;
  }

  private static XAbortChannel noAbort() {
    return null;
  }

  private static final class Consent extends ComponentBase
      implements XCommandEnvironment, XInteractionHandler {
    @Override
    public XInteractionHandler getInteractionHandler() {
      return this;
    }

    @Override
    public XProgressHandler getProgressHandler() {
      return null;
    }

    @Override
    public void handle(XInteractionRequest request) {
      for (XInteractionContinuation choice : request.getContinuations()) {
        XInteractionApprove yes = UnoRuntime.queryInterface(XInteractionApprove.class, choice);
        if (yes != null) {
          yes.select();
        }
      }
    }
  }
}
