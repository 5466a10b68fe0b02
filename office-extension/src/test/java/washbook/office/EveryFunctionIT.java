package washbook.office;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import washbook.functions.Answer;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.office.testing.Book;

/**
 * Every function through Calc gives what it gives in Java. Calc hands single values over as text of
 * 15 digits: for numbers of no more digits the results are equal bit for bit.
 */
class EveryFunctionIT {
  private static Book book;

  @BeforeAll
  static void open() {
    book = SharedOffice.get().newBook();
  }

  @AfterAll
  static void close() {
    book.close();
  }

  static Stream<CatalogueFunction> functions() {
    return Catalogue.all().stream();
  }

  @Test
  void thePackIsThere() {
    assertTrue(Catalogue.all().size() >= 40, "functions: " + Catalogue.all().size());
  }

  @ParameterizedTest
  @MethodSource("functions")
  void exampleWrittenOut(CatalogueFunction function) {
    Examples example = Examples.of(function);
    book.formula("A1", example.formula());
    same(function, example.values(), "A1", example.formula());
  }

  /** Arguments from cells, and values around the example with more digits than it has. */
  @ParameterizedTest
  @MethodSource("functions")
  void exampleFromCells(CatalogueFunction function) {
    Examples example = Examples.of(function);
    for (double factor : new double[] {1, 1.00123456789, 0.9991234, 1.0100000001}) {
      List<Object> values = example.values().stream().map(v -> scaled(v, factor)).toList();
      CellsOf cells = CellsOf.put(book, values);
      String formula = "=WASHBOOK." + function.name() + "(" + cells.references() + ")";
      book.formula("A1", formula);
      same(function, values, "A1", formula + values);
    }
  }

  private static Object scaled(Object value, double factor) {
    if (value instanceof Double number) {
      return Math.round(number * factor * 1e12) / 1e12;
    }
    if (value instanceof List<?> list) {
      return list.stream().map(v -> scaled(v, factor)).toList();
    }
    return value;
  }

  private static void same(
      CatalogueFunction function, List<Object> values, String cell, String what) {
    Answer expected = function.call(values.toArray());
    if (expected instanceof Answer.Number number) {
      assertEquals(0, book.error(cell), what + book.shown(cell));
      assertEquals(number.value(), book.number(cell), what);
    } else if (expected instanceof Answer.Text text) {
      assertEquals(text.text(), book.shown(cell), what);
    } else if (expected instanceof Answer.Told told) {
      assertEquals(told.told().english(), book.shown(cell), what);
    } else {
      Answer.Refusal refusal = (Answer.Refusal) expected;
      assertEquals(CellsOf.shownFor(refusal.code()), book.shown(cell), what + refusal.reason());
    }
  }
}
