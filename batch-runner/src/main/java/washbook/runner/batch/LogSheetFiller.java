package washbook.runner.batch;

import washbook.functions.log.FillOptions;
import washbook.functions.log.Filling;
import washbook.functions.log.Grid;
import washbook.functions.log.LogFiller;
import washbook.functions.log.LogMap;
import washbook.functions.log.LogReader;
import washbook.functions.log.Understanding;

/** Fermentation logs, with what the user says about them and wants filled in. */
public record LogSheetFiller(LogMap map, FillOptions options) implements SheetFiller {

  @Override
  public Understanding understand(Grid grid) {
    return LogReader.understand(grid, map);
  }

  @Override
  public Filling fill(Grid grid, Understanding understanding) {
    return LogFiller.fill(grid, understanding, options);
  }
}
