package washbook.runner.corpus;

import java.nio.file.Path;
import java.util.List;
import washbook.log.sheet.Grid;
import washbook.log.sheet.SheetPatch;

/** Proves that a patched file differs from the old one by the patch only. */
interface ChangeCheck {
  /** Throws an {@link AssertionError} when anything else has changed. */
  void check(
      Path before,
      List<Grid> gridsBefore,
      List<SheetPatch> patches,
      Path after,
      List<Grid> gridsAfter)
      throws Exception;
}
