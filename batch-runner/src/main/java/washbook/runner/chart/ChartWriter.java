package washbook.runner.chart;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import washbook.log.fill.BatchCurve;

/** Adds the sheet with charts to a copy of a workbook of one format, or redraws it. */
public interface ChartWriter {
  /**
   * Writes {@code source} with the sheet to {@code target}, which must be another file. All parts
   * but those that have to list the sheet keep their bytes.
   *
   * @param older the name of the workbook's older sheet of ours, which is then replaced and keeps
   *     it, since formulas may say it; without one the sheet is new
   */
  void write(Path source, List<BatchCurve> curves, Optional<String> older, Path target)
      throws IOException;
}
