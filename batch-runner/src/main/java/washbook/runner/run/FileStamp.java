package washbook.runner.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.concurrent.TimeUnit;

/**
 * By what a file is known to be the same as before.
 *
 * @param modified nanoseconds since 1970
 */
public record FileStamp(long size, long modified) {

  /** The stamp of a file as it is now. */
  public static FileStamp of(Path file) throws IOException {
    BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
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
}
