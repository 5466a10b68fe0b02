package washbook.office.dialog;

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
public final class QuestionDialog {
  private static final int WIDTH = 300;
  private static final int MARGIN = 8;
  private static final int QUESTION = 60;
  private static final int ANSWER = 24;

  private final Windows windows;
  private final Grid grid;
  private Questions questions;

  public QuestionDialog(Windows windows, Grid grid) {
    this.windows = windows;
    this.grid = grid;
    this.questions = new Questions(grid, LogMap.none());
  }

  /**
   * The map with the answers, that of {@code map} where nothing was answered. What was left open
   * when this asked before is not asked again.
   */
  public LogMap ask(LogMap map) {
    questions = questions.over(map);
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
    List<MapAnswer> answers = doubt.answers();
    int width = WIDTH - 2 * MARGIN;
    try {
      Object model =
          new DialogForm(windows)
              .model(say("dialog.question.title"), WIDTH, QUESTION + 62 + ANSWER * answers.size());
      String asked = say("dialog.question", sheet, doubt.cell(), doubt.asked());
      Object question =
          DialogForm.add(
              model, "question", "Edit", MARGIN, 6, width, QUESTION - 8, "Text", problem + asked);
      DialogForm.set(question, "MultiLine", true);
      DialogForm.set(question, "ReadOnly", true);
      DialogForm.set(question, "VScroll", true);
      int y = QUESTION;
      for (int i = 0; i < answers.size(); i++) {
        Message follows = questions.consequence(doubt, answers.get(i));
        String label = answers.get(i).told().in(windows.language());
        Object answer =
            DialogForm.add(
                model,
                "answer" + i,
                "RadioButton",
                MARGIN,
                y,
                width,
                ANSWER - 2,
                "Label",
                follows.isBlank() ? label : label + "\n" + follows.in(windows.language()));
        DialogForm.set(answer, "MultiLine", true);
        y += ANSWER;
      }
      DialogForm.add(
          model, "ownLabel", "FixedText", MARGIN, y, width, 10, "Label", say("dialog.own"));
      DialogForm.add(model, "own", "Edit", MARGIN, y + 12, width, 14, "Text", "");
      buttons(model, y + 34);
      return new DialogForm(windows)
          .execute(model, controls -> given(controls, answers))
          .orElse(List.of());
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.dialog", e);
    }
  }

  private void buttons(Object model, int y) throws com.sun.star.uno.Exception {
    Object leave =
        DialogForm.add(model, "leave", "Button", 142, y, 72, 16, "Label", say("dialog.leave"));
    DialogForm.set(leave, "PushButtonType", (short) PushButtonType.CANCEL_value);
    Object take =
        DialogForm.add(model, "take", "Button", 220, y, 72, 16, "Label", say("dialog.take"));
    DialogForm.set(take, "PushButtonType", (short) PushButtonType.OK_value);
    DialogForm.set(take, "DefaultButton", true);
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
