package washbook.runner.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * Which entry of which folder a path names, however it is spelt: through links, mounts or in other
 * letter case. Two paths with one identity would overwrite each other; two hard links do not, as a
 * result takes the place of a name.
 *
 * @param folder what the system knows the nearest existing folder by
 * @param entry what the system knows the entry by; the path that is missing, when there is none yet
 */
public record FileIdentity(Object folder, Object entry) {

  /** Written out: Java takes long over the first hash that it makes of a record itself. */
  @Override
  public int hashCode() {
    return 31 * Objects.hashCode(folder) + Objects.hashCode(entry);
  }

  /** The identity of what a path names; a link as the last part stands for itself. */
  public static FileIdentity of(Path path) {
    Path full = path.toAbsolutePath();
    Path last = full.getFileName();
    if (last == null || last.toString().equals("..") || last.toString().equals(".")) {
      full = real(full);
    }
    Path folder = full.getParent();
    while (folder != null && !Files.exists(folder)) {
      folder = folder.getParent();
    }
    if (folder == null) {
      return new FileIdentity("", key(full));
    }
    Object known = key(full, LinkOption.NOFOLLOW_LINKS);
    return new FileIdentity(
        key(folder),
        known != null
            ? List.of(known, withoutCase(full.getFileName()))
            : folder.relativize(full).normalize().toString());
  }

  /** The identity of the file that is read under a path, links followed. */
  public static FileIdentity ofTarget(Path path) {
    return of(real(path));
  }

  /**
   * By what the system knows a file or folder itself, links followed; null when it is not there.
   */
  public static Object key(Path path, LinkOption... options) {
    try {
      return key(Files.readAttributes(path, BasicFileAttributes.class, options), path);
    } catch (IOException absent) {
      return null;
    }
  }

  /** The same from attributes that have been read. */
  public static Object key(BasicFileAttributes attributes, Path path) {
    Object key = attributes.fileKey();
    return key != null ? key : real(path).toString();
  }

  /** Tells hard links in one folder apart, and not the spellings that some folders take for one. */
  private static String withoutCase(Path name) {
    String text = name.toString();
    return (isAscii(text) ? text : Normalizer.normalize(text, Normalizer.Form.NFC))
        .toUpperCase(Locale.ROOT)
        .toLowerCase(Locale.ROOT);
  }

  private static boolean isAscii(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (text.charAt(i) > '~') {
        return false;
      }
    }
    return true;
  }

  private static Path real(Path path) {
    try {
      return path.toRealPath();
    } catch (IOException absent) {
      return path.toAbsolutePath().normalize();
    }
  }
}
