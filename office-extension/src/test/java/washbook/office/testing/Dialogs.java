package washbook.office.testing;

import com.sun.star.accessibility.AccessibleRole;
import com.sun.star.accessibility.XAccessible;
import com.sun.star.accessibility.XAccessibleAction;
import com.sun.star.accessibility.XAccessibleContext;
import com.sun.star.accessibility.XAccessibleEditableText;
import com.sun.star.accessibility.XAccessibleSelection;
import com.sun.star.accessibility.XAccessibleText;
import com.sun.star.awt.XExtendedToolkit;
import com.sun.star.uno.UnoRuntime;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;

/** Works the dialogs and message boxes that an office shows, as a person does. */
public final class Dialogs {
  private static final long PATIENCE = TimeUnit.SECONDS.toNanos(60);

  private static final Set<Short> WINDOWS =
      Set.of(AccessibleRole.DIALOG, AccessibleRole.ALERT, AccessibleRole.OPTION_PANE);

  private final Office office;
  private final DialogPeers peers;

  public Dialogs(Office office) {
    this.office = office;
    this.peers = new DialogPeers(office);
  }

  /**
   * Chooses the radio button, ticks the box, or presses the button, whose label begins like this.
   */
  public void press(String label) {
    Optional<XAccessibleContext> control =
        await(
            () -> peers.press(label),
            c ->
                (c.getAccessibleRole() == AccessibleRole.PUSH_BUTTON
                        || c.getAccessibleRole() == AccessibleRole.RADIO_BUTTON
                        || c.getAccessibleRole() == AccessibleRole.CHECK_BOX)
                    && c.getAccessibleName().startsWith(label),
            label);
    if (control.isPresent()) {
      try {
        UnoRuntime.queryInterface(XAccessibleAction.class, control.get()).doAccessibleAction(0);
      } catch (com.sun.star.lang.IndexOutOfBoundsException e) {
        throw new IllegalStateException(label, e);
      }
    }
  }

  /**
   * Ends a message of the office's own make with a button, when it shows these words; an office
   * from 26.8 on tells its title alone.
   */
  public void end(String words, String title, String button) {
    await(
        () -> peers.show(title) && peers.end(),
        c -> c.getAccessibleName().contains(words) || text(c).contains(words),
        words);
    if (peers.areSilent()) {
      press(button);
    }
  }

  /** Chooses from the list that is called by these words the entry with that text. */
  public void choose(String label, String entry) {
    Optional<XAccessibleContext> found =
        await(
            () -> peers.choose(label, entry),
            c ->
                (c.getAccessibleRole() == AccessibleRole.COMBO_BOX
                        || c.getAccessibleRole() == AccessibleRole.LIST)
                    && c.getAccessibleName().startsWith(label),
            label);
    if (found.isEmpty()) {
      return;
    }
    XAccessibleContext list = found.get();
    List<XAccessibleContext> below = new ArrayList<>(List.of(list));
    add(list, below);
    for (XAccessibleContext one : below) {
      XAccessibleSelection selection = UnoRuntime.queryInterface(XAccessibleSelection.class, one);
      List<XAccessible> entries = children(one);
      for (int i = 0; i < entries.size() && selection != null; i++) {
        if (entries.get(i).getAccessibleContext().getAccessibleName().equals(entry)) {
          call(XAccessibleSelection.class, "selectAccessibleChild", selection, i);
          return;
        }
      }
    }
    throw new IllegalStateException(label + " has no entry " + entry);
  }

  /** Types into the field that is empty. */
  public void type(String text) {
    XAccessibleContext field =
        await(
                () -> false,
                c -> {
                  XAccessibleText shown = UnoRuntime.queryInterface(XAccessibleText.class, c);
                  return UnoRuntime.queryInterface(XAccessibleEditableText.class, c) != null
                      && shown.getText().isEmpty();
                },
                "an empty field")
            .orElseThrow();
    UnoRuntime.queryInterface(XAccessibleEditableText.class, field).setText(text);
  }

  /** Waits for a control that is called by these words, as a text over several lines is. */
  public void awaitText(String words) {
    await(
        () -> peers.show(words),
        c -> c.getAccessibleName().contains(words) || text(c).contains(words),
        words);
  }

  /** A control, or none where it was dealt with in another way. */
  private Optional<XAccessibleContext> await(
      BooleanSupplier otherwise, Predicate<XAccessibleContext> wanted, String what) {
    long end = System.nanoTime() + PATIENCE;
    while (System.nanoTime() < end) {
      Optional<XAccessibleContext> found = find(wanted);
      if (found.isPresent() || otherwise.getAsBoolean()) {
        return found;
      }
      OfficeProcess.pause();
    }
    List<String> names = new ArrayList<>();
    controls()
        .forEach(c -> names.add(c.getAccessibleRole() + " " + c.getAccessibleName() + text(c)));
    throw new IllegalStateException("no dialog with " + what + " among " + names);
  }

  /** What stands in a field, "" in other controls. */
  private static String text(XAccessibleContext control) {
    XAccessibleText text = UnoRuntime.queryInterface(XAccessibleText.class, control);
    return text == null ? "" : ": " + text.getText();
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

  private static void add(XAccessibleContext parent, List<XAccessibleContext> controls) {
    for (XAccessible child : children(parent)) {
      XAccessibleContext context = child == null ? null : child.getAccessibleContext();
      if (context != null) {
        controls.add(context);
        add(context, controls);
      }
    }
  }

  /**
   * Offices from 7.5 on count in another type of number. The office's own libreoffice.jar has to
   * stand before ours in the class path: without it the connection ends at the first dialog.
   */
  private static List<XAccessible> children(XAccessibleContext parent) {
    List<XAccessible> children = new ArrayList<>();
    Number count = (Number) call(XAccessibleContext.class, "getAccessibleChildCount", parent);
    for (int i = 0; i < count.intValue(); i++) {
      children.add((XAccessible) call(XAccessibleContext.class, "getAccessibleChild", parent, i));
    }
    return children;
  }

  /** Calls the method of that name with no number, or with one of the type that it takes. */
  private static Object call(Class<?> type, String name, Object object, Integer... number) {
    try {
      Method method =
          Arrays.stream(type.getMethods())
              .filter(m -> m.getName().equals(name))
              .findFirst()
              .orElseThrow();
      if (number.length == 0) {
        return method.invoke(object);
      }
      boolean isLong = method.getParameterTypes()[0] == long.class;
      return method.invoke(object, isLong ? (Object) number[0].longValue() : (Object) number[0]);
    } catch (InvocationTargetException e) {
      throw e.getCause() instanceof com.sun.star.uno.RuntimeException changing
          ? changing
          : new com.sun.star.uno.RuntimeException(String.valueOf(e.getCause()));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }
}
