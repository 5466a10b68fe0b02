package washbook.runner.card;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import washbook.log.fill.FormulaStyle;
import washbook.log.sheet.Grid;
import washbook.runner.FileFormats;
import washbook.runner.file.UnusableFileException;
import washbook.runner.sheet.PortableResult;

/** A card as a sheet that can calculate: values, the pack's functions or plain formulas. */
final class CardSheet {
  private CardSheet() {}

  static void write(Card card, Paper paper, FormulaStyle style, String kind, Path to)
      throws IOException {
    if (style == FormulaStyle.PORTABLE) {
      Path calls = Files.createTempFile("washbook-card", "." + kind);
      try {
        put(card, paper, style, kind, calls);
        makePortable(calls, to);
      } finally {
        Files.deleteIfExists(calls);
      }
    } else {
      put(card, paper, style, kind, to);
    }
    check(card, to);
  }

  private static void put(Card card, Paper paper, FormulaStyle style, String kind, Path to)
      throws IOException {
    CardLayout layout = new CardLayout(card, paper, style);
    if (kind.equals("ods")) {
      CardOds.write(layout, paper, to);
    } else {
      CardXlsx.write(layout, paper, to);
    }
  }

  private static void makePortable(Path calls, Path to) throws IOException {
    PortableResult result =
        FileFormats.of(calls)
            .portable()
            .orElseThrow(() -> new IllegalStateException("no plain formulas in " + calls))
            .write(calls, to);
    if (!result.left().isEmpty()) {
      throw UnusableFileException.of("card.portable", result.left().get(0).told());
    }
  }

  /** Reads it back. */
  private static void check(Card card, Path written) throws IOException {
    int rows = card.tables().stream().mapToInt(table -> table.rows().length).sum();
    for (Grid grid : FileFormats.of(written).reader().read(written)) {
      if (grid.text(0, 0).equals(card.title()) && grid.rowCount() > rows) {
        return;
      }
    }
    throw UnusableFileException.of("readBack.card");
  }
}
