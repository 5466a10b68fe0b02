package washbook.office.dialog;

import com.sun.star.awt.PosSize;
import com.sun.star.awt.Rectangle;
import com.sun.star.awt.XControl;
import com.sun.star.awt.XControlContainer;
import com.sun.star.awt.XControlModel;
import com.sun.star.awt.XDialog;
import com.sun.star.awt.XWindow;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNameContainer;
import com.sun.star.lang.XComponent;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.UnoRuntime;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;

/** Makes dialogs of controls and shows them. */
record DialogForm(Windows windows) {

  /** An empty dialog; sizes are those of the office's dialogs, about half a letter's width. */
  Object model(String title, int width, int height) throws com.sun.star.uno.Exception {
    Object model = windows.service("com.sun.star.awt.UnoControlDialogModel");
    set(model, 0, 0, width, height);
    set(model, "Title", title);
    return model;
  }

  /** Shows a dialog; what its controls hold when it is confirmed, empty when it is called off. */
  <T> Optional<T> execute(Object model, Function<XControlContainer, T> confirmed) {
    return execute(model, controls -> {}, confirmed);
  }

  /** The same, with something to do before it is shown. */
  <T> Optional<T> execute(
      Object model, Consumer<XControlContainer> made, Function<XControlContainer, T> confirmed) {
    Object dialog = windows.service("com.sun.star.awt.UnoControlDialog");
    XControl control = UnoRuntime.queryInterface(XControl.class, dialog);
    try {
      control.setModel(UnoRuntime.queryInterface(XControlModel.class, model));
      control.createPeer(windows.toolkit(), windows.peer());
      toTheMiddle(UnoRuntime.queryInterface(XWindow.class, dialog));
      XControlContainer controls = UnoRuntime.queryInterface(XControlContainer.class, dialog);
      made.accept(controls);
      return UnoRuntime.queryInterface(XDialog.class, dialog).execute() == 1
          ? Optional.of(confirmed.apply(controls))
          : Optional.empty();
    } finally {
      UnoRuntime.queryInterface(XComponent.class, dialog).dispose();
    }
  }

  private void toTheMiddle(XWindow dialog) {
    Rectangle around = windows.frame().getContainerWindow().getPosSize();
    Rectangle own = dialog.getPosSize();
    int x = Math.max(0, (around.Width - own.Width) / 2);
    int y = Math.max(0, (around.Height - own.Height) / 2);
    dialog.setPosSize(x, y, 0, 0, PosSize.POS);
  }

  static Object add(
      Object dialog,
      String name,
      String kind,
      int x,
      int y,
      int width,
      int height,
      String property,
      Object value)
      throws com.sun.star.uno.Exception {
    Object model =
        UnoRuntime.queryInterface(XMultiServiceFactory.class, dialog)
            .createInstance("com.sun.star.awt.UnoControl" + kind + "Model");
    set(model, x, y, width, height);
    set(model, property, value);
    UnoRuntime.queryInterface(XNameContainer.class, dialog).insertByName(name, model);
    return model;
  }

  private static void set(Object model, int x, int y, int width, int height)
      throws com.sun.star.uno.Exception {
    set(model, "PositionX", x);
    set(model, "PositionY", y);
    set(model, "Width", width);
    set(model, "Height", height);
  }

  static void set(Object model, String property, Object value) throws com.sun.star.uno.Exception {
    UnoRuntime.queryInterface(XPropertySet.class, model).setPropertyValue(property, value);
  }
}
