package washbook.office.menu;

import java.time.LocalDate;
import washbook.log.Understanding;
import washbook.log.WarningLimits;
import washbook.log.answer.KeptAnswers;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.FormulaStyle;
import washbook.log.fill.LogFiller;
import washbook.log.language.Language;
import washbook.log.overview.Overviews;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
import washbook.office.language.MenuText;
import washbook.office.language.OfficeText;

/** Fills the computed columns of the log in the sheet in front. */
record MenuFill(OpenSheet sheet, Windows windows, Command command) {

  Outcome run() {
    sheet.requireWritable();
    Language language = windows.language();
    CalcGrid grid = CalcGrid.of(sheet);
    LogMap answers = answers(grid);
    Understanding understanding = SheetUnderstanding.understand(grid, answers);
    FillOptions options =
        FillOptions.usual()
            .forUser(language)
            .noting(new Overviews(WarningLimits.usual(), LocalDate.now()));
    Filling filling = LogFiller.fill(grid, understanding, options);
    String story = kept(answers) + Story.of(understanding, filling, language);
    if (understanding.isEmpty()) {
      return Outcome.failed(OfficeText.of("fill.noTable", sheet.name()).in(language));
    }
    if (filling.patch().columns().isEmpty()) {
      return Outcome.failed(story);
    }
    boolean formulas = command.writesFormulas() && sheet.keepsFormulas();
    if (command.asks()) {
      FillDialog.Choice choice = new FillDialog(windows).ask(story, sheet.keepsFormulas());
      if (choice == FillDialog.Choice.CANCEL) {
        return Outcome.calledOff(language);
      }
      formulas = choice == FillDialog.Choice.FORMULAS;
    }
    boolean withFormulas = formulas;
    Filling wanted =
        formulas ? LogFiller.fill(grid, understanding, options.as(FormulaStyle.PACK)) : filling;
    sheet.inOneStep(
        MenuText.of("menu.fill", language),
        () -> new PatchWriter(sheet, grid, withFormulas).write(wanted.patch()));
    return Outcome.done(
        command.asks() ? OfficeText.of("fill.done", Story.counts(wanted)).in(language) : story);
  }

  /** What the document keeps, with what is answered now, which is kept from here on. */
  private LogMap answers(CalcGrid grid) {
    DocumentAnswers document = new DocumentAnswers(sheet);
    LogMap kept = document.read();
    if (!command.asks()) {
      return kept;
    }
    LogMap answered = new QuestionDialog(windows).ask(grid, kept);
    if (!answered.equals(kept)) {
      document.write(answered);
    }
    return answered;
  }

  private String kept(LogMap answers) {
    return answers.isSilent()
        ? ""
        : OfficeText.of("fill.kept", KeptAnswers.PROPERTY).in(windows.language()) + "\n";
  }
}
