package washbook.runner.chart;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import washbook.log.fill.BatchCurve;

/** Adds the sheet with charts to a copy of a workbook of one format, or redraws it. */
public interface ChartWriter {
  /**
   * Writes {@code source} with the sheet to {@code target}, which must be another file. All parts
   * but those that have to list the sheet keep their bytes.
   *
   * @param isThere whether the workbook has an older sheet of ours, which is then replaced
   */
  void write(Path source, List<BatchCurve> curves, boolean isThere, Path target) throws IOException;
}
