package washbook.office.dialog;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import washbook.log.LogColumn;
import washbook.log.Role;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.words.ReadingScale;

/**
 * What a column of a log may be taken for.
 *
 * @param unit as a map names it, "" where the values tell it or none applies
 */
record ColumnChoice(Role role, String unit) {
  /** All that a person can choose from, in the order of the roles. */
  private static final List<ColumnChoice> ALL =
      Arrays.stream(Role.values())
          .filter(role -> role != Role.COMPUTED)
          .flatMap(ColumnChoice::each)
          .toList();

  static ColumnChoice of(LogColumn column) {
    return new ColumnChoice(column.role(), column.unit());
  }

  /** All choices, with this one before them where it is none of them. */
  List<ColumnChoice> withAll() {
    List<ColumnChoice> choices = new ArrayList<>(ALL);
    if (!choices.contains(this)) {
      choices.add(0, this);
    }
    return choices;
  }

  /** As a map states it. */
  String statement() {
    return role + (unit.isEmpty() ? "" : " in " + unit);
  }

  String told(Language language) {
    Message named = Message.of("role." + role);
    return (unit.isEmpty() ? named : Message.of("told.unit", named, unit)).in(language);
  }

  private static Stream<ColumnChoice> each(Role role) {
    return Stream.concat(Stream.of(""), units(role)).map(unit -> new ColumnChoice(role, unit));
  }

  private static Stream<String> units(Role role) {
    return switch (role) {
      case GRAVITY, ORIGINAL_GRAVITY -> Arrays.stream(ReadingScale.values()).map(Enum::name);
      case REFRACTOMETER -> Stream.of("BRIX", "PLATO", "SG");
      case OWN_CORRECTED_GRAVITY -> Stream.of("SG", "BRIX", "PLATO", "OECHSLE");
      case TEMPERATURE, HEAD_TEMPERATURE -> Stream.of("C", "F");
      case SUGAR_ADDED -> Stream.of("KG", "G", "LB");
      case WATER_ADDED, VOLUME, VOLUME_SO_FAR -> Stream.of("L", "ML", "GALUS", "GALUK");
      case STRENGTH -> Stream.of("ABV", "PROOFUS", "PROOFUK");
      default -> Stream.of();
    };
  }
}
