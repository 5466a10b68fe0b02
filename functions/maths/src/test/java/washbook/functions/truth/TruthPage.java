package washbook.functions.truth;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.StringJoiner;
import java.util.TreeSet;
import java.util.stream.Collectors;
import washbook.functions.catalogue.Catalogue;
import washbook.functions.catalogue.CatalogueFunction;
import washbook.functions.catalogue.Parameter;
import washbook.functions.catalogue.ReferencePage;

/** TRUTH.md: what each function is checked against and how far off it is. */
final class TruthPage {
  private TruthPage() {}

  static String markdown(List<PublishedValue> values) throws IOException {
    StringBuilder page = new StringBuilder(16_384);
    page.append("# How true the functions are\n\n");
    page.append(
        "What each function is checked against outside the project, the largest difference found over"
            + " all those figures, what the check allows, and the range that the function takes."
            + " Written by `TruthTest`, which fails when a figure here is stale. Where no single"
            + " figure is published the test named does the check; its tolerance stands in it.\n\n");
    page.append(
        "| function | outside check | figures | largest difference | allowed | range | test |\n");
    page.append("| --- | --- | --- | --- | --- | --- | --- |\n");
    Map<String, String[]> checks = checks();
    for (CatalogueFunction function : Catalogue.all()) {
      List<PublishedValue> own =
          values.stream().filter(v -> v.function().equals(function.name())).toList();
      String[] check = checks.get(function.name());
      String test = "`" + check[1].replaceAll(".*\\.", "").replace('#', '.') + "`";
      page.append("| ").append(function.name()).append(" | ");
      page.append(own.isEmpty() ? check[0] : sources(own)).append(" | ");
      page.append(own.isEmpty() ? "in the test | | " : found(own, function.resultUnit()));
      page.append("| ").append(range(function)).append(" | ").append(test).append(" |\n");
    }
    return page.toString().replace("| | |", "| - | - |");
  }

  private static String sources(List<PublishedValue> own) {
    return String.join(
        "; ",
        own.stream().map(PublishedValue::source).collect(Collectors.toCollection(TreeSet::new)));
  }

  private static String found(List<PublishedValue> own, String unit) {
    PublishedValue worst = own.get(0);
    double most = -1;
    for (PublishedValue value : own) {
      double share = Math.abs(value.deviation()) / value.allowed();
      if (share > most) {
        most = share;
        worst = value;
      }
    }
    return own.size()
        + " | "
        + size(worst.deviation())
        + (unit.isEmpty() ? "" : " " + unit)
        + " at "
        + worst.arguments().replaceAll("(\\.\\d{5})\\d+", "$1")
        + " | "
        + size(worst.allowed())
        + " ";
  }

  /** Two digits; what is less than a billionth is rounding. */
  private static String size(double value) {
    double amount = Math.abs(value);
    return amount < 1e-9 ? "0" : String.format(Locale.ROOT, "%.2g", amount);
  }

  private static String range(CatalogueFunction function) {
    StringJoiner ranges = new StringJoiner("; ");
    for (Parameter p : function.parameters()) {
      if (p.quantity() != null && p.kind() != Parameter.Kind.ANYTHING) {
        ranges.add(
            p.name() + " " + ReferencePage.accepts(p).replace("a range of cells, each ", ""));
      }
    }
    return ranges.toString();
  }

  private static Map<String, String[]> checks() throws IOException {
    Map<String, String[]> checks = new LinkedHashMap<>();
    try (InputStream in = TruthPage.class.getResourceAsStream("/washbook/outside-checks.csv")) {
      new String(in.readAllBytes(), StandardCharsets.UTF_8)
          .lines()
          .filter(line -> !line.startsWith("#"))
          .skip(1)
          .map(line -> line.split(",", 3))
          .forEach(row -> checks.put(row[0], new String[] {row[1], row[2]}));
    }
    return checks;
  }
}
