package washbook.runner.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.EnumSet;
import java.util.Set;

/** Who may read what we write about other files: nobody who may not read those files. */
public final class FileMode {
  private static final String UMASK = "Umask:";
  private static final int USUAL_UMASK = 022;
  private static final Set<PosixFilePermission> OWNER =
      Set.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

  private FileMode() {}

  /** What a new file of this process gets when nothing else is said. */
  public static Set<PosixFilePermission> usual() {
    int open = 0666 & ~umask();
    Set<PosixFilePermission> mode = EnumSet.copyOf(OWNER);
    PosixFilePermission[] all = PosixFilePermission.values();
    for (int bit = 0; bit < all.length; bit++) {
      if ((open & (0400 >> bit)) != 0) {
        mode.add(all[bit]);
      }
    }
    return mode;
  }

  /** What a file about these files gets; those that are not there do not count. */
  public static Set<PosixFilePermission> forAll(Iterable<Path> files) {
    Set<PosixFilePermission> mode = EnumSet.copyOf(usual());
    for (Path file : files) {
      PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
      if (view == null || mode.equals(OWNER)) {
        break;
      }
      try {
        mode.retainAll(view.readAttributes().permissions());
      } catch (IOException absent) {
        continue;
      }
      mode.addAll(OWNER);
    }
    return mode;
  }

  private static int umask() {
    try {
      for (String line : Files.readAllLines(Path.of("/proc/self/status"))) {
        if (line.startsWith(UMASK)) {
          return Integer.parseInt(line.substring(UMASK.length()).strip(), 8);
        }
      }
    } catch (IOException | NumberFormatException unknown) {
      return USUAL_UMASK;
    }
    return USUAL_UMASK;
  }
}
