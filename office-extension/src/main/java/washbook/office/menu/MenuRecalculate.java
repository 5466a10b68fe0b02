package washbook.office.menu;

import com.sun.star.sheet.XCalculatable;
import washbook.log.language.Language;
import washbook.office.dialog.Outcome;
import washbook.office.language.OfficeText;

/**
 * Recalculates every formula of the document. The office attaches its thread to Java and detaches
 * it again for each call of a function, which is most of a call's cost. A command of ours runs in
 * Java already, so that its thread stays attached for all calls that it causes.
 */
record MenuRecalculate(OpenSheet sheet, Language language) {

  Outcome run() {
    sheet.document(XCalculatable.class).calculateAll();
    return Outcome.done(OfficeText.of("recalculate.done").in(language));
  }
}
