package washbook.runner.batch;

import java.util.List;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.log.FillOptions;
import washbook.functions.log.Filling;
import washbook.functions.log.FormulaStyle;
import washbook.functions.log.Grid;
import washbook.functions.log.LogFiller;
import washbook.functions.log.LogMap;
import washbook.functions.log.LogReader;
import washbook.functions.log.Understanding;
import washbook.functions.portable.NotPortableException;
import washbook.functions.portable.PortableFormulas;

/** Fermentation logs, with what the user says about them and wants filled in. */
public record LogSheetFiller(LogMap map, FillOptions options) implements SheetFiller {

  @Override
  public Understanding understand(Grid grid) {
    return LogReader.understand(grid, map);
  }

  @Override
  public Filling fill(Grid grid, Understanding understanding) {
    return options.style() == FormulaStyle.PORTABLE
        ? LogFiller.fill(grid, understanding, options, LogSheetFiller::portable)
        : LogFiller.fill(grid, understanding, options);
  }

  /** Where there is no portable form the cell keeps its plain value. */
  private static String portable(String function, List<String> arguments) {
    try {
      return PortableFormulas.formula(Catalogue.get(function), arguments);
    } catch (NotPortableException noForm) {
      return null;
    }
  }
}
