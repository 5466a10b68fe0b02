package washbook.runner.card;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import washbook.functions.Numbers;
import washbook.log.fill.FormulaStyle;
import washbook.log.sheet.CellAddress;
import washbook.runner.card.Card.Kind;
import washbook.runner.card.Card.Setting;
import washbook.runner.card.CardTable.Column;

/** Where everything of a card stands in a sheet. Formulas have their cells in square brackets. */
final class CardLayout {
  /** How a cell looks. */
  enum Look {
    TITLE,
    NOTE,
    LABEL,
    /** To type into. */
    INPUT,
    SETTING,
    CAPTION,
    HEAD,
    ROW,
    VALUE
  }

  /**
   * One cell.
   *
   * @param number NaN where it is a text
   * @param formula without an equals sign, or ""
   */
  record Placed(
      int column,
      Look look,
      String text,
      double number,
      int decimals,
      boolean signed,
      String formula) {

    static Placed text(int column, Look look, String text) {
      return new Placed(column, look, text, Double.NaN, 0, false, "");
    }

    static Placed number(int column, Look look, double number, int decimals) {
      return new Placed(column, look, "", number, decimals, false, "");
    }
  }

  /**
   * One row.
   *
   * @param lines how many lines of text high
   * @param across whether its only cell goes over all columns
   * @param newPage whether it begins a page
   */
  record Line(List<Placed> cells, int lines, boolean across, boolean newPage) {}

  private static final String MISSING =
      "IF(ISERROR(WASHBOOK.CONVERT(1.05,\"SG\",\"BRIX\")),\"%s\",\"\")";
  private static final double CHARACTER_MM = 1.65;

  /**
   * Of the page's width. An office that lacks a workbook's font makes its columns wider, and prints
   * all smaller so that they fit: letters of ten points had 7.7 where the whole width was used.
   */
  private static final double USED = 0.87;

  private final Card card;
  private final boolean live;
  private final double widthMm;
  private final List<Line> lines = new ArrayList<>();
  private final Map<String, String> cells = new HashMap<>();

  /**
   * @param style what the cells hold; plain formulas are written as calls, to be turned
   */
  CardLayout(Card card, Paper paper, FormulaStyle style) {
    this.card = card;
    live = style != FormulaStyle.VALUES;
    // The plain formula of an alcoholometer grows too long for a cell when it asks a cell for this.
    boolean fixed = style == FormulaStyle.PORTABLE && card.kind() == Kind.ALCOHOLOMETER;
    widthMm = (paper.width() - 2 * Paper.MARGIN) * USED;
    one(Placed.text(0, Look.TITLE, card.title()), 1);
    across(card.purpose());
    if (style == FormulaStyle.PACK) {
      String missing = MISSING.formatted(card.words().say("card.missing"));
      Placed check = new Placed(0, Look.CAPTION, "", Double.NaN, 0, false, missing);
      lines.add(new Line(List.of(check), 1, true, false));
    }
    for (Setting setting : card.settings()) {
      cells.put(
          setting.name(),
          fixed ? Numbers.show(setting.value()) : "[$B$" + (lines.size() + 1) + "]");
      lines.add(
          new Line(
              List.of(
                  Placed.text(0, Look.LABEL, setting.label()),
                  Placed.number(
                      1,
                      live && !fixed ? Look.INPUT : Look.SETTING,
                      setting.value(),
                      setting.decimals()),
                  Placed.text(2, Look.LABEL, setting.unit())),
              1,
              false,
              false));
    }
    card.notes().forEach(this::across);
    for (CardTable table : card.tables()) {
      table(table);
    }
  }

  List<Line> lines() {
    return lines;
  }

  int columns() {
    return 1 + card.tables().stream().mapToInt(table -> table.columns().size()).max().orElse(0);
  }

  /** Width of the first column, mm. */
  double firstMm() {
    return 26;
  }

  /** Width of each other column, mm. */
  double otherMm() {
    return Math.min(30, (widthMm - firstMm()) / (columns() - 1));
  }

  /** The row of the only table's heads, which every page repeats; -1 where a table fits a page. */
  int repeatedRow() {
    CardTable only = card.tables().get(0);
    return card.tables().size() == 1 && only.across().isEmpty()
        ? lines.size() - only.rows().length - 1
        : -1;
  }

  private void one(Placed cell, int high) {
    lines.add(new Line(List.of(cell), high, true, false));
  }

  private void across(String text) {
    double width = firstMm() + otherMm() * (columns() - 1);
    int high = Drawing.wrapped(text, width, CHARACTER_MM / 0.55).size();
    one(Placed.text(0, Look.NOTE, text), high);
  }

  private void table(CardTable table) {
    boolean begins = table != card.tables().get(0);
    if (!table.title().isEmpty()) {
      String title = card.words().say("card.across", table.title(), table.across());
      Placed caption = Placed.text(0, Look.CAPTION, title);
      lines.add(new Line(List.of(caption), 1, true, begins));
    }
    int headRow = lines.size() + 1;
    List<Placed> heads = new ArrayList<>();
    heads.add(Placed.text(0, Look.HEAD, table.corner()));
    int high = 1;
    for (Column column : table.columns()) {
      boolean words = !column.head().isEmpty();
      high = words ? 4 : high;
      heads.add(
          words
              ? Placed.text(heads.size(), Look.HEAD, column.head())
              : Placed.number(heads.size(), Look.HEAD, column.reading(), column.headDecimals()));
    }
    lines.add(new Line(heads, high, false, false));
    for (int row = 0; row < table.rows().length; row++) {
      lines.add(new Line(values(table, row, headRow), 1, false, false));
    }
  }

  private List<Placed> values(CardTable table, int row, int headRow) {
    List<Placed> values = new ArrayList<>();
    values.add(Placed.number(0, Look.ROW, table.rows()[row], table.rowDecimals()));
    for (Column column : table.columns()) {
      int at = values.size();
      double exact = column.values()[row];
      double value = column.signed() ? CardNumber.round(exact, column.decimals()) : exact;
      values.add(
          new Placed(
              at,
              Look.VALUE,
              Double.isNaN(value) ? CardTable.OUTSIDE : "",
              value,
              column.decimals(),
              column.signed(),
              live ? formula(column, at, headRow) : ""));
    }
    return values;
  }

  /** What is outside the valid range shows the same sign as on paper. */
  private String formula(Column of, int column, int headRow) {
    String formula =
        of.formula()
            .replace("{row}", "[$A" + (lines.size() + 1) + "]")
            .replace("{head}", "[" + CellAddress.letters(column) + "$" + headRow + "]");
    for (Map.Entry<String, String> cell : cells.entrySet()) {
      formula = formula.replace("{" + cell.getKey() + "}", cell.getValue());
    }
    // A correction next to nothing would be shown as minus zero.
    String shown = of.signed() ? "ROUND(" + formula + "," + of.decimals() + ")" : formula;
    return "IFERROR(" + shown + ",\"" + CardTable.OUTSIDE + "\")";
  }
}
