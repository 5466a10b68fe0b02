package washbook.functions.catalogue;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The one list of all functions, in the order of the work. */
public final class Catalogue {
  private static final List<Function> ALL =
      Stream.of(
              ScaleEntries.ALL,
              MakeupEntries.ALL,
              ReadingEntries.ALL,
              RefractometerEntries.ALL,
              FermentEntries.ALL,
              CourseEntries.ALL,
              StillEntries.ALL,
              SpiritEntries.ALL,
              DilutionEntries.ALL,
              HelpEntries.ALL)
          .flatMap(List::stream)
          .toList();

  private static final Map<String, Function> BY_NAME =
      ALL.stream().collect(Collectors.toUnmodifiableMap(Function::name, UnaryOperator.identity()));

  private Catalogue() {}

  public static List<Function> all() {
    return ALL;
  }

  /** Finds a function by its name, in any case, with or without the prefix {@code WASHBOOK.}. */
  public static Optional<Function> find(String name) {
    String upper = name.strip().toUpperCase(Locale.ROOT);
    return Optional.ofNullable(
        BY_NAME.get(upper.startsWith("WASHBOOK.") ? upper.substring(9) : upper));
  }

  /** The function of that name; for names that the program itself writes. */
  public static Function get(String name) {
    return find(name).orElseThrow(() -> new IllegalArgumentException("no function " + name));
  }
}
