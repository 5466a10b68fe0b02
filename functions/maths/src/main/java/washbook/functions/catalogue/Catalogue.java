package washbook.functions.catalogue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** The one list of all functions, in the order of the work. */
public final class Catalogue {
  /** How many lists there are; {@link #list} gives them in the order of the work. */
  private static final int LISTS = 14;

  /** Where {@link #find} looks first, because it is asked for most. */
  private static final int FERMENT = 4;

  private static final Map<String, CatalogueFunction> FOUND = new ConcurrentHashMap<>();

  /** Made when it is asked for: a single sum at the command line needs one list, not all. */
  private static final class All {
    static final List<CatalogueFunction> FUNCTIONS = new ArrayList<>();

    static {
      for (int i = 0; i < LISTS; i++) {
        FUNCTIONS.addAll(list(i));
      }
    }
  }

  private Catalogue() {}

  public static List<CatalogueFunction> all() {
    return Collections.unmodifiableList(All.FUNCTIONS);
  }

  /** Finds a function by its name, in any case, with or without the prefix {@code WASHBOOK.}. */
  public static Optional<CatalogueFunction> find(String name) {
    String upper = name.strip().toUpperCase(Locale.ROOT);
    String bare = upper.startsWith("WASHBOOK.") ? upper.substring(9) : upper;
    CatalogueFunction found = FOUND.get(bare);
    for (int i = 0; found == null && i < LISTS; i++) {
      for (CatalogueFunction function : list((FERMENT + i) % LISTS)) {
        if (function.name().equals(bare)) {
          found = function;
          FOUND.put(bare, function);
        }
      }
    }
    return Optional.ofNullable(found);
  }

  private static List<CatalogueFunction> list(int index) {
    return switch (index) {
      case 0 -> ScaleEntries.ALL;
      case 1 -> MakeupEntries.ALL;
      case 2 -> ReadingEntries.ALL;
      case 3 -> RefractometerEntries.ALL;
      case FERMENT -> FermentEntries.ALL;
      case 5 -> CourseEntries.ALL;
      case 6 -> StillEntries.ALL;
      case 7 -> SpiritEntries.ALL;
      case 8 -> DilutionEntries.ALL;
      case 9 -> CheckEntries.ALL;
      case 10 -> GrainEntries.ALL;
      case 11 -> HeatEntries.ALL;
      case 12 -> CutEntries.ALL;
      default -> HelpEntries.ALL;
    };
  }

  /** The function of that name; for names that the program itself writes. */
  public static CatalogueFunction get(String name) {
    return find(name).orElseThrow(() -> new IllegalArgumentException("no function " + name));
  }
}
