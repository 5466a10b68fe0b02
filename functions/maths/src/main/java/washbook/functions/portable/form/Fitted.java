package washbook.functions.portable.form;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import washbook.functions.portable.form.Expression.Polynomial;

/** The polynomials and measured errors that the build has worked out. */
public record Fitted(Map<String, Terms> terms, Map<String, Double> errors) {
  static final String RESOURCE = "fitted.txt";

  /** Read once, at the first use. */
  private static final class Holder {
    static final Fitted ALL = read();
  }

  public static Fitted all() {
    return Holder.ALL;
  }

  private static Fitted read() {
    try (InputStream in = Fitted.class.getResourceAsStream(RESOURCE)) {
      if (in == null) {
        throw new IllegalStateException(
            "the fitted formulas are missing; the Maven build makes them");
      }
      return parse(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Fitted parse(BufferedReader lines) {
    Map<String, Terms> terms = new LinkedHashMap<>();
    Map<String, Double> errors = new LinkedHashMap<>();
    lines
        .lines()
        .map(line -> line.split("\t"))
        .forEach(
            part -> {
              if (part[0].equals("terms")) {
                terms.put(part[1], Terms.parse(part[2]));
              } else {
                errors.put(part[1], Double.valueOf(part[2]));
              }
            });
    return new Fitted(terms, errors);
  }

  /** The file's text; {@link #all} reads it. */
  String text() {
    StringBuilder text = new StringBuilder();
    terms.forEach((key, t) -> text.append("terms\t" + key + "\t" + t.line() + "\n"));
    errors.forEach((key, e) -> text.append("error\t" + key + "\t" + e + "\n"));
    return text.toString();
  }

  /** Puts polynomials in their places; unknown ones stay open. */
  public static Expression resolve(Expression expression, Map<String, Terms> terms) {
    if (expression instanceof Polynomial p && p.terms() == null) {
      return Expressions.polynomial(
          p.key(), p.variables().stream().map(v -> resolve(v, terms)).toList(), terms.get(p.key()));
    }
    return expression.mapParts(part -> resolve(part, terms));
  }

  /** Shows every polynomial of an expression to {@code visitor}. */
  static void visit(Expression expression, Consumer<Polynomial> visitor) {
    if (expression instanceof Polynomial p) {
      visitor.accept(p);
    }
    expression.mapParts(
        part -> {
          visit(part, visitor);
          return part;
        });
  }
}
