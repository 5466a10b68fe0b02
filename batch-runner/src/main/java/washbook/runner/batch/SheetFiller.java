package washbook.runner.batch;

import washbook.functions.log.Filling;
import washbook.functions.log.Grid;
import washbook.functions.log.Understanding;

/** Understands and computes one sheet. */
public interface SheetFiller {
  /** What the sheet was taken for. */
  Understanding understand(Grid grid);

  /** The wanted columns. */
  Filling fill(Grid grid, Understanding understanding);
}
