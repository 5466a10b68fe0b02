package washbook.runner.run;

import java.nio.file.Path;
import washbook.runner.report.FileReport;

/**
 * One file to work on.
 *
 * @param file where it is
 * @param shown how reports name it: as the user named it, with / between folders
 * @param target where the result goes
 * @param within the folder that the user named, in which it was found; null when he named the file
 * @param refused why it is not worked on; null when it is
 */
public record WorkItem(Path file, String shown, Path target, Path within, FileReport refused) {

  WorkItem(Path file, String shown, Path target, FileReport refused) {
    this(file, shown, target, null, refused);
  }

  WorkItem refuse(String code, String reason) {
    return new WorkItem(file, shown, target, within, FileReport.failed(shown, code, reason));
  }
}
