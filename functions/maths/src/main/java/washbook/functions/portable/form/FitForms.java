package washbook.functions.portable.form;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Fits every declared form, measures its error on a dense grid and writes both down; the build runs
 * it after the compiler. Fails when a form misses the error that it declares.
 */
public final class FitForms {
  private FitForms() {}

  /**
   * Takes the folder of compiled classes and a file that notes what was fitted last: as long as
   * that has not changed nothing is fitted, for it takes longer than the rest of the build.
   */
  public static void main(String[] args) throws IOException {
    Path classes = Path.of(args[0]);
    Path note = Path.of(args[1]);
    Path file = classes.resolve("washbook/functions/portable/form").resolve(Fitted.RESOURCE);
    FitDigest digest = new FitDigest(classes, file);
    if (digest.isKeptIn(note)) {
      return;
    }
    Files.createDirectories(file.getParent());
    Files.writeString(file, fit(Forms.ALL).text());
    digest.keep(note);
  }

  static Fitted fit(List<Form> forms) {
    Fitted fitted = new Fitted(new LinkedHashMap<>(), new LinkedHashMap<>());
    Fitter fitter = new Fitter(fitted.terms());
    for (Form form : forms) {
      for (Fit fit : form.fits()) {
        if (!fitted.terms().containsKey(fit.key())) {
          fitted.terms().put(fit.key(), fitter.fit(fit));
        }
      }
      double error = measure(form, fitted.terms());
      if (!(error <= form.wanted())) {
        throw new IllegalStateException(form.key() + " is off by " + error);
      }
      fitted.errors().put(form.key(), error);
    }
    return fitted;
  }

  /** The largest error of a form on a dense grid with all edges and corners. */
  static double measure(Form form, Map<String, Terms> terms) {
    Expression core = Fitted.resolve(form.core(), terms);
    int[] counts = new int[form.domain().dimensions()];
    Arrays.fill(counts, new int[] {0, 5001, 201, 41, 21}[counts.length]);
    return form.domain().even(counts).stream()
        .mapToDouble(
            at -> Math.abs(core.value(at) - form.exact(at)) / form.size().applyAsDouble(at))
        .filter(error -> !Double.isNaN(error))
        .max()
        .orElse(Double.NaN);
  }
}
