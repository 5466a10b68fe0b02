package washbook.runner.run;

import java.io.IOException;
import java.nio.file.Path;
import washbook.log.Understanding;
import washbook.log.fill.Filling;
import washbook.log.language.Language;
import washbook.log.sheet.Grid;

/** Understands and computes one sheet. */
public interface SheetFiller {
  /** The same for the log at {@code file}, with the map that lies beside it. */
  default SheetFiller beside(Path file) throws IOException {
    return this;
  }

  /** What the map that goes with the log is called; null for none. */
  default String mapBeside() {
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
