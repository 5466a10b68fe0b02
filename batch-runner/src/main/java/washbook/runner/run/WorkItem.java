package washbook.runner.run;

import java.nio.file.Path;
import washbook.runner.report.FileReport;

/**
 * One file to work on.
 *
 * @param file where it is
 * @param shown how reports name it: as the user named it, with / between folders
 * @param target where the result goes
 * @param refused why it is not worked on; null when it is
 */
public record WorkItem(Path file, String shown, Path target, FileReport refused) {

  WorkItem refuse(String code, String reason) {
    return new WorkItem(file, shown, target, FileReport.failed(shown, code, reason));
  }
}
