package washbook.office.testing;

import com.sun.star.accessibility.AccessibleRole;
import com.sun.star.accessibility.XAccessible;
import com.sun.star.accessibility.XAccessibleAction;
import com.sun.star.accessibility.XAccessibleContext;
import com.sun.star.accessibility.XAccessibleEditableText;
import com.sun.star.accessibility.XAccessibleText;
import com.sun.star.awt.XExtendedToolkit;
import com.sun.star.uno.UnoRuntime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/** Works the dialogs and message boxes that an office shows, as a person does. */
public final class Dialogs {
  private static final long PATIENCE = TimeUnit.SECONDS.toNanos(60);

  private static final Set<Short> WINDOWS =
      Set.of(AccessibleRole.DIALOG, AccessibleRole.ALERT, AccessibleRole.OPTION_PANE);

  private final Office office;

  public Dialogs(Office office) {
    this.office = office;
  }

  /** Chooses the radio button, or presses the button, whose label begins like this. */
  public void press(String label) {
    XAccessibleContext control =
        await(
            c ->
                (c.getAccessibleRole() == AccessibleRole.PUSH_BUTTON
                        || c.getAccessibleRole() == AccessibleRole.RADIO_BUTTON)
                    && c.getAccessibleName().startsWith(label),
            label);
    try {
      UnoRuntime.queryInterface(XAccessibleAction.class, control).doAccessibleAction(0);
    } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
      throw new IllegalStateException(label, e);
    }
  }

  /** Types into the field that is empty. */
  public void type(String text) {
    XAccessibleContext field =
        await(
            c -> {
              XAccessibleText shown = UnoRuntime.queryInterface(XAccessibleText.class, c);
              return UnoRuntime.queryInterface(XAccessibleEditableText.class, c) != null
                  && shown.getText().isEmpty();
            },
            "an empty field");
    UnoRuntime.queryInterface(XAccessibleEditableText.class, field).setText(text);
  }

  /** Waits for a control that is called by these words, as a text over several lines is. */
  public void awaitText(String words) {
    await(c -> c.getAccessibleName().contains(words), words);
  }

  private XAccessibleContext await(Predicate<XAccessibleContext> wanted, String what) {
    long end = System.nanoTime() + PATIENCE;
    while (System.nanoTime() < end) {
      Optional<XAccessibleContext> found = find(wanted);
      if (found.isPresent()) {
        return found.get();
      }
      OfficeProcess.pause();
    }
    List<String> names = new ArrayList<>();
    controls().forEach(c -> names.add(c.getAccessibleRole() + " " + c.getAccessibleName()));
    throw new IllegalStateException("no dialog with " + what + " among " + names);
  }

  /** A dialog may be gone, or not be finished, while it is looked at. */
  private Optional<XAccessibleContext> find(Predicate<XAccessibleContext> wanted) {
    try {
      return controls().stream().filter(wanted).findFirst();
    } catch (com.sun.star.uno.RuntimeException changing) {
      return Optional.empty();
    }
  }

  private List<XAccessibleContext> controls() {
    XExtendedToolkit toolkit = office.service("com.sun.star.awt.Toolkit", XExtendedToolkit.class);
    List<XAccessibleContext> controls = new ArrayList<>();
    try {
      for (int i = 0; i < toolkit.getTopWindowCount(); i++) {
        XAccessible window = UnoRuntime.queryInterface(XAccessible.class, toolkit.getTopWindow(i));
        XAccessibleContext context = window == null ? null : window.getAccessibleContext();
        if (context != null && WINDOWS.contains(context.getAccessibleRole())) {
          add(context, controls);
        }
      }
    } catch (com.sun.star.lang.IndexOutOfBoundsException changing) {
      return List.of();
    }
    return controls;
  }

  private static void add(XAccessibleContext parent, List<XAccessibleContext> controls)
      throws com.sun.star.lang.IndexOutOfBoundsException {
    for (int i = 0; i < parent.getAccessibleChildCount(); i++) {
      XAccessible child = parent.getAccessibleChild(i);
      XAccessibleContext context = child == null ? null : child.getAccessibleContext();
      if (context != null) {
        controls.add(context);
        add(context, controls);
      }
    }
  }
}
