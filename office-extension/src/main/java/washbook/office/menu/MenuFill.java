package washbook.office.menu;

import washbook.log.Understanding;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.FormulaStyle;
import washbook.log.fill.LogFiller;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;

/** Fills the computed columns of the log in the sheet in front. */
record MenuFill(OpenSheet sheet, Windows windows, Command command) {

  Outcome run() {
    sheet.requireWritable();
    CalcGrid grid = CalcGrid.of(sheet);
    Understanding understanding = SheetUnderstanding.understand(grid, LogMap.none());
    Filling filling = LogFiller.fill(grid, understanding, FillOptions.usual());
    String story = Story.of(understanding, filling);
    if (understanding.isEmpty()) {
      return Outcome.failed(
          "No table of readings was recognised in the sheet "
              + sheet.name()
              + ": there is no row of headers with a gravity among them.");
    }
    if (filling.patch().columns().isEmpty()) {
      return Outcome.failed(story);
    }
    boolean formulas = command.writesFormulas() && sheet.keepsFormulas();
    if (command.asks()) {
      FillDialog.Choice choice = new FillDialog(windows).ask(story, sheet.keepsFormulas());
      if (choice == FillDialog.Choice.CANCEL) {
        return Outcome.calledOff();
      }
      formulas = choice == FillDialog.Choice.FORMULAS;
    }
    boolean withFormulas = formulas;
    Filling wanted =
        formulas
            ? LogFiller.fill(
                grid,
                understanding,
                new FillOptions(FillOptions.usual().columns(), FormulaStyle.PACK))
            : filling;
    sheet.inOneStep(
        "Fill this log", () -> new PatchWriter(sheet, grid, withFormulas).write(wanted.patch()));
    return Outcome.done(command.asks() ? "The log is filled. " + Story.counts(wanted) : story);
  }
}
