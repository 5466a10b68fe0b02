package washbook.log.layout;

import static washbook.log.words.Concept.*;

import java.util.EnumSet;
import java.util.Set;
import washbook.log.Role;
import washbook.log.words.Concept;
import washbook.log.words.Statement;

/** Tells from the meanings of a header what its column holds, without looking at other columns. */
public final class HeaderRoles {
  /** Meanings of an upper header row that still count when the lower row is clear by itself. */
  private static final Set<Concept> CARRIED =
      EnumSet.of(
          CORRECTED,
          UNCORRECTED,
          AMBIENT,
          REFRACTOMETER,
          TARGET,
          RESIDUAL,
          ADDED,
          POTENTIAL,
          SUGAR,
          WATER,
          HYDROMETER,
          ORIGINAL);

  private HeaderRoles() {}

  /** Meanings of a header that stands in two rows. */
  static Set<Concept> joined(Set<Concept> upper, Set<Concept> lower) {
    Set<Concept> all = EnumSet.noneOf(Concept.class);
    all.addAll(lower);
    if (role(lower) == Role.OTHER || upper.contains(NOTE)) {
      all.addAll(upper);
    } else {
      upper.stream().filter(CARRIED::contains).forEach(all::add);
      if (!hasScaleOrGravity(lower) && isReading(lower)) {
        upper.stream().filter(Concept.SUGAR_SCALES::contains).forEach(all::add);
      }
    }
    return all;
  }

  public static Role role(Set<Concept> m) {
    if (m.contains(NOTE) && !(m.contains(OBSERVED) && hasScaleOrGravity(m))) {
      return Role.NOTE;
    }
    if (m.contains(CALIBRATION)) {
      return hasScaleOrGravity(m) ? Role.GRAVITY : Role.CALIBRATION;
    }
    if (has(m, CORRECTION, FACTOR, OFFSET, RATE, TARGET, OTHERTHING, TOTAL)) {
      return Role.OTHER;
    }
    if (m.contains(ATTENUATION)) {
      return m.contains(REAL) ? Role.OWN_REAL_ATTENUATION : Role.OWN_APPARENT_ATTENUATION;
    }
    if (m.contains(POTENTIAL)) {
      return m.contains(ORIGINAL) ? Role.ORIGINAL_GRAVITY : Role.GRAVITY;
    }
    boolean refracted = m.contains(REFRACTOMETER) && has(m, BRIX, OECHSLE, KMW, PLATO, BALLING);
    if (m.contains(ALCOHOL) && !refracted) {
      return Role.OWN_ABV;
    }
    boolean reading = isReading(m);
    if (reading && m.contains(CORRECTED) && Statement.saysCorrected(m)) {
      return Role.OWN_CORRECTED_GRAVITY;
    }
    if (hasScaleOrGravity(m) && m.contains(CORRECTED) && m.contains(NEGATION)) {
      return m.contains(REFRACTOMETER) ? Role.REFRACTOMETER : Role.GRAVITY;
    }
    boolean degrees = has(m, C, F) && !hasScaleOrGravity(m) && !m.contains(ORIGINALGRAVITY);
    if (m.contains(TEMPERATURE) || degrees) {
      return m.contains(AMBIENT) ? Role.OTHER : Role.TEMPERATURE;
    }
    if (m.contains(ORIGINALGRAVITY)
        || (m.contains(ORIGINAL) && reading && !has(m, SUGAR, WATER, VOLUME))) {
      return Role.ORIGINAL_GRAVITY;
    }
    if (m.contains(REFRACTOMETER)) {
      return Role.REFRACTOMETER;
    }
    Role addition = addition(m);
    if (addition != null) {
      return addition;
    }
    if (reading || m.contains(FINALGRAVITY)) {
      return Role.GRAVITY;
    }
    return plain(m);
  }

  private static Role addition(Set<Concept> m) {
    if (m.contains(SUGAR)) {
      if (m.contains(RESIDUAL)) {
        return Role.OTHER;
      }
      return m.contains(GL) || hasScaleOrGravity(m) ? Role.GRAVITY : Role.SUGAR_ADDED;
    }
    if (m.contains(WATER) && !hasScaleOrGravity(m)) {
      return Role.WATER_ADDED;
    }
    return null;
  }

  private static Role plain(Set<Concept> m) {
    if (has(m, VOLUME, L, ML, GAL, GALUS, GALUK)) {
      return has(m, RESIDUAL, ADDED) ? Role.OTHER : Role.VOLUME;
    }
    if (has(m, BATCH, VESSEL)) {
      return Role.BATCH;
    }
    if (m.contains(DATE)) {
      return Role.DATE;
    }
    if (m.contains(HOURS)) {
      return Role.HOURS;
    }
    if (m.contains(DAY)) {
      return Role.DAY;
    }
    if (m.contains(TIME)) {
      return Role.TIME;
    }
    return m.contains(READING) ? Role.GRAVITY : Role.OTHER;
  }

  /** Whether a gravity header names no quantity, only that something was read. */
  public static boolean isGeneric(Set<Concept> m) {
    return !hasScaleOrGravity(m) && !m.contains(HYDROMETER) && m.contains(READING);
  }

  static boolean hasScaleOrGravity(Set<Concept> m) {
    if (m.contains(GRAVITY) || m.contains(EXTRACT)) {
      return true;
    }
    for (Concept scale : Concept.SUGAR_SCALES) {
      if (m.contains(scale)) {
        return true;
      }
    }
    return false;
  }

  private static boolean isReading(Set<Concept> m) {
    return hasScaleOrGravity(m)
        || m.contains(HYDROMETER)
        || (m.contains(READING) && has(m, CORRECTED, ORIGINAL));
  }

  private static boolean has(Set<Concept> m, Concept... any) {
    for (Concept one : any) {
      if (m.contains(one)) {
        return true;
      }
    }
    return false;
  }
}
