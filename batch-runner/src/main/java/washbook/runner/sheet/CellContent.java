package washbook.runner.sheet;

/** What is to be in a cell: at most one of number (else NaN) and text (else null). */
public record CellContent(double number, String text, String formula) {
  public boolean isBlank() {
    return Double.isNaN(number) && text == null && formula == null;
  }
}
