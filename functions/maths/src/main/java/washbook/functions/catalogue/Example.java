package washbook.functions.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import washbook.functions.Answer;
import washbook.functions.Numbers;
import washbook.functions.Sentence;
import washbook.functions.catalogue.Parameter.Kind;
import washbook.functions.quantity.UnitWords;

/**
 * A function's worked example as a spreadsheet shows it.
 *
 * @param formula with the prefix; ranges as references
 * @param cells what stands in those references, or ""
 * @param command the same call on the command line
 * @param answer what it gives, with its unit
 */
public record Example(String formula, String cells, String command, String answer) {

  public static Example of(CatalogueFunction function) {
    return of(function, "en");
  }

  /**
   * Units and answers that have words in them in another language; numbers have a point in all.
   *
   * @param language its code of ISO 639, such as {@code de}
   */
  public static Example of(CatalogueFunction function, String language) {
    List<String> words = function.example();
    StringJoiner arguments = new StringJoiner("; ", "(", ")");
    List<String> cells = new ArrayList<>();
    for (int i = 0; i < words.size(); i++) {
      Parameter parameter =
          function.parameters().get(Math.min(i, function.parameters().size() - 1));
      String word = words.get(i);
      if (parameter.kind() == Kind.NUMBERS) {
        String range = range((char) ('A' + cells.size()), word);
        cells.add(word.replace(",", ", ") + " in " + range);
        arguments.add(range);
      } else {
        arguments.add(
            word.equals("-") ? "" : Numbers.parse(word) == null ? "\"" + word + "\"" : word);
      }
    }
    return new Example(
        "=" + ReferencePage.PREFIX + function.name() + arguments,
        String.join(" and ", cells),
        "washbook calc " + function.name() + " " + String.join(" ", words),
        answer(function, language));
  }

  private static String range(char column, String word) {
    int count = word.split(",", -1).length;
    return count == 1 ? column + "2" : column + "2:" + column + (count + 1);
  }

  private static String answer(CatalogueFunction function, String language) {
    Answer answer = function.call(CommandWords.read(function, function.example()));
    if (answer instanceof Answer.Number number) {
      String unit = unit(function);
      int digits = unit.equals("SG") ? 5 : unit.equals("%") ? 2 : 3;
      Object shown = UnitWords.of(unit) instanceof Sentence words ? words.in(language) : unit;
      return String.format(Locale.ROOT, "%." + digits + "f %s", number.value(), shown).strip();
    }
    if (answer instanceof Answer.Text text) {
      return text.text();
    }
    return (answer instanceof Answer.Told told ? told.told() : ((Answer.Refusal) answer).told())
        .in(language);
  }

  /** A conversion's unit is its last word. */
  private static String unit(CatalogueFunction function) {
    return function.resultUnit().isEmpty()
        ? function.example().get(function.example().size() - 1)
        : function.resultUnit();
  }
}
