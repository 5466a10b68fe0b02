package washbook.runner.season;

import org.apache.poi.ss.SpreadsheetVersion;
import org.apache.poi.ss.formula.FormulaParser;
import org.apache.poi.ss.formula.FormulaRenderer;
import org.apache.poi.ss.formula.FormulaShifter;
import org.apache.poi.ss.formula.FormulaType;
import org.apache.poi.ss.formula.ptg.Ptg;
import org.apache.poi.ss.formula.ptg.Pxg;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;
import org.apache.poi.xssf.usermodel.XSSFEvaluationWorkbook;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import washbook.runner.file.UnusableFileException;

/**
 * A cell in a column of the person's, on its way with its batch to another row.
 *
 * @param head of its column
 * @param value a number, a text, a truth value or null
 * @param formula null for none
 * @param row where it stood
 */
record OwnCell(String head, Object value, String formula, XSSFCellStyle style, int row) {

  static OwnCell of(String head, XSSFCell cell) {
    boolean formula = cell.getCellType() == CellType.FORMULA;
    CellType type = formula ? cell.getCachedFormulaResultType() : cell.getCellType();
    Object value =
        switch (type) {
          case NUMERIC -> cell.getNumericCellValue();
          case STRING -> cell.getStringCellValue();
          case BOOLEAN -> cell.getBooleanCellValue();
          default -> null;
        };
    return new OwnCell(
        head,
        value,
        formula ? cell.getCellFormula() : null,
        cell.getCellStyle(),
        cell.getRowIndex());
  }

  boolean isFormula() {
    return formula != null;
  }

  /** Puts it into its new place; a formula refers to the same batch as before. */
  void put(XSSFSheet sheet, XSSFRow to, int column) throws UnusableFileException {
    XSSFCell cell = to.createCell(column);
    cell.setCellStyle(style);
    if (value instanceof Double number) {
      cell.setCellValue(number);
    } else if (value instanceof String text) {
      cell.setCellValue(text);
    } else if (value instanceof Boolean truth) {
      cell.setCellValue(truth);
    }
    if (formula != null) {
      cell.setCellFormula(moved(sheet, to.getRowNum()));
      sheet.getWorkbook().setForceFormulaRecalculation(true);
    }
  }

  private String moved(XSSFSheet sheet, int to) throws UnusableFileException {
    int index = sheet.getWorkbook().getSheetIndex(sheet);
    XSSFEvaluationWorkbook names = XSSFEvaluationWorkbook.create(sheet.getWorkbook());
    try {
      Ptg[] parts = FormulaParser.parse(formula, names, FormulaType.CELL, index, row);
      FormulaShifter shifter =
          FormulaShifter.createForRowCopy(
              index, sheet.getSheetName(), row, row, to - row, SpreadsheetVersion.EXCEL2007);
      Ptg[] before = FormulaParser.parse(formula, names, FormulaType.CELL, index, row);
      if (!shifter.adjustFormula(parts, index)) {
        return formula;
      }
      for (int i = 0; i < parts.length; i++) {
        // What stands on another sheet does not move with the batch.
        if (before[i] instanceof Pxg other && !sheet.getSheetName().equals(other.getSheetName())) {
          parts[i] = before[i];
        }
      }
      return FormulaRenderer.toFormulaString(names, parts);
    } catch (RuntimeException unknown) {
      throw UnusableFileException.of("season.formula", UnusableFileException.quoted(head), row + 1);
    }
  }
}
