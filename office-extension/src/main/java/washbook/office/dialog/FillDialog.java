package washbook.office.dialog;

import com.sun.star.awt.PushButtonType;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import washbook.log.ComputedColumn;
import washbook.log.ComputedHeader;
import washbook.log.WrittenScale;
import washbook.log.fill.FormulaStyle;
import washbook.log.language.Language;
import washbook.office.language.OfficeText;

/**
 * Shows what each column of a log was taken for, what would be written and the first and last row
 * of it, before anything is written; all of that can be changed in it.
 */
public final class FillDialog {
  private static final int WIDTH = 440;
  private static final int MARGIN = 8;

  /** Of the part with the log's own columns, which stand in pairs. */
  private static final int LEFT = 284;

  private static final int ROW = 15;
  private static final int TICK = 11;
  private static final int ROWS = 6;

  /** Columns that are shown at once; a button leads on to more. */
  private static final int PAGE = 2 * ROWS;

  private static final int TOP = 18;

  private static final int PREVIEW = 9 * FillDialogState.PREVIEW_LINES;
  private static final int STORY = 70;

  private final Windows windows;
  private final boolean formulasPossible;

  /**
   * @param formulasPossible whether the document keeps formulas
   */
  public FillDialog(Windows windows, boolean formulasPossible) {
    this.windows = windows;
    this.formulasPossible = formulasPossible;
  }

  /** What the user wants; empty when the command was called off. */
  public Optional<FillTrial> ask(FillTrial first) {
    List<ComputedColumn> ticks = ticks(first);
    List<FillTrial.Column> columns = first.columns();
    int above = TOP + Math.max(ROWS * ROW + 4 * TICK, ticks.size() * TICK) + 6;
    DialogForm form = new DialogForm(windows);
    try {
      Object model = form.model(say("dialog.title"), WIDTH, above + 14 + PREVIEW + STORY + 26);
      List<FillDialogState.Choices> choices = columns(model, columns);
      styles(model, first.options().style(), TOP + ROWS * ROW);
      ticks(model, ticks, first);
      text(model, "heading", MARGIN, above, WIDTH - 2 * MARGIN, say("dialog.heading"));
      int width = WIDTH - 2 * MARGIN;
      Object preview =
          DialogForm.add(
              model, "preview", "FixedText", MARGIN, above + 11, width, PREVIEW, "Label", "");
      DialogForm.set(preview, "MultiLine", true);
      Object story =
          DialogForm.add(
              model, "story", "Edit", MARGIN, above + 13 + PREVIEW, width, STORY, "Text", "");
      DialogForm.set(story, "MultiLine", true);
      DialogForm.set(story, "ReadOnly", true);
      DialogForm.set(story, "VScroll", true);
      int pages = (columns.size() + PAGE - 1) / PAGE;
      buttons(model, above + 14 + PREVIEW + STORY + 4, pages > 1);
      DialogForm.set(model, "Step", 1);
      FillDialogState state =
          new FillDialogState(windows.language(), model, first, choices, ticks, pages);
      return form.execute(model, state::begin, controls -> state.end());
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.dialog", e);
    }
  }

  /** Each column of the log with a list of what it may be taken for. */
  private List<FillDialogState.Choices> columns(Object model, List<FillTrial.Column> columns)
      throws com.sun.star.uno.Exception {
    List<FillDialogState.Choices> all = new ArrayList<>();
    text(model, "columns", MARGIN, 5, LEFT, say("dialog.columns"));
    for (int i = 0; i < columns.size(); i++) {
      FillTrial.Column column = columns.get(i);
      int x = MARGIN + (i % PAGE / ROWS) * (LEFT / 2);
      int y = TOP + i % ROWS * ROW;
      String header = column.column().header().strip().replaceAll("\\s+", " ");
      Object label = text(model, "label" + i, x, y + 2, 52, column.place().cell() + "  " + header);
      ColumnChoice now = ColumnChoice.of(column.column());
      List<ColumnChoice> choices = now.withAll();
      String[] told = choices.stream().map(c -> c.told(windows.language())).toArray(String[]::new);
      Object list =
          DialogForm.add(model, "column" + i, "ListBox", x + 54, y, 82, 13, "StringItemList", told);
      DialogForm.set(list, "Dropdown", true);
      DialogForm.set(list, "LineCount", (short) 14);
      DialogForm.set(list, "SelectedItems", new short[] {(short) choices.indexOf(now)});
      DialogForm.set(list, "HelpText", column.column().why().in(windows.language()));
      DialogForm.set(label, "Step", 1 + i / PAGE);
      DialogForm.set(list, "Step", 1 + i / PAGE);
      all.add(new FillDialogState.Choices(column.place(), choices));
    }
    return all;
  }

  private void styles(Object model, FormulaStyle style, int y) throws com.sun.star.uno.Exception {
    text(model, "styles", MARGIN, y + 2, LEFT, say("dialog.style"));
    List<String> keys =
        formulasPossible
            ? List.of("dialog.numbers", "dialog.formulas", "dialog.portable")
            : List.of("dialog.numbers", "dialog.xls", "dialog.xls");
    for (FormulaStyle one : FormulaStyle.values()) {
      int at = one.ordinal();
      Object button =
          DialogForm.add(
              model,
              one.name(),
              "RadioButton",
              MARGIN,
              y + (at + 1) * TICK,
              LEFT,
              10,
              "Label",
              say(keys.get(at)));
      boolean possible = formulasPossible || one == FormulaStyle.VALUES;
      DialogForm.set(button, "Enabled", possible);
      DialogForm.set(button, "State", (short) (one == style ? 1 : 0));
    }
  }

  /**
   * The columns that can be computed for what the sheet holds, but those that come by themselves.
   */
  private static List<ComputedColumn> ticks(FillTrial trial) {
    boolean ferment = !trial.understanding().tables().isEmpty();
    boolean run = !trial.understanding().runs().isEmpty();
    return Arrays.stream(ComputedColumn.values())
        .filter(column -> column.isOfRun() ? run : ferment || !run)
        .filter(
            column ->
                switch (column) {
                  case FIRST_GRAVITY, SPECIFIC_GRAVITY, NOTE -> false;
                  case CHARGE_SHARE, CUT_STRENGTH, HEAD_STRENGTH -> false;
                  default -> true;
                })
        .toList();
  }

  private void ticks(Object model, List<ComputedColumn> ticks, FillTrial trial)
      throws com.sun.star.uno.Exception {
    int x = MARGIN + LEFT + 4;
    text(model, "ticks", x, 5, WIDTH - x - MARGIN, say("dialog.ticks"));
    int y = TOP;
    for (ComputedColumn column : ticks) {
      String title = title(column, trial);
      Object tick =
          DialogForm.add(
              model, column.name(), "CheckBox", x, y, WIDTH - x - MARGIN, 10, "Label", title);
      DialogForm.set(tick, "State", (short) (trial.options().columns().contains(column) ? 1 : 0));
      y += TICK;
    }
  }

  /** As the header will be. */
  private String title(ComputedColumn column, FillTrial trial) {
    Language language = windows.language();
    return trial.filling().columns().stream()
        .filter(filled -> filled.column() == column)
        .findFirst()
        .map(filled -> ComputedHeader.title(column, filled.scale(), language))
        .orElseGet(() -> ComputedHeader.title(column, WrittenScale.SG, language));
  }

  private void buttons(Object model, int y, boolean more) throws com.sun.star.uno.Exception {
    if (more) {
      DialogForm.add(model, "more", "Button", MARGIN, y, 90, 16, "Label", say("dialog.more"));
    }
    Object cancel =
        DialogForm.add(
            model, "cancel", "Button", WIDTH - 124, y, 56, 16, "Label", say("dialog.cancel"));
    DialogForm.set(cancel, "PushButtonType", (short) PushButtonType.CANCEL_value);
    Object fill =
        DialogForm.add(model, "fill", "Button", WIDTH - 64, y, 56, 16, "Label", say("dialog.fill"));
    DialogForm.set(fill, "PushButtonType", (short) PushButtonType.OK_value);
    DialogForm.set(fill, "DefaultButton", true);
  }

  private static Object text(Object model, String name, int x, int y, int width, String text)
      throws com.sun.star.uno.Exception {
    return DialogForm.add(model, name, "FixedText", x, y, width, 10, "Label", text);
  }

  private String say(String key) {
    return OfficeText.of(key).in(windows.language());
  }
}
