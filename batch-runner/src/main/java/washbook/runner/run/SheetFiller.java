package washbook.runner.run;

import java.nio.file.Path;
import washbook.log.Understanding;
import washbook.log.fill.Filling;
import washbook.log.language.Language;
import washbook.log.sheet.Grid;
import washbook.runner.file.UnusableFileException;

/** Understands and computes one sheet. */
public interface SheetFiller {
  /** The same for the log at {@code file}, with the map that lies beside it. */
  default SheetFiller beside(Path file) throws UnusableFileException {
    return this;
  }

  /** The map beside the log that is used; null for none. */
  default Path mapBeside() {
    return null;
  }

  /** What the sheet was taken for. */
  Understanding understand(Grid grid);

  /** The wanted columns. */
  Filling fill(Grid grid, Understanding understanding);

  /** The language in which its user is told what was refused. */
  default Language messages() {
    return Language.EN;
  }
}
