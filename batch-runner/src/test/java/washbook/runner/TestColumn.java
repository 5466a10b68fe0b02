package washbook.runner;

import java.util.List;
import java.util.Map;
import washbook.log.sheet.ColumnPatch;
import washbook.log.sheet.SheetPatch;

/** Columns with the content that a test gives them. */
public final class TestColumn implements ColumnPatch.Cells {
  private final Map<Integer, Object> content;
  private final Map<Integer, String> formulas;

  private TestColumn(Map<Integer, Object> content, Map<Integer, String> formulas) {
    this.content = content;
    this.formulas = formulas;
  }

  /** A column whose rows hold the numbers and texts given, and are blank elsewhere. */
  public static ColumnPatch of(
      int column, int headerRow, String header, int lastRow, int decimals, Map<Integer, Object> c) {
    return of(column, headerRow, header, lastRow, decimals, c, Map.of());
  }

  public static ColumnPatch of(
      int column,
      int headerRow,
      String header,
      int lastRow,
      int decimals,
      Map<Integer, Object> content,
      Map<Integer, String> formulas) {
    return new ColumnPatch(
        column,
        headerRow,
        header,
        headerRow + 1,
        lastRow,
        decimals,
        new TestColumn(content, formulas));
  }

  public static List<SheetPatch> on(String sheet, ColumnPatch... columns) {
    return List.of(new SheetPatch(sheet, List.of(columns)));
  }

  @Override
  public double number(int row) {
    return content.get(row) instanceof Number number ? number.doubleValue() : Double.NaN;
  }

  @Override
  public String text(int row) {
    return content.get(row) instanceof String text ? text : null;
  }

  @Override
  public String formula(int row) {
    return formulas.get(row);
  }
}
