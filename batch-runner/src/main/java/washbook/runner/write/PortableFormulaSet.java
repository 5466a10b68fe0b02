package washbook.runner.write;

import static washbook.runner.file.UnusableFileException.message;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import washbook.functions.Answer;
import washbook.functions.portable.FormulaRewriter;
import washbook.functions.portable.FormulaRewriter.Rewritten;
import washbook.functions.portable.FormulaSyntax;
import washbook.functions.portable.WholeCall;
import washbook.log.language.Message;
import washbook.runner.sheet.PortableResult;
import washbook.runner.write.FormulaCell.Place;

/** The pack formulas of one workbook: what becomes of each, and what the new ones give. */
final class PortableFormulaSet {
  /** A cell of this or another sheet, in either syntax. */
  private static final Pattern CELL =
      Pattern.compile(
          "\\[?\\$?(?:(?<sheet>'(?:[^']|'')+'|[\\p{L}_][\\p{L}\\p{N}_]*)[!.]|\\.)?"
              + "\\$?(?<column>[A-Za-z]{1,3})\\$?(?<row>\\d{1,7})\\]?");

  /** The stored values of the workbook. */
  interface Values {
    /** Double, String, or null for a blank cell; empty when there is no telling. */
    Optional<Object> at(Place place);
  }

  private final FormulaRewriter rewriter;
  private final Map<Place, FormulaCell> cells = new HashMap<>();
  private final List<PortableResult.Left> left = new ArrayList<>();
  private final Map<Place, Optional<Answer>> answers = new HashMap<>();
  private final Set<Place> underway = new HashSet<>();

  PortableFormulaSet(FormulaSyntax syntax) {
    this.rewriter = new FormulaRewriter(syntax);
  }

  /** Takes note of a formula, if it has calls of the pack. */
  void add(Place place, String formula) {
    if (FormulaRewriter.concerns(formula)) {
      Rewritten rewritten = rewriter.rewrite(formula);
      cells.put(place, new FormulaCell(place, formula, rewritten.text()));
      rewritten.left().forEach(why -> leave(place, message("plain", why)));
    }
  }

  /** The same for the formula of an array, whose stored results stay. */
  void addArray(Place place, String formula) {
    if (FormulaRewriter.concerns(formula)) {
      Rewritten rewritten = rewriter.rewriteArray(formula);
      cells.put(place, new FormulaCell(place, formula, rewritten.text()));
      answers.put(place, Optional.empty());
      rewritten.left().forEach(why -> leave(place, message("plain", why)));
    }
  }

  void leave(Place place, Message why) {
    leave(message("plain", place.toString()), why);
  }

  void leave(Message where, Message why) {
    left.add(new PortableResult.Left(where, why));
  }

  /** The formula that takes the place of the one there, if another does. */
  Optional<String> replacement(Place place) {
    return Optional.ofNullable(cells.get(place))
        .filter(FormulaCell::isChanged)
        .map(FormulaCell::text);
  }

  /** The formulas that take the place of others, without the cells that they name. */
  Set<String> shapes() {
    return cells.values().stream()
        .filter(FormulaCell::isChanged)
        .map(cell -> shape(cell.text()))
        .collect(Collectors.toSet());
  }

  /** A formula without the cells that it names. */
  static String shape(String formula) {
    return CELL.matcher(formula).replaceAll("#");
  }

  /** Puts the portable formula in where there is one for the cell. */
  void replace(Place place, ReplaceableFormula cell, Values values) throws IOException {
    Optional<String> text = replacement(place);
    if (text.isPresent()) {
      cell.replace(text.get(), answer(place, values));
    }
  }

  PortableResult result() {
    return new PortableResult(
        (int) cells.values().stream().filter(FormulaCell::isChanged).count(), List.copyOf(left));
  }

  /** What a replaced formula gives; empty when it is more than one call over cells. */
  Optional<Answer> answer(Place place, Values values) {
    Optional<Answer> known = answers.get(place);
    if (known == null && underway.add(place)) {
      known = compute(place, values);
      underway.remove(place);
      answers.put(place, known);
    }
    return known == null ? Optional.empty() : known;
  }

  private Optional<Answer> compute(Place place, Values values) {
    Optional<WholeCall> call = rewriter.whole(cells.get(place).old());
    if (call.isEmpty()) {
      return Optional.empty();
    }
    List<Object> arguments = new ArrayList<>();
    for (String text : call.get().cells()) {
      Optional<Place> cell = cell(text, place.sheet());
      if (cell.isEmpty()) {
        return Optional.empty();
      }
      if (replacement(cell.get()).isPresent()) {
        Optional<Answer> inner = answer(cell.get(), values);
        if (inner.isEmpty() || inner.get() instanceof Answer.Refusal) {
          return inner;
        }
        arguments.add(inner.get() instanceof Answer.Number n ? (Object) n.value() : null);
      } else {
        Optional<Object> value = values.at(cell.get());
        if (value.isEmpty()) {
          return Optional.empty();
        }
        arguments.add(value.get().equals("") ? null : value.get());
      }
    }
    return Optional.of(call.get().answer(arguments));
  }

  private static Optional<Place> cell(String text, String sheet) {
    Matcher cell = CELL.matcher(text);
    if (!cell.matches()) {
      return Optional.empty();
    }
    String other = cell.group("sheet");
    if (other != null && other.startsWith("'")) {
      other = other.substring(1, other.length() - 1).replace("''", "'");
    }
    int column = 0;
    for (char c : cell.group("column").toUpperCase(Locale.ROOT).toCharArray()) {
      column = column * 26 + (c - 'A' + 1);
    }
    return Optional.of(
        new Place(
            other == null ? sheet : other, Integer.parseInt(cell.group("row")) - 1, column - 1));
  }
}
