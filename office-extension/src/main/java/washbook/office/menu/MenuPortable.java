package washbook.office.menu;

import java.util.List;

/** Puts plain arithmetic in the place of our functions, in all sheets of the document. */
record MenuPortable(OpenSheet sheet, Windows windows) {
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
        windows.shown() ? "Cells that hold plain arithmetic now: " + found.cells() + "." : story);
  }

  private static String story(FormulaCells found) {
    StringBuilder text = new StringBuilder();
    text.append(
        found.changes().isEmpty()
            ? "No call of a Washbook function can be made portable here."
            : "Calls of Washbook functions that become plain arithmetic: "
                + found.calls()
                + " (cells: "
                + found.cells()
                + "). They then recalculate without the extension, within the error that the"
                + " reference page states.");
    tell("Becomes plain arithmetic: ", found.ranges(), text);
    tell("Stays: ", found.left(), text);
    return text.toString();
  }

  private static void tell(String what, List<String> lines, StringBuilder text) {
    for (int i = 0; i < Math.min(lines.size(), MOST_TOLD); i++) {
      text.append('\n').append(what).append(lines.get(i));
    }
    if (lines.size() > MOST_TOLD) {
      text.append("\n... and ").append(lines.size() - MOST_TOLD).append(" more.");
    }
  }
}
