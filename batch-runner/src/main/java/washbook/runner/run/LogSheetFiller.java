package washbook.runner.run;

import java.io.IOException;
import java.nio.file.Path;
import washbook.log.Understanding;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.LogFiller;
import washbook.log.language.Language;
import washbook.log.sheet.Grid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
import washbook.runner.ask.MapBeside;

/** Fermentation logs, with what the user says about them and wants filled in. */
public record LogSheetFiller(LogMap map, String mapBeside, FillOptions options)
    implements SheetFiller {

  /**
   * @param map what the user names; while it says nothing the map beside each log is used
   */
  public LogSheetFiller(LogMap map, FillOptions options) {
    this(map, null, options);
  }

  @Override
  public LogSheetFiller beside(Path file) throws IOException {
    MapBeside found = MapBeside.of(file, map);
    return new LogSheetFiller(found.map(), found.name(), options);
  }

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
