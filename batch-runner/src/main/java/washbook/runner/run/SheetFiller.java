package washbook.runner.run;

import washbook.log.Understanding;
import washbook.log.fill.Filling;
import washbook.log.language.Language;
import washbook.log.sheet.Grid;

/** Understands and computes one sheet. */
public interface SheetFiller {
  /** What the sheet was taken for. */
  Understanding understand(Grid grid);

  /** The wanted columns. */
  Filling fill(Grid grid, Understanding understanding);

  /** The language in which its user is told what was refused. */
  default Language messages() {
    return Language.EN;
  }
}
