package washbook.log.layout;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import washbook.log.Role;
import washbook.log.layout.Header.HeaderCell;
import washbook.log.sheet.Grid;
import washbook.log.sheet.Grid.Kind;

/** What a sheet itself says its abbreviations mean, as {@code B = Balling (spindle)}. */
final class Legend {
  private static final Pattern ENTRY =
      Pattern.compile("(?:^|[,;|:])\\s*([\\p{L}\u00b0]{1,5}\\d?)\\.?\\s*=\\s*(\\p{L}[^=,;|]*)");

  /** Rows in which it is looked for. */
  private static final int ROWS = 60;

  private static final int LONGEST = 200;

  private final Grid grid;
  private Map<String, String> meant;

  Legend(Grid grid) {
    this.grid = grid;
  }

  /** A header's text judged by its words, else by those that the legend has for it. */
  HeaderCell judge(String text) {
    HeaderCell cell = HeaderWords.judge(text);
    String explained =
        cell.role() == Role.OTHER && cell.meanings().isEmpty()
            ? meant().get(text.strip().toLowerCase(Locale.ROOT))
            : null;
    return explained == null ? cell : HeaderWords.judge(explained);
  }

  private Map<String, String> meant() {
    if (meant == null) {
      meant = new HashMap<>();
      for (int row = 0; row < Math.min(ROWS, grid.rowCount()); row++) {
        for (int column = 0; column < Math.min(ROWS, grid.columnsUsed(row)); column++) {
          if (grid.kind(row, column) == Kind.TEXT) {
            read(grid.text(row, column));
          }
        }
      }
    }
    return meant;
  }

  private void read(String text) {
    if (text.length() > LONGEST || text.indexOf('=') < 0) {
      return;
    }
    Matcher entry = ENTRY.matcher(text);
    while (entry.find()) {
      meant.putIfAbsent(entry.group(1).toLowerCase(Locale.ROOT), entry.group(2).strip());
    }
  }
}
