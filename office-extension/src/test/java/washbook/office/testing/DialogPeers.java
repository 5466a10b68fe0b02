package washbook.office.testing;

import com.sun.star.accessibility.XAccessible;
import com.sun.star.awt.Key;
import com.sun.star.awt.KeyEvent;
import com.sun.star.awt.KeyModifier;
import com.sun.star.awt.XButton;
import com.sun.star.awt.XCheckBox;
import com.sun.star.awt.XDialog2;
import com.sun.star.awt.XExtendedToolkit;
import com.sun.star.awt.XFixedText;
import com.sun.star.awt.XRadioButton;
import com.sun.star.awt.XTextComponent;
import com.sun.star.awt.XToolkitRobot;
import com.sun.star.awt.XVclContainer;
import com.sun.star.awt.XVclWindowPeer;
import com.sun.star.awt.XWindow;
import com.sun.star.uno.UnoRuntime;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * Dialogs of an office whose windows are not accessible to other programs, as from 26.8 on: they
 * are read by their controls and worked by keys.
 */
final class DialogPeers {
  private final Office office;

  DialogPeers(Office office) {
    this.office = office;
  }

  /** Whether the office has accessible windows, which are worked in another way. */
  boolean areSilent() {
    return controls().isEmpty();
  }

  /** Whether a control shows these words; false in an office that has accessible windows. */
  boolean show(String words) {
    return controls().stream().anyMatch(control -> plain(text(control)).contains(words));
  }

  /** Presses the button, box or radio button whose label begins like this, if there is one. */
  boolean press(String label) {
    for (Object control : controls()) {
      boolean isButton =
          is(XButton.class, control)
              || is(XCheckBox.class, control)
              || is(XRadioButton.class, control);
      if (isButton && plain(text(control)).startsWith(label)) {
        UnoRuntime.queryInterface(XWindow.class, control).setFocus();
        key(control, ' ', Key.SPACE, 0);
        return true;
      }
    }
    return false;
  }

  /** Ends the office's own dialog in front, of which only the title is told. */
  boolean end() {
    List<Object> controls = controls();
    XDialog2 dialog =
        controls.isEmpty() ? null : UnoRuntime.queryInterface(XDialog2.class, controls.get(0));
    if (dialog != null) {
      dialog.endDialog(0);
    }
    return dialog != null;
  }

  /**
   * Goes to the list by the key that its label names, if there is one, and there to the next entry
   * with the same first letter as the wanted one.
   */
  boolean choose(String label, String entry) {
    for (Object control : controls()) {
      String text = text(control);
      if (is(XFixedText.class, control) && plain(text).startsWith(label) && text.contains("~")) {
        char letter = text.charAt(text.indexOf('~') + 1);
        key(control, letter, code(letter), KeyModifier.MOD2);
        pause();
        key(control, entry.charAt(0), code(entry.charAt(0)), 0);
        return true;
      }
    }
    return false;
  }

  private static int code(char sign) {
    return Character.isDigit(sign)
        ? Key.NUM0 + sign - '0'
        : Key.A + Character.toUpperCase(sign) - 'A';
  }

  private void key(Object window, char sign, int code, int modifiers) {
    XToolkitRobot keys = office.service("com.sun.star.awt.Toolkit", XToolkitRobot.class);
    KeyEvent event = new KeyEvent();
    event.Source = window;
    event.KeyChar = sign;
    event.KeyCode = (short) code;
    event.Modifiers = (short) modifiers;
    keys.keyPress(event);
    keys.keyRelease(event);
  }

  private static void pause() {
    try {
      TimeUnit.MILLISECONDS.sleep(500);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private List<Object> controls() {
    List<Object> controls = new ArrayList<>();
    try {
      XExtendedToolkit toolkit = office.service("com.sun.star.awt.Toolkit", XExtendedToolkit.class);
      for (int i = 0; i < toolkit.getTopWindowCount(); i++) {
        Object window = toolkit.getTopWindow(i);
        if (window == null || is(XAccessible.class, window)) {
          return List.of();
        }
        add(window, controls);
      }
    } catch (com.sun.star.lang.IndexOutOfBoundsException | com.sun.star.uno.RuntimeException e) {
      return List.of(); // a dialog comes or goes while it is looked at
    }
    return controls;
  }

  private static void add(Object window, List<Object> controls) {
    controls.add(window);
    XVclContainer container = UnoRuntime.queryInterface(XVclContainer.class, window);
    if (container != null) {
      for (Object child : container.getWindows()) {
        add(child, controls);
      }
    }
  }

  private static boolean is(Class<?> type, Object control) {
    return UnoRuntime.queryInterface(type, control) != null;
  }

  /** What a control shows, with the mark of its key. */
  private static String text(Object control) {
    XFixedText label = UnoRuntime.queryInterface(XFixedText.class, control);
    XTextComponent field = UnoRuntime.queryInterface(XTextComponent.class, control);
    XVclWindowPeer peer = UnoRuntime.queryInterface(XVclWindowPeer.class, control);
    if (label != null || field != null || peer == null) {
      return label != null ? label.getText() : field != null ? field.getText() : "";
    }
    return peer.getProperty("Label") instanceof String text ? text : "";
  }

  private static String plain(String text) {
    return text.replace("~", "");
  }
}
