package washbook.office.menu;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import washbook.log.ComputedColumn;
import washbook.log.fill.FormulaStyle;
import washbook.office.dialog.StoppedException;
import washbook.office.language.OfficeText;

/**
 * What a menu entry or a macro asks for: {@code washbook.office:NAME?key=value&key=value}.
 *
 * @param name the command
 * @param options {@code ask=no} leaves dialogs out; {@code as} is what a fill writes: values, pack
 *     or portable; {@code columns} which, as the command line names them, with commas between
 */
record Command(String name, Map<String, String> options) {

  static Command of(String url) {
    String rest = url.substring(url.indexOf(':') + 1);
    int question = rest.indexOf('?');
    Map<String, String> options = new HashMap<>();
    if (question >= 0) {
      for (String pair : rest.substring(question + 1).split("&", -1)) {
        String[] sides = pair.split("=", 2);
        options.put(lower(sides[0]), sides.length == 2 ? lower(sides[1]) : "");
      }
    }
    return new Command(lower(question < 0 ? rest : rest.substring(0, question)), options);
  }

  boolean asks() {
    return !"no".equals(options.get("ask"));
  }

  FormulaStyle style() {
    String as = options.getOrDefault("as", "values");
    return one(as, FormulaStyle.values(), style -> lower(style.name()));
  }

  /** The columns to be filled in; empty for the usual ones. */
  Optional<Set<ComputedColumn>> columns() {
    if (!options.containsKey("columns")) {
      return Optional.empty();
    }
    Set<ComputedColumn> columns = EnumSet.noneOf(ComputedColumn.class);
    for (String word : options.get("columns").split(",", -1)) {
      columns.add(one(word.strip(), ComputedColumn.values(), ComputedColumn::word));
    }
    return Optional.of(columns);
  }

  private static <T> T one(String wanted, T[] all, Function<T, String> word) {
    return Arrays.stream(all)
        .filter(value -> word.apply(value).equals(wanted))
        .findFirst()
        .orElseThrow(
            () ->
                new StoppedException(
                    OfficeText.of(
                        "command.unknownChoice",
                        wanted,
                        Arrays.stream(all).map(word).collect(Collectors.joining(", ")))));
  }

  private static String lower(String text) {
    return text.toLowerCase(Locale.ROOT);
  }
}
