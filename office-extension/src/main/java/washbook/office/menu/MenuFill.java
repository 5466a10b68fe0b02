package washbook.office.menu;

import java.time.LocalDate;
import java.util.Optional;
import washbook.log.WarningLimits;
import washbook.log.answer.KeptAnswers;
import washbook.log.fill.FillOptions;
import washbook.log.fill.FormulaStyle;
import washbook.log.language.Language;
import washbook.log.overview.Overviews;
import washbook.log.understand.LogMap;
import washbook.office.dialog.FillDialog;
import washbook.office.dialog.FillTrial;
import washbook.office.dialog.Outcome;
import washbook.office.dialog.QuestionDialog;
import washbook.office.dialog.Story;
import washbook.office.dialog.Windows;
import washbook.office.language.MenuText;
import washbook.office.language.OfficeText;

/** Fills the computed columns of the log in the sheet in front. */
record MenuFill(OpenSheet sheet, Windows windows, Command command) {

  Outcome run() {
    sheet.requireWritable();
    CalcGrid grid = CalcGrid.of(sheet);
    DocumentAnswers document = new DocumentAnswers(sheet);
    LogMap kept = document.read();
    return command.asks() ? asked(grid, document, kept) : unasked(grid, kept);
  }

  private Outcome unasked(CalcGrid grid, LogMap kept) {
    FillTrial trial = FillTrial.of(grid, kept, options());
    String story =
        kept(kept) + Story.of(trial.understanding(), trial.filling(), windows.language());
    if (trial.understanding().isEmpty()) {
      return noTable();
    }
    if (!trial.fills()) {
      return Outcome.failed(story);
    }
    write(grid, trial);
    return Outcome.done(story);
  }

  /** Asks what is open, then shows what was understood, until nothing new is open. */
  private Outcome asked(CalcGrid grid, DocumentAnswers document, LogMap kept) {
    QuestionDialog questions = new QuestionDialog(windows, grid);
    FillDialog dialog = new FillDialog(windows, sheet.keepsFormulas());
    FillOptions options = options();
    LogMap answered = keep(document, kept, questions.ask(kept));
    while (true) {
      FillTrial trial = FillTrial.of(grid, answered, options);
      if (trial.understanding().isEmpty()) {
        return noTable();
      }
      Optional<FillTrial> wanted = dialog.ask(trial);
      if (wanted.isEmpty()) {
        return Outcome.calledOff(windows.language());
      }
      options = wanted.get().options();
      LogMap changed = wanted.get().map();
      LogMap more = questions.ask(changed);
      answered = keep(document, answered, more);
      if (more.equals(changed)) {
        write(grid, wanted.get());
        String counts = say("fill.done", Story.counts(wanted.get().filling()));
        boolean needsUs = options.style() == FormulaStyle.PACK;
        return Outcome.done(needsUs ? counts + "\n" + say("fill.pack") : counts);
      }
    }
  }

  private static LogMap keep(DocumentAnswers document, LogMap before, LogMap now) {
    if (!now.equals(before)) {
      document.write(now);
    }
    return now;
  }

  private FillOptions options() {
    Language language = windows.language();
    FillOptions usual =
        FillOptions.usual()
            .forUser(language)
            .noting(new Overviews(WarningLimits.usual(), LocalDate.now()));
    FillOptions wanted =
        command
            .columns()
            .map(
                columns ->
                    new FillOptions(
                        columns,
                        usual.style(),
                        usual.scale(),
                        usual.language(),
                        usual.userLanguage(),
                        usual.notes()))
            .orElse(usual);
    return sheet.keepsFormulas() ? wanted.as(command.style()) : wanted;
  }

  private void write(CalcGrid grid, FillTrial trial) {
    boolean formulas = trial.options().style() != FormulaStyle.VALUES;
    sheet.inOneStep(
        MenuText.of("menu.fill", windows.language()),
        () -> new PatchWriter(sheet, grid, formulas).write(trial.filling().patch()));
  }

  private Outcome noTable() {
    return Outcome.failed(say("fill.noTable", sheet.name()));
  }

  private String kept(LogMap answers) {
    return answers.isSilent() ? "" : say("fill.kept", KeptAnswers.PROPERTY) + "\n";
  }

  private String say(String key, Object... arguments) {
    return OfficeText.of(key, arguments).in(windows.language());
  }
}
