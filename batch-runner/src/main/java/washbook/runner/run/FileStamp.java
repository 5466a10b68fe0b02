package washbook.runner.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.concurrent.TimeUnit;
import washbook.runner.ask.MapBeside;

/**
 * By what a file is known to be the same as before.
 *
 * @param modified nanoseconds since 1970
 */
public record FileStamp(long size, long modified) {

  /** Written out: Java takes long over the first comparison that it makes of a record itself. */
  @Override
  public boolean equals(Object other) {
    return other instanceof FileStamp that && size == that.size && modified == that.modified;
  }

  @Override
  public int hashCode() {
    return Long.hashCode(size) * 31 + Long.hashCode(modified);
  }

  /** The stamp of a file as it is now. */
  public static FileStamp of(Path file) throws IOException {
    return of(Files.readAttributes(file, BasicFileAttributes.class));
  }

  static FileStamp of(BasicFileAttributes attributes) {
    return new FileStamp(attributes.size(), attributes.lastModifiedTime().to(TimeUnit.NANOSECONDS));
  }

  /** The same, or null when there is no such file any more. */
  static FileStamp orNull(Path file) {
    try {
      return of(file);
    } catch (IOException gone) {
      return null;
    }
  }

  /**
   * By what a log is known to be the same as before, with the map beside it: an answer that a
   * person writes there makes the log due again.
   *
   * @param map null where no map lies beside it
   */
  record WithMap(FileStamp file, FileStamp map) {

    static WithMap of(Path log) throws IOException {
      Path map = MapBeside.find(log);
      return new WithMap(FileStamp.of(log), map == null ? null : FileStamp.orNull(map));
    }

    /** The same, or null when there is no such log any more. */
    static WithMap orNull(Path log) {
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
}
