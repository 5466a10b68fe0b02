package washbook.runner.run;

import washbook.log.Understanding;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.LogFiller;
import washbook.log.language.Language;
import washbook.log.sheet.Grid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Fermentation logs, with what the user says about them and wants filled in. */
public record LogSheetFiller(LogMap map, FillOptions options) implements SheetFiller {

  @Override
  public Understanding understand(Grid grid) {
    return SheetUnderstanding.understand(grid, map);
  }

  @Override
  public Filling fill(Grid grid, Understanding understanding) {
    return LogFiller.fill(grid, understanding, options);
  }

  @Override
  public Language messages() {
    return options.userLanguage();
  }
}
