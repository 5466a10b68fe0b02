package washbook.office.dialog;

import com.sun.star.awt.MessageBoxButtons;
import com.sun.star.awt.MessageBoxResults;
import com.sun.star.awt.MessageBoxType;
import com.sun.star.awt.XMessageBox;
import com.sun.star.awt.XMessageBoxFactory;
import com.sun.star.awt.XToolkit;
import com.sun.star.awt.XWindowPeer;
import com.sun.star.frame.XFrame;
import com.sun.star.lang.XComponent;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import washbook.log.language.Language;
import washbook.office.language.OfficeText;

/** What a command shows to the user; nothing at all when it was told not to ask. */
public record Windows(XComponentContext context, XFrame frame, boolean shown, Language language) {

  /** Shows the end of a command, whatever state its window is in. */
  public Outcome say(Outcome outcome) {
    if (shown && outcome.shown()) {
      MessageBoxType type = outcome.done() ? MessageBoxType.INFOBOX : MessageBoxType.WARNINGBOX;
      try {
        box(peer(), type, MessageBoxButtons.BUTTONS_OK, outcome.text());
      } catch (RuntimeException windowIsGone) {
        box(null, type, MessageBoxButtons.BUTTONS_OK, outcome.text());
      }
    }
    return outcome;
  }

  /** Whether the user agrees, who is taken to agree when nothing is shown. */
  public boolean agrees(String question) {
    return !shown
        || box(peer(), MessageBoxType.QUERYBOX, MessageBoxButtons.BUTTONS_OK_CANCEL, question)
            == MessageBoxResults.OK;
  }

  private short box(XWindowPeer parent, MessageBoxType type, int buttons, String text) {
    XMessageBox box =
        UnoRuntime.queryInterface(XMessageBoxFactory.class, toolkit())
            .createMessageBox(parent, type, buttons, "Washbook", text);
    try {
      return box.execute();
    } finally {
      UnoRuntime.queryInterface(XComponent.class, box).dispose();
    }
  }

  XToolkit toolkit() {
    return UnoRuntime.queryInterface(XToolkit.class, service("com.sun.star.awt.Toolkit"));
  }

  XWindowPeer peer() {
    return UnoRuntime.queryInterface(XWindowPeer.class, frame.getContainerWindow());
  }

  public Object service(String name) {
    try {
      return context.getServiceManager().createInstanceWithContext(name, context);
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException(OfficeText.of("stopped.service", name), e);
    }
  }
}
