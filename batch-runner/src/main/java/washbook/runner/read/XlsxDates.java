package washbook.runner.read;

import java.io.IOException;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.temporal.ChronoUnit;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import washbook.runner.archive.Archive;
import washbook.runner.archive.Part;
import washbook.runner.file.UnusableFileException;

/** Tells which cell styles show a number as a date or time, and which keep a text inside. */
final class XlsxDates {
  /** Serial 0 of the 1904 date system counted from 1899-12-30. */
  static final int DAYS_TO_1904 = 1462;

  private static final LocalDate EPOCH = LocalDate.of(1899, 12, 30);

  private XlsxDates() {}

  /**
   * The numbers of cell formats (cellXfs).
   *
   * @param dates those of dates or times
   * @param inside those in which a text wraps or is made smaller (18.8.1 alignment)
   */
  record Styles(BitSet dates, BitSet inside) {}

  static Styles styles(Archive archive, Optional<Part> styles) throws IOException {
    BitSet dates = new BitSet();
    BitSet inside = new BitSet();
    Styles all = new Styles(dates, inside);
    if (styles.isEmpty()) {
      return all;
    }
    Map<Integer, Boolean> own = new HashMap<>();
    int[] place = {-1};
    SmallXml.read(
        archive,
        styles.get(),
        new SmallXml.Handler() {
          @Override
          public void start(SmallXml.Element at) throws UnusableFileException {
            switch (at.name()) {
              case "numFmt" ->
                  own.put(at.count("numFmtId"), isDateFormat(at.attribute("formatCode")));
              case "cellXfs" -> place[0] = 0;
              case "xf" -> {
                if (place[0] >= 0) {
                  int format = at.count("numFmtId");
                  dates.set(place[0]++, own.getOrDefault(format, isBuiltInDate(format)));
                }
              }
              case "alignment" -> {
                if (place[0] > 0 && (isTrue(at, "wrapText") || isTrue(at, "shrinkToFit"))) {
                  inside.set(place[0] - 1);
                }
              }
              default -> {}
            }
          }

          @Override
          public void end(String element) {
            if (element.equals("cellXfs")) {
              place[0] = -1;
            }
          }
        });
    return all;
  }

  private static boolean isTrue(SmallXml.Element at, String attribute)
      throws UnusableFileException {
    String value = at.attribute(attribute);
    return value != null && (value.equals("1") || value.equals("true"));
  }

  /** ECMA-376-1:2016, 18.8.30: 14-22 and 45-47 everywhere, 27-36 and 50-58 in East Asia. */
  private static boolean isBuiltInDate(int format) {
    return (format >= 14 && format <= 22)
        || (format >= 27 && format <= 36)
        || (format >= 45 && format <= 47)
        || (format >= 50 && format <= 58);
  }

  /** Whether the first section of a format code has a letter of a date or time in it. */
  static boolean isDateFormat(String code) {
    boolean quoted = false;
    for (int i = 0; i < code.length(); i++) {
      char c = code.charAt(i);
      if (quoted) {
        quoted = c != '"';
        continue;
      }
      switch (c) {
        case '"' -> quoted = true;
        case '\\', '_', '*' -> i++;
        case '[' -> {
          int end = code.indexOf(']', i);
          if (end < 0) {
            return false;
          }
          String inside = code.substring(i + 1, end).toLowerCase(Locale.ROOT);
          if (inside.matches("h+|m+|s+")) {
            return true;
          }
          i = end;
        }
        case ';' -> {
          return false;
        }
        case 'd', 'D', 'm', 'M', 'y', 'Y', 'h', 'H', 's', 'S' -> {
          return true;
        }
        case 'G', 'g' -> {
          if (code.regionMatches(true, i, "General", 0, 7)) {
            i += 6;
          }
        }
        default -> {}
      }
    }
    return false;
  }

  /** Days since 1899-12-30 of an ISO 8601 date, time or both; NaN when it is none. */
  static double fromIso(String text) {
    String plain = text.strip();
    if (plain.endsWith("Z")) {
      plain = plain.substring(0, plain.length() - 1);
    }
    try {
      if (!plain.contains("-")) {
        return LocalTime.parse(plain).toNanoOfDay() / 86_400e9;
      }
      if (!plain.contains("T")) {
        return ChronoUnit.DAYS.between(EPOCH, LocalDate.parse(plain));
      }
      LocalDateTime moment = LocalDateTime.parse(plain);
      return ChronoUnit.DAYS.between(EPOCH, moment.toLocalDate())
          + moment.toLocalTime().toNanoOfDay() / 86_400e9;
    } catch (DateTimeException e) {
      return Double.NaN;
    }
  }
}
