package washbook.runner.run;

import java.io.IOException;
import java.nio.file.Path;

/**
 * By what a log is known to be the same as before, with the map beside it: an answer that a person
 * writes there makes the log due again.
 *
 * @param map null where no map lies beside it
 */
record LogStamp(FileStamp file, FileStamp map) {

  static LogStamp of(Path log) throws IOException {
    Path map = MapBeside.find(log);
    return new LogStamp(FileStamp.of(log), map == null ? null : FileStamp.orNull(map));
  }

  /** The same, or null when there is no such log any more. */
  static LogStamp orNull(Path log) {
    try {
      return of(log);
    } catch (IOException gone) {
      return null;
    }
  }

  /** When either was changed last, nanoseconds since 1970. */
  long modified() {
    return map == null ? file.modified() : Math.max(file.modified(), map.modified());
  }
}
