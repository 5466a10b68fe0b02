package washbook.office.menu;

import com.sun.star.awt.PosSize;
import com.sun.star.awt.PushButtonType;
import com.sun.star.awt.Rectangle;
import com.sun.star.awt.XControl;
import com.sun.star.awt.XControlContainer;
import com.sun.star.awt.XControlModel;
import com.sun.star.awt.XDialog;
import com.sun.star.awt.XRadioButton;
import com.sun.star.awt.XWindow;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNameContainer;
import com.sun.star.lang.XComponent;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.UnoRuntime;
import java.util.Optional;
import java.util.function.Function;
import washbook.office.language.OfficeText;

/** Shows what was understood before anything is written, and asks what to write. */
record FillDialog(Windows windows) {

  enum Choice {
    CANCEL,
    NUMBERS,
    FORMULAS
  }

  Choice ask(String story, boolean formulasPossible) {
    Object model = windows.service("com.sun.star.awt.UnoControlDialogModel");
    try {
      set(model, 0, 0, 300, 230);
      set(model, "Title", say("dialog.title"));
      add(model, "heading", "FixedText", 8, 6, 284, 10, "Label", say("dialog.heading"));
      Object text = add(model, "story", "Edit", 8, 18, 284, 156, "Text", story);
      set(text, "MultiLine", true);
      set(text, "ReadOnly", true);
      set(text, "VScroll", true);
      Object numbers =
          add(model, "numbers", "RadioButton", 8, 178, 284, 10, "Label", say("dialog.numbers"));
      set(numbers, "State", (short) 1);
      Object formulas =
          add(
              model,
              "formulas",
              "RadioButton",
              8,
              190,
              284,
              10,
              "Label",
              say(formulasPossible ? "dialog.formulas" : "dialog.xls"));
      set(formulas, "Enabled", formulasPossible);
      Object cancel =
          add(model, "cancel", "Button", 176, 208, 56, 16, "Label", say("dialog.cancel"));
      set(cancel, "PushButtonType", (short) PushButtonType.CANCEL_value);
      Object fill = add(model, "fill", "Button", 236, 208, 56, 16, "Label", say("dialog.fill"));
      set(fill, "PushButtonType", (short) PushButtonType.OK_value);
      set(fill, "DefaultButton", true);
      return execute(model, FillDialog::chosen).orElse(Choice.CANCEL);
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.dialog", e);
    }
  }

  private String say(String key) {
    return OfficeText.of(key).in(windows.language());
  }

  private static Choice chosen(XControlContainer controls) {
    Object formulas = controls.getControl("formulas");
    return UnoRuntime.queryInterface(XRadioButton.class, formulas).getState()
        ? Choice.FORMULAS
        : Choice.NUMBERS;
  }

  /** Shows a dialog; what its controls hold when it is confirmed, empty when it is called off. */
  <T> Optional<T> execute(Object model, Function<XControlContainer, T> confirmed) {
    Object dialog = windows.service("com.sun.star.awt.UnoControlDialog");
    XControl control = UnoRuntime.queryInterface(XControl.class, dialog);
    try {
      control.setModel(UnoRuntime.queryInterface(XControlModel.class, model));
      control.createPeer(windows.toolkit(), windows.peer());
      toTheMiddle(UnoRuntime.queryInterface(XWindow.class, dialog));
      return UnoRuntime.queryInterface(XDialog.class, dialog).execute() == 1
          ? Optional.of(confirmed.apply(UnoRuntime.queryInterface(XControlContainer.class, dialog)))
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
      String text)
      throws com.sun.star.uno.Exception {
    Object model =
        UnoRuntime.queryInterface(XMultiServiceFactory.class, dialog)
            .createInstance("com.sun.star.awt.UnoControl" + kind + "Model");
    set(model, x, y, width, height);
    set(model, property, text);
    UnoRuntime.queryInterface(XNameContainer.class, dialog).insertByName(name, model);
    return model;
  }

  static void set(Object model, int x, int y, int width, int height)
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
