package washbook.office.menu;

import com.sun.star.awt.XWindow2;
import com.sun.star.container.XNamed;
import com.sun.star.frame.XController;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XModel;
import com.sun.star.frame.XStorable;
import com.sun.star.sheet.XSpreadsheet;
import com.sun.star.sheet.XSpreadsheetView;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XProtectable;
import java.util.Locale;
import washbook.office.dialog.StoppedException;
import washbook.office.language.OfficeText;

/** The document in a window and the sheet that is in front. */
record OpenSheet(XModel document, XSpreadsheet sheet) {

  static OpenSheet of(XFrame frame) {
    if (frame == null || frame.getController() == null) {
      throw new StoppedException("stopped.noWindow");
    }
    XSpreadsheetView view =
        UnoRuntime.queryInterface(XSpreadsheetView.class, frame.getController());
    if (view == null) {
      throw new StoppedException("stopped.noSheet");
    }
    return new OpenSheet(frame.getController().getModel(), view.getActiveSheet());
  }

  <T> T document(Class<T> type) {
    return UnoRuntime.queryInterface(type, document);
  }

  <T> T sheet(Class<T> type) {
    return UnoRuntime.queryInterface(type, sheet);
  }

  String name() {
    return sheet(XNamed.class).getName();
  }

  /** Stops when the sheet may not be written. */
  void requireWritable() {
    if (sheet(XProtectable.class).isProtected()) {
      throw new StoppedException(OfficeText.of("stopped.protected", name()));
    }
    requireChangeable();
  }

  /** Stops when the document may not be written. */
  void requireChangeable() {
    if (document(XStorable.class).isReadonly()) {
      throw new StoppedException("stopped.readOnly");
    }
  }

  /** Whether formulas of the pack outlive saving: the old format of Excel does not hold them. */
  boolean keepsFormulas() {
    return !document.getURL().toLowerCase(Locale.ROOT).endsWith(".xls");
  }

  /** Whether there is a window that shows the document. */
  boolean isShown() {
    XController controller = document.getCurrentController();
    XFrame frame = controller == null ? null : controller.getFrame();
    XWindow2 window =
        frame == null
            ? null
            : UnoRuntime.queryInterface(XWindow2.class, frame.getContainerWindow());
    return window != null && window.isVisible();
  }

  /** Does something as one step of undo; when it fails, nothing has changed. */
  void inOneStep(String title, Runnable work) {
    new UndoStep(document).run(title, work);
  }
}
