package washbook.office.menu;

import com.sun.star.beans.PropertyVetoException;
import com.sun.star.document.UndoFailedException;
import com.sun.star.document.XUndoAction;
import com.sun.star.document.XUndoManager;
import com.sun.star.document.XUndoManagerSupplier;
import com.sun.star.frame.XModel;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.InvalidStateException;
import com.sun.star.util.XModifiable;
import washbook.office.dialog.StoppedException;

/** A change of a document that is one step of undo when it is finished, and none when it is not. */
final class UndoStep {
  private final XModel document;
  private final XUndoManager undo;
  private final XModifiable changes;

  UndoStep(XModel document) {
    this.document = document;
    this.undo = UnoRuntime.queryInterface(XUndoManagerSupplier.class, document).getUndoManager();
    this.changes = UnoRuntime.queryInterface(XModifiable.class, document);
  }

  /** Does the work; whatever it throws, what it wrote is taken back before the user is told. */
  void run(String title, Runnable work) {
    boolean modified = changes.isModified();
    undo.enterUndoContext(title);
    try {
      locked(work);
    } catch (Throwable trouble) {
      throw StoppedException.after(
          trouble, isTakenBack(modified) ? "nothing.changed" : "nothing.takenBack");
    }
    leave();
  }

  private void locked(Runnable work) {
    document.lockControllers();
    try {
      work.run();
    } finally {
      document.unlockControllers();
    }
  }

  private void leave() {
    try {
      undo.leaveUndoContext();
    } catch (InvalidStateException e) {
      throw new StoppedException("stopped.undo", e);
    }
  }

  /**
   * The office drops a step in which nothing happened, and undo would then take back the user's
   * last own step: so there is always something in ours.
   */
  private boolean isTakenBack(boolean modified) {
    try {
      boolean kept = !undo.isLocked();
      if (kept) {
        undo.addUndoAction(new Nothing());
      }
      undo.leaveUndoContext();
      if (!kept) {
        return false;
      }
      undo.undo();
      undo.clearRedo();
      changes.setModified(modified);
      return true;
    } catch (InvalidStateException
        | UndoFailedException
        | PropertyVetoException
        | RuntimeException e) {
      return false;
    }
  }

  private static final class Nothing extends WeakBase implements XUndoAction {
    @Override
    public String getTitle() {
      return "Washbook";
    }

    @Override
    public void undo() {
      // It has done nothing.
    }

    @Override
    public void redo() {
      // It does nothing.
    }
  }
}
