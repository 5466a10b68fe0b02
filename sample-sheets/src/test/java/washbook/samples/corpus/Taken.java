package washbook.samples.corpus;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import washbook.log.Understanding;
import washbook.log.fill.FillOptions;
import washbook.log.fill.Filling;
import washbook.log.fill.LogFiller;
import washbook.log.sheet.Grid;
import washbook.log.understand.LogMap;
import washbook.log.understand.SheetUnderstanding;
import washbook.runner.FileFormats;

/** What the program took a file for, sheet by sheet, without help. */
record Taken(List<Sheet> sheets) {

  /** One sheet of it. */
  record Sheet(Grid grid, Understanding understanding, Filling filling) {}

  static Taken of(Path file) throws IOException {
    List<Sheet> sheets = new ArrayList<>();
    for (Grid grid : FileFormats.of(file).reader().read(file)) {
      Understanding understanding = SheetUnderstanding.understand(grid, LogMap.none());
      sheets.add(
          new Sheet(grid, understanding, LogFiller.fill(grid, understanding, FillOptions.usual())));
    }
    return new Taken(sheets);
  }

  /** The sheet of that name; text files have one sheet, whatever its name. */
  Sheet sheet(String name) {
    if (sheets.size() == 1) {
      return sheets.get(0);
    }
    return sheets.stream().filter(s -> s.grid().name().equals(name)).findFirst().orElse(null);
  }

  List<String> questions() {
    return sheets.stream()
        .flatMap(s -> s.understanding().doubts().stream())
        .map(d -> d.cell() + ": " + d.question())
        .toList();
  }
}
