package washbook.functions.catalogue;

import java.util.List;

/** What stands before the functions on the reference page. */
final class ReferenceIntroduction {
  static final List<String> PARAGRAPHS =
      List.of(
          "Every function of Washbook, in the order of the work. In a cell each name has `WASHBOOK.`"
              + " before it; arguments in square brackets may be left out. Formulas are written here"
              + " with `;` between arguments, as LibreOffice Calc shows them; on the command line"
              + " `washbook calc` takes the same arguments with spaces between.",
          "Gravities are SG 20/20 (at 20 °C, water at 20 °C is 1), strengths are % vol at 20 °C,"
              + " litres are at 20 °C, temperatures are °C, unless an argument says otherwise.",
          "Nothing is guessed. A blank cell is not zero: where 0 is impossible it is taken for a"
              + " blank and refused. A value outside the range in an argument's table is refused, not"
              + " extrapolated. In a cell a refusal shows as an error; `WASHBOOK.REASON` with the"
              + " function's name and the same arguments says why in words.",
          "Figures marked *from memory* were written down without the document at hand; *common"
              + " practice, no source* marks a fact of the trade.");

  private ReferenceIntroduction() {}
}
