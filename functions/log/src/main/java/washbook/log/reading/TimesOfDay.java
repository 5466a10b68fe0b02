package washbook.log.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import washbook.log.Batch;
import washbook.log.LogTable;
import washbook.log.OriginalGravity.FirstReading;
import washbook.log.OriginalGravity.Stated;
import washbook.log.language.Message;
import washbook.log.words.Concept;
import washbook.log.words.Vocabulary;

/**
 * Readings of one wash in the morning and in the evening, side by side: the first of them all is
 * the original gravity of each.
 */
public final class TimesOfDay {
  private TimesOfDay() {}

  /** The tables; those of one wash have one original gravity. */
  public static List<LogTable> withOneStart(List<LogTable> tables) {
    List<LogTable> all = new ArrayList<>();
    for (LogTable table : tables) {
      FirstReading first = isOne(table) ? earliest(table, tables) : null;
      boolean own = first == null || first.equals(table.batches().get(0).original());
      all.add(own ? table : table.with(List.of(begun(table.batches().get(0), first))));
    }
    return List.copyOf(all);
  }

  private static boolean isOne(LogTable table) {
    if (table.batches().size() != 1) {
      return false;
    }
    Batch batch = table.batches().get(0);
    return batch.original() instanceof FirstReading
        && batch.originalBrix().isEmpty()
        && !batch.isFed()
        && Vocabulary.meanings(batch.name()).contains(Concept.TIME_OF_DAY);
  }

  private static FirstReading earliest(LogTable table, List<LogTable> tables) {
    FirstReading earliest = null;
    for (LogTable other : tables) {
      boolean beside = other.headerRow() == table.headerRow() && isOne(other);
      if (beside && other.batches().get(0).original() instanceof FirstReading first) {
        earliest = earliest == null || first.row() < earliest.row() ? first : earliest;
      }
    }
    return earliest;
  }

  private static Batch begun(Batch batch, FirstReading first) {
    Message why = Message.of("from.first", first.cell());
    return new Batch(
        batch.name(),
        batch.rows(),
        new Stated(first.sg(), first.cell(), why, Optional.empty()),
        OptionalDouble.empty());
  }
}
