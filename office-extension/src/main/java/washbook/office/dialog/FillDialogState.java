package washbook.office.dialog;

import com.sun.star.awt.ActionEvent;
import com.sun.star.awt.ItemEvent;
import com.sun.star.awt.XActionListener;
import com.sun.star.awt.XButton;
import com.sun.star.awt.XCheckBox;
import com.sun.star.awt.XControl;
import com.sun.star.awt.XControlContainer;
import com.sun.star.awt.XItemListener;
import com.sun.star.awt.XListBox;
import com.sun.star.awt.XRadioButton;
import com.sun.star.lang.EventObject;
import com.sun.star.lib.uno.helper.WeakBase;
import com.sun.star.uno.UnoRuntime;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import washbook.log.ComputedColumn;
import washbook.log.fill.FillOptions;
import washbook.log.fill.FormulaStyle;
import washbook.log.language.Language;

/** What is chosen in the dialog now; after each change it shows what would follow. */
final class FillDialogState extends WeakBase implements XItemListener, XActionListener {
  /** Lines of text above the story, each as wide as that many letters at least. */
  static final int PREVIEW_LINES = 5;

  private static final int LINE_LETTERS = 95;

  private final Language language;
  private final Object model;
  private final List<Choices> columns;
  private final List<ComputedColumn> ticks;
  private final int pages;
  private XControlContainer controls;
  private FillTrial trial;
  private int page = 1;
  private boolean isShowing;
  private Throwable trouble;

  /** A column of the log with what it may be taken for, in the order of its list. */
  record Choices(FillTrial.Place place, List<ColumnChoice> choices) {}

  FillDialogState(
      Language language,
      Object model,
      FillTrial first,
      List<Choices> columns,
      List<ComputedColumn> ticks,
      int pages) {
    this.language = language;
    this.model = model;
    this.trial = first;
    this.columns = List.copyOf(columns);
    this.ticks = List.copyOf(ticks);
    this.pages = pages;
  }

  /** Listens to the controls and shows what would be done as it stands. */
  void begin(XControlContainer made) {
    controls = made;
    for (int i = 0; i < columns.size(); i++) {
      control("column" + i, XListBox.class).addItemListener(this);
    }
    ticks.forEach(tick -> control(tick.name(), XCheckBox.class).addItemListener(this));
    for (FormulaStyle style : FormulaStyle.values()) {
      control(style.name(), XRadioButton.class).addItemListener(this);
    }
    if (pages > 1) {
      control("more", XButton.class).addActionListener(this);
    }
    show();
  }

  /** What was chosen at last. */
  FillTrial end() {
    if (trouble != null) {
      throw StoppedException.after(trouble, "nothing.written");
    }
    return trial;
  }

  /** Nothing may be thrown into the office's own loop: it would be gone without a word. */
  @Override
  public void itemStateChanged(ItemEvent event) {
    if (isShowing) {
      return;
    }
    try {
      FillTrial before = trial;
      take();
      // A button that another takes the place of tells of it too.
      if (trial != before || trouble != null) {
        trouble = null;
        show();
      }
    } catch (Throwable thrown) {
      trouble = thrown;
      story(Trouble.of(thrown).in(language));
    }
  }

  @Override
  public void actionPerformed(ActionEvent event) {
    page = page % pages + 1;
    try {
      DialogForm.set(model, "Step", page);
    } catch (com.sun.star.uno.Exception e) {
      story(Trouble.of(e).in(language));
    }
  }

  @Override
  public void disposing(EventObject gone) {
    // The dialog ends, and this with it.
  }

  private void take() {
    FillTrial taken = trial;
    List<FillTrial.Column> known = trial.columns();
    for (int i = 0; i < columns.size(); i++) {
      Choices column = columns.get(i);
      short selected = control("column" + i, XListBox.class).getSelectedItemPos();
      ColumnChoice chosen = column.choices().get(selected);
      if (selected != shown(column, known)) {
        taken = taken.with(column.place(), chosen);
      }
    }
    FillOptions options = options();
    trial = options.equals(taken.options()) ? taken : taken.with(options);
  }

  private FillOptions options() {
    Set<ComputedColumn> wanted = EnumSet.noneOf(ComputedColumn.class);
    wanted.addAll(trial.options().columns());
    for (ComputedColumn tick : ticks) {
      boolean on = control(tick.name(), XCheckBox.class).getState() == 1;
      if (on) {
        wanted.add(tick);
      } else {
        wanted.remove(tick);
      }
    }
    FillOptions before = trial.options();
    return new FillOptions(
        wanted, style(), before.scale(), before.language(), before.userLanguage(), before.notes());
  }

  private FormulaStyle style() {
    for (FormulaStyle style : FormulaStyle.values()) {
      if (control(style.name(), XRadioButton.class).getState()) {
        return style;
      }
    }
    return trial.options().style();
  }

  /** Where in its list stands what the column is taken for, -1 where it is in no table now. */
  private static int shown(Choices column, List<FillTrial.Column> known) {
    return known.stream()
        .filter(k -> k.place().key().equals(column.place().key()))
        .filter(k -> k.place().headerRow() == column.place().headerRow())
        .findFirst()
        .map(k -> column.choices().indexOf(ColumnChoice.of(k.column())))
        .orElse(-1);
  }

  private void show() {
    isShowing = true;
    try {
      List<FillTrial.Column> known = trial.columns();
      for (int i = 0; i < columns.size(); i++) {
        XListBox list = control("column" + i, XListBox.class);
        int wanted = shown(columns.get(i), known);
        if (wanted >= 0 && list.getSelectedItemPos() != wanted) {
          list.selectItemPos((short) wanted, true);
        }
      }
      set("fill", "Enabled", trial.fills());
    } finally {
      isShowing = false;
    }
    List<String> rows = FillPreview.of(trial, language).lines().toList();
    int above = above(rows);
    set("preview", "Label", String.join("\n", rows.subList(0, above)));
    StringBuilder story = new StringBuilder();
    rows.subList(above, rows.size()).forEach(row -> story.append(row).append('\n'));
    story(story + Story.of(trial.understanding(), trial.filling(), language));
  }

  /** How many rows stand above the story: those that have their place there. */
  private static int above(List<String> rows) {
    int lines = 0;
    int above = 0;
    for (String row : rows) {
      lines += 1 + row.length() / LINE_LETTERS;
      if (lines > PREVIEW_LINES) {
        break;
      }
      above++;
    }
    return above;
  }

  private void story(String text) {
    set("story", "Text", text);
  }

  private void set(String name, String property, Object value) {
    try {
      DialogForm.set(control(name, XControl.class).getModel(), property, value);
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.dialog", e);
    }
  }

  private <T> T control(String name, Class<T> type) {
    return UnoRuntime.queryInterface(type, controls.getControl(name));
  }
}
