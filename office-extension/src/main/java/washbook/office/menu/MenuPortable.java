package washbook.office.menu;

import java.util.List;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.office.dialog.Outcome;
import washbook.office.dialog.Windows;
import washbook.office.language.MenuText;
import washbook.office.language.OfficeText;

/** Puts plain arithmetic in the place of our functions, in all sheets of the document. */
record MenuPortable(OpenSheet sheet, Windows windows) {
  private static final int MOST_TOLD = 20;

  Outcome run() {
    Language language = windows.language();
    sheet.requireChangeable();
    FormulaCells found = FormulaCells.of(sheet);
    String story = story(found, language);
    if (found.changes().isEmpty()) {
      return Outcome.failed(story);
    }
    if (!windows.agrees(story)) {
      return Outcome.calledOff(language);
    }
    sheet.inOneStep(
        MenuText.of("menu.portable", language), () -> found.changes().forEach(Runnable::run));
    return Outcome.done(
        windows.shown() ? OfficeText.of("portable.done", found.cells()).in(language) : story);
  }

  private static String story(FormulaCells found, Language language) {
    StringBuilder text = new StringBuilder();
    text.append(
        (found.changes().isEmpty()
                ? OfficeText.of("portable.nothing")
                : OfficeText.of("portable.found", found.calls(), found.cells()))
            .in(language));
    tell("portable.becomes", found.ranges(), language, text);
    tell("portable.stays", found.left(), language, text);
    return text.toString();
  }

  private static void tell(String key, List<?> lines, Language language, StringBuilder text) {
    for (int i = 0; i < Math.min(lines.size(), MOST_TOLD); i++) {
      text.append('\n').append(OfficeText.of(key, lines.get(i)).in(language));
    }
    if (lines.size() > MOST_TOLD) {
      Message more = OfficeText.of("more", lines.size() - MOST_TOLD);
      text.append('\n').append(more.in(language));
    }
  }
}
