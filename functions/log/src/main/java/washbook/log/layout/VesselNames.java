package washbook.log.layout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.words.Concept;
import washbook.log.words.Vocabulary;
import washbook.log.words.WashWords;

/** The names of vessels in the headers of their readings themselves, as {@code Plum SG}. */
final class VesselNames {
  private final Header header;
  private final List<HeaderCell> readings;

  /**
   * @param readings of the header, one a vessel
   */
  VesselNames(Header header, List<HeaderCell> readings) {
    this.header = header;
    this.readings = readings;
  }

  /** Names that are the part of the headers in which they differ. */
  List<String> find() {
    List<List<String>> words =
        readings.stream().map(r -> List.of(r.text().strip().split("[\\s/:,()\\[\\]]+"))).toList();
    Set<String> common = new LinkedHashSet<>(lower(words.get(0)));
    words.forEach(w -> common.retainAll(lower(w)));
    List<String> names = new ArrayList<>();
    for (List<String> of : words) {
      List<String> own = of.stream().filter(w -> !common.contains(lower(w))).toList();
      String name = String.join(" ", own);
      boolean silent = sayNothingOfReadings(words);
      if (own.isEmpty()
          || own.size() > (silent ? 5 : 3)
          || !Vessels.isName(name)
          || !namesVessel(name, of)) {
        return List.of();
      }
      names.add(
          String.join(
              " ", of.stream().filter(w -> !common.contains(lower(w)) || mayName(w)).toList()));
    }
    if (new HashSet<>(names).size() < names.size()) {
      return List.of();
    }
    return names;
  }

  /** Whether no header speaks of a reading: then each is a name, of more words too. */
  private static boolean sayNothingOfReadings(List<List<String>> headers) {
    return headers.stream()
        .flatMap(of -> Vocabulary.meanings(String.join(" ", of)).stream())
        .noneMatch(Vessels.NO_NAME::contains);
  }

  /**
   * A letter, a number, a vessel or what is in it; any name where no header speaks of a reading.
   */
  private boolean namesVessel(String own, List<String> header) {
    Set<Concept> meanings = Vocabulary.meanings(own);
    return own.length() <= 2
        || Character.isDigit(own.charAt(0))
        || meanings.contains(Concept.VESSEL)
        || meanings.contains(Concept.BATCH)
        || !WashWords.inValue(own).isEmpty()
        || namesATemperature(own)
        || Vocabulary.meanings(String.join(" ", header)).stream()
            .noneMatch(Vessels.NO_NAME::contains);
  }

  /** Whether a temperature beside the readings has the same name, as {@code Plum T}. */
  private boolean namesATemperature(String own) {
    return header.cells().stream()
        .filter(c -> c.role() == Role.TEMPERATURE)
        .anyMatch(c -> lower(c.text()).startsWith(lower(own) + " "));
  }

  /** Whether a word that all headers share belongs to a name, as Tank in Tank 1. */
  private static boolean mayName(String word) {
    Set<Concept> meanings = Vocabulary.meanings(word);
    return meanings.isEmpty()
        || meanings.contains(Concept.VESSEL)
        || meanings.contains(Concept.BATCH);
  }

  private static List<String> lower(List<String> words) {
    return words.stream().map(VesselNames::lower).toList();
  }

  private static String lower(String word) {
    return word.toLowerCase(Locale.ROOT);
  }
}
