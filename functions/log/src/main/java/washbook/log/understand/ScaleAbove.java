package washbook.log.understand;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import washbook.log.layout.KeyLine;
import washbook.log.sheet.Grid;
import washbook.log.words.Concept;
import washbook.log.words.ReadingScale;
import washbook.log.words.Vocabulary;

/** The scale of the readings where a line above the table states it and no header does. */
final class ScaleAbove {
  private static final double HIGHEST_MUST = 1.190;

  /** Scales that are asked about, with what a must of 1.190 shows on each. */
  private static final Map<ReadingScale, Double> ASKED = asked();

  private static final int LINES_ABOVE = 8;

  private ScaleAbove() {}

  private static Map<ReadingScale, Double> asked() {
    Map<ReadingScale, Double> highest = new LinkedHashMap<>();
    for (ReadingScale scale :
        List.of(
            ReadingScale.SG,
            ReadingScale.BRIX,
            ReadingScale.OECHSLE,
            ReadingScale.BAUME,
            ReadingScale.KMW,
            ReadingScale.KGM3,
            ReadingScale.GCM3)) {
      highest.put(scale, scale == ReadingScale.SG ? 1190 : scale.fromGravity(HIGHEST_MUST));
    }
    return highest;
  }

  /** The only scale that lines about the readings name. */
  static Optional<ReadingScale> of(List<KeyLine> lines) {
    Set<ReadingScale> found = new HashSet<>();
    for (KeyLine line : lines) {
      Set<Concept> meanings = Vocabulary.meanings(line.label() + " " + line.text());
      boolean about =
          meanings.contains(Concept.GRAVITY)
              || meanings.contains(Concept.READING)
              || meanings.contains(Concept.HYDROMETER);
      boolean other =
          line.isOriginalGravity()
              || meanings.contains(Concept.ORIGINAL)
              || meanings.contains(Concept.FINALGRAVITY)
              || meanings.contains(Concept.TARGET)
              || meanings.contains(Concept.REFRACTOMETER)
              || meanings.contains(Concept.POTENTIAL);
      if (about && !other) {
        ReadingScale.in(meanings).map(s -> density(s, meanings)).ifPresent(found::add);
      } else if (isPotentialOf(meanings)) {
        found.add(ReadingScale.POTENTIAL);
      }
    }
    return found.size() == 1 ? Optional.of(found.iterator().next()) : Optional.empty();
  }

  /** The only scale that a sentence close above names together with the instrument. */
  static Optional<ReadingScale> inTexts(Grid grid, int headerRow) {
    Set<ReadingScale> found = new HashSet<>();
    for (int row = Math.max(0, headerRow - LINES_ABOVE); row < headerRow; row++) {
      for (int column = 0; column < grid.columnsUsed(row); column++) {
        if (grid.kind(row, column) == Grid.Kind.TEXT) {
          Set<Concept> meanings = Vocabulary.meanings(grid.text(row, column));
          boolean original =
              meanings.contains(Concept.ORIGINAL) || meanings.contains(Concept.ORIGINALGRAVITY);
          if (isPotentialOf(meanings)) {
            found.add(ReadingScale.POTENTIAL);
          } else if (meanings.contains(Concept.HYDROMETER) && !original) {
            ReadingScale.in(meanings).map(s -> density(s, meanings)).ifPresent(found::add);
          }
        }
      }
    }
    return found.size() == 1 ? Optional.of(found.iterator().next()) : Optional.empty();
  }

  /** Whether an instrument is said to show potential alcohol. */
  private static boolean isPotentialOf(Set<Concept> meanings) {
    return meanings.contains(Concept.HYDROMETER)
        && meanings.contains(Concept.POTENTIAL)
        && ReadingScale.in(meanings).isEmpty();
  }

  private static ReadingScale density(ReadingScale scale, Set<Concept> meanings) {
    return scale == ReadingScale.GL && meanings.contains(Concept.GRAVITY)
        ? ReadingScale.KGM3
        : scale;
  }

  /** The usual scales on which the values can stand, to be asked about. */
  static List<ReadingScale> fitting(ColumnValues values) {
    return ASKED.entrySet().stream()
        .filter(asked -> values.max() <= asked.getValue())
        .map(Map.Entry::getKey)
        .filter(scale -> fits(scale == ReadingScale.OECHSLE ? ReadingScale.POINTS : scale, values))
        .toList();
  }

  /** Whether the values can be readings on a scale. */
  static boolean fits(ReadingScale scale, ColumnValues values) {
    return switch (scale) {
      case KGM3 -> values.min() > 900 && values.max() < 1300;
      case GCM3, SG -> values.mostlyGravity();
      case POINTS -> !values.mostlyGravity() && values.max() >= 10 && values.max() <= 190;
      default -> !values.mostlyGravity() && values.numbers() > 0 && values.max() < 45;
    };
  }
}
