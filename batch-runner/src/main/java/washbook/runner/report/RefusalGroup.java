package washbook.runner.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.runner.report.FileReport.Refusal;

/**
 * Refusals of one column for one reason, told in one line.
 *
 * @param cells as {@code Log!B7:B19, B23}; "" when it is about the whole file
 * @param count how many refusals it stands for
 */
public record RefusalGroup(String cells, String code, String reason, int count) {
  private static final Pattern CELL = Pattern.compile("(.*!)?([A-Z]{1,3})([0-9]{1,7})");

  private record Key(String sheet, String column, String code, String reason) {}

  /** In the order of each group's first refusal. */
  public static List<RefusalGroup> of(List<Refusal> refusals) {
    Map<Key, List<Integer>> rows = new LinkedHashMap<>();
    for (Refusal refusal : refusals) {
      Matcher cell = CELL.matcher(refusal.cell());
      boolean placed = cell.matches();
      String sheet = !placed ? refusal.cell() : cell.group(1) == null ? "" : cell.group(1);
      String column = placed ? cell.group(2) : "";
      rows.computeIfAbsent(
              new Key(sheet, column, refusal.code(), refusal.reason()), key -> new ArrayList<>())
          .add(placed ? Integer.parseInt(cell.group(3)) : 0);
    }
    return rows.entrySet().stream().map(entry -> group(entry.getKey(), entry.getValue())).toList();
  }

  private static RefusalGroup group(Key key, List<Integer> found) {
    String cells = key.sheet();
    if (!key.column().isEmpty()) {
      int[] rows = found.stream().mapToInt(Integer::intValue).sorted().distinct().toArray();
      cells = key.sheet() + ranges(key.column(), rows);
    }
    return new RefusalGroup(cells, key.code(), key.reason(), found.size());
  }

  private static String ranges(String column, int[] rows) {
    StringBuilder text = new StringBuilder();
    int from = 0;
    for (int i = 0; i < rows.length; i++) {
      if (i + 1 < rows.length && rows[i + 1] == rows[i] + 1) {
        continue;
      }
      text.append(text.isEmpty() ? "" : ", ").append(column).append(rows[from]);
      text.append(i > from ? ":" + column + rows[i] : "");
      from = i + 1;
    }
    return text.toString();
  }
}
