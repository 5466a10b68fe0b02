package washbook.office.menu;

import com.sun.star.awt.PushButtonType;
import com.sun.star.awt.XControlContainer;
import com.sun.star.awt.XRadioButton;
import com.sun.star.awt.XTextComponent;
import com.sun.star.uno.UnoRuntime;
import java.util.List;
import java.util.Optional;
import washbook.log.Doubt;
import washbook.log.MapAnswer;
import washbook.log.answer.Questions;
import washbook.log.language.Message;
import washbook.log.language.ToldException;
import washbook.log.sheet.Grid;
import washbook.log.understand.LogMap;
import washbook.office.language.OfficeText;

/**
 * Asks each open question of a sheet in a dialog of its own, with its answers and what would follow
 * from each, as the command line does.
 */
record QuestionDialog(Windows windows) {
  private static final int WIDTH = 300;
  private static final int MARGIN = 8;
  private static final int QUESTION = 60;
  private static final int ANSWER = 24;

  /** The map with the answers, that of {@code map} where nothing was answered. */
  LogMap ask(Grid grid, LogMap map) {
    Questions questions = new Questions(grid, map);
    Optional<Doubt> open = questions.next();
    while (open.isPresent()) {
      if (!answered(questions, grid.name(), open.get())) {
        questions.leave(open.get());
      }
      open = questions.next();
    }
    return questions.map();
  }

  private boolean answered(Questions questions, String sheet, Doubt doubt) {
    if (doubt.answers().isEmpty()) {
      return false;
    }
    String problem = "";
    while (true) {
      List<String> lines = lines(questions, sheet, doubt, problem);
      if (lines.isEmpty()) {
        return false;
      }
      try {
        questions.take(doubt, lines);
        return true;
      } catch (ToldException noStatement) {
        problem = noStatement.told().in(windows.language()) + "\n";
      }
    }
  }

  /** The statements of the answer that was given; none where the question was left open. */
  private List<String> lines(Questions questions, String sheet, Doubt doubt, String problem) {
    Object model = windows.service("com.sun.star.awt.UnoControlDialogModel");
    List<MapAnswer> answers = doubt.answers();
    int width = WIDTH - 2 * MARGIN;
    try {
      FillDialog.set(model, 0, 0, WIDTH, QUESTION + 62 + ANSWER * answers.size());
      FillDialog.set(model, "Title", say("dialog.question.title"));
      String asked = say("dialog.question", sheet, doubt.cell(), doubt.asked());
      Object question =
          FillDialog.add(
              model, "question", "Edit", MARGIN, 6, width, QUESTION - 8, "Text", problem + asked);
      FillDialog.set(question, "MultiLine", true);
      FillDialog.set(question, "ReadOnly", true);
      FillDialog.set(question, "VScroll", true);
      int y = QUESTION;
      for (int i = 0; i < answers.size(); i++) {
        Message follows = questions.consequence(doubt, answers.get(i));
        String label = answers.get(i).told().in(windows.language());
        Object answer =
            FillDialog.add(
                model,
                "answer" + i,
                "RadioButton",
                MARGIN,
                y,
                width,
                ANSWER - 2,
                "Label",
                follows.isBlank() ? label : label + "\n" + follows.in(windows.language()));
        FillDialog.set(answer, "MultiLine", true);
        y += ANSWER;
      }
      FillDialog.add(
          model, "ownLabel", "FixedText", MARGIN, y, width, 10, "Label", say("dialog.own"));
      FillDialog.add(model, "own", "Edit", MARGIN, y + 12, width, 14, "Text", "");
      buttons(model, y + 34);
      return new FillDialog(windows)
          .execute(model, controls -> given(controls, answers))
          .orElse(List.of());
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.dialog", e);
    }
  }

  private void buttons(Object model, int y) throws com.sun.star.uno.Exception {
    Object leave =
        FillDialog.add(model, "leave", "Button", 142, y, 72, 16, "Label", say("dialog.leave"));
    FillDialog.set(leave, "PushButtonType", (short) PushButtonType.CANCEL_value);
    Object take =
        FillDialog.add(model, "take", "Button", 220, y, 72, 16, "Label", say("dialog.take"));
    FillDialog.set(take, "PushButtonType", (short) PushButtonType.OK_value);
    FillDialog.set(take, "DefaultButton", true);
  }

  /** What was typed, else the answer that was chosen, else nothing. */
  private static List<String> given(XControlContainer controls, List<MapAnswer> answers) {
    String typed =
        UnoRuntime.queryInterface(XTextComponent.class, controls.getControl("own")).getText();
    if (!typed.isBlank()) {
      return Questions.lines(typed);
    }
    for (int i = 0; i < answers.size(); i++) {
      Object answer = controls.getControl("answer" + i);
      if (UnoRuntime.queryInterface(XRadioButton.class, answer).getState()) {
        return answers.get(i).lines();
      }
    }
    return List.of();
  }

  private String say(String key, Object... arguments) {
    return OfficeText.of(key, arguments).in(windows.language());
  }
}
