package washbook.runner.run;

import java.nio.file.Path;

/**
 * Where results go.
 *
 * @param folder for {@code --out}; null when they go beside the file or in its place
 * @param inPlace whether the file itself is replaced
 * @param backup whether the replaced file is kept
 * @param overwrites whether a copy may replace a file that is no result of ours
 */
public record Destination(Path folder, boolean inPlace, boolean backup, boolean overwrites) {
  /** What stands before the extension of a copy of ours. */
  public static final String MARK = ".filled";

  /** What a kept original ends with. */
  public static final String BACKUP_MARK = ".bak";

  public static final Destination BESIDE = new Destination(null, false, false);

  /** Results replace earlier ones of ours, and nobody else's file. */
  public Destination(Path folder, boolean inPlace, boolean backup) {
    this(folder, inPlace, backup, false);
  }

  /** Whether a file that a result would replace has to be one of ours. */
  boolean replacesOnlyOurs() {
    return !inPlace && !overwrites;
  }

  /** Where the result for a file goes. */
  Path of(Path file, Path inFolder) {
    if (inPlace) {
      return file;
    }
    return folder != null ? folder.resolve(inFolder) : beside(file);
  }

  private static Path beside(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return file.resolveSibling(
        dot <= 0 ? name + MARK : name.substring(0, dot) + MARK + name.substring(dot));
  }

  /** Whether a name looks like a copy that an earlier run has made. */
  static boolean isOwnCopy(Path file) {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String start = dot < 0 ? name : name.substring(0, dot);
    return start.endsWith(MARK) || start.endsWith(PortableJob.MARK);
  }
}
