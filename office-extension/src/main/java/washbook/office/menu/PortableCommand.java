package washbook.office.menu;

import java.util.List;

/** Puts plain arithmetic in the place of our functions, in all sheets of the document. */
record PortableCommand(OpenSheet sheet, Windows windows) {
  private static final int MOST_TOLD = 20;

  Outcome run() {
    sheet.requireChangeable();
    FormulaCells found = FormulaCells.of(sheet);
    String story = story(found);
    if (found.changes().isEmpty()) {
      return Outcome.failed(story);
    }
    if (!windows.agrees(story)) {
      return Outcome.calledOff();
    }
    sheet.inOneStep("Make this workbook portable", () -> found.changes().forEach(Runnable::run));
    return Outcome.done(
        windows.shown()
            ? "Cells that hold plain arithmetic now: " + found.changes().size() + "."
            : story);
  }

  private static String story(FormulaCells found) {
    StringBuilder text = new StringBuilder();
    text.append(
        found.changes().isEmpty()
            ? "No call of a Washbook function can be made portable here."
            : "Calls of Washbook functions that become plain arithmetic: "
                + found.calls()
                + " (cells: "
                + found.changes().size()
                + "). They then recalculate without the extension, within the error that the"
                + " reference page states.");
    List<String> left = found.left();
    for (int i = 0; i < Math.min(left.size(), MOST_TOLD); i++) {
      text.append("\nStays: ").append(left.get(i));
    }
    if (left.size() > MOST_TOLD) {
      text.append("\n... and ").append(left.size() - MOST_TOLD).append(" more.");
    }
    return text.toString();
  }
}
