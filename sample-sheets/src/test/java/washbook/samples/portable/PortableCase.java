package washbook.samples.portable;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;
import washbook.functions.portable.PortableFormulas;
import washbook.functions.portable.form.NotPortableException;
import washbook.functions.quantity.Quantity;

/**
 * One row of a sheet: arguments from column A on, and the portable formula over them.
 *
 * @param cells Double, String or null for a blank cell
 * @param formula without "="
 * @param expected what Java gives by the same steps
 */
record PortableCase(List<Object> cells, String formula, Answer expected) {
  static final int COLUMNS = 5;

  private static final Map<String, double[]> LIKELY =
      Map.of(
          "SG", new double[] {0.97, 1.4},
          "KGM3", new double[] {780, 1400},
          "OECHSLE", new double[] {-20, 400},
          "POINTS", new double[] {-20, 400},
          "GL", new double[] {-50, 1000},
          "PROOFUS", new double[] {-1, 200},
          "PROOFUK", new double[] {-1, 175});

  /** Cases of every portable function with every word: usual, blank, text, zero, out of range. */
  static List<PortableCase> all() throws NotPortableException {
    List<PortableCase> cases = new ArrayList<>();
    SplittableRandom random = new SplittableRandom(2026);
    for (CatalogueFunction function : Catalogue.all()) {
      if (function.portable()) {
        int perWords = function.name().equals("CONVERT") ? 3 : 60;
        for (List<String> words : words(function)) {
          for (int i = 0; i < perWords; i++) {
            cases.add(random(function, words, cases.size() + 1, i, random));
          }
        }
      }
    }
    return cases;
  }

  private static List<List<String>> words(CatalogueFunction function) {
    if (function.name().equals("CONVERT")) {
      List<List<String>> pairs = new ArrayList<>();
      List<String> words = function.parameters().get(1).words();
      for (String from : words) {
        for (String to : words) {
          if (isPossible(function, from, to)) {
            pairs.add(List.of(from, to));
          }
        }
      }
      return pairs;
    }
    List<Parameter> takingWords =
        function.parameters().stream().filter(p -> !p.words().isEmpty()).toList();
    List<String> usual = takingWords.stream().map(p -> p.words().get(0)).toList();
    List<List<String>> all = new ArrayList<>(List.of(usual));
    for (int i = 0; i < takingWords.size(); i++) {
      for (String word : takingWords.get(i).words().subList(1, takingWords.get(i).words().size())) {
        List<String> other = new ArrayList<>(usual);
        other.set(i, word);
        all.add(other);
      }
    }
    return all;
  }

  private static boolean isPossible(CatalogueFunction function, String from, String to) {
    return !(function.call(5.0, from, to) instanceof Answer.Refusal r)
        || r.code() != Answer.Code.UNKNOWN_WORD;
  }

  private static PortableCase random(
      CatalogueFunction function, List<String> words, int row, int number, SplittableRandom random)
      throws NotPortableException {
    Object[] cells = new Object[COLUMNS];
    List<String> arguments = new ArrayList<>();
    int word = 0;
    for (int i = 0; i < function.parameters().size(); i++) {
      Parameter parameter = function.parameters().get(i);
      if (!parameter.words().isEmpty()) {
        arguments.add('"' + words.get(word++) + '"');
      } else if (parameter.quantity() == Quantity.CALIBRATION_TEMPERATURE
          && function.name().equals("TRUESTRENGTH")) {
        cells[i] = Arrays.asList(20.0, 15.0, null, 17.0, "text").get(number / 4 % 5);
        arguments.add(List.of("", "15", "15.56", (char) ('A' + i) + "" + row).get(number % 4));
      } else {
        cells[i] = value(parameter, words, number, i, random);
        arguments.add((char) ('A' + i) + "" + row);
      }
    }
    if (number % 4 != 1 && arguments.size() > 1 && sameKind(function)) {
      // Usually the second value is the lower one; else nearly all would be refused.
      int high = function.name().equals("DILUTIONWATER") ? 1 : 0;
      if (cells[high] instanceof Double a && cells[high + 1] instanceof Double b && b > a) {
        cells[high] = b;
        cells[high + 1] = a;
      }
    }
    Answer expected =
        PortableFormulas.answer(function, arguments, cell -> cells[cell.charAt(0) - 'A']);
    return new PortableCase(
        Arrays.asList(cells), PortableFormulas.formula(function, arguments), expected);
  }

  private static boolean sameKind(CatalogueFunction function) {
    List<Parameter> parameters = function.parameters();
    return function.name().equals("DILUTIONWATER")
        || parameters.size() >= 2
            && parameters.get(1).quantity() == Quantity.GRAVITY
            && parameters.get(0).quantity() == Quantity.ORIGINAL_GRAVITY;
  }

  private static Object value(
      Parameter parameter, List<String> words, int number, int index, SplittableRandom random) {
    int odd = number % 20;
    if (odd == 5 + 2 * index) {
      return null;
    }
    if (odd == 6 + 2 * index) {
      return index % 2 == 0 ? "text" : 0.0;
    }
    Quantity quantity = parameter.quantity();
    double[] range = {quantity.min(), quantity.max()};
    if (quantity == Quantity.ANY) {
      range = LIKELY.getOrDefault(words.get(0), new double[] {-2, 70});
    } else if (quantity == Quantity.LITRES) {
      range = new double[] {0, 500};
    }
    if (parameter.optional() && number % 3 == 0) {
      return null;
    }
    double beyond = number % 10 == 7 ? 0.1 * (range[1] - range[0]) : 0;
    return random.nextDouble(range[0] - beyond, range[1] + beyond);
  }
}
