package washbook.runner.file;

import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Files that we hold open, by the paths that they were opened under. Whoever reads or writes such a
 * path gets the open file, whatever another user has put under that name by now.
 */
final class OpenFiles {
  private static final Map<Path, FileChannel> HELD = new ConcurrentHashMap<>();

  private OpenFiles() {}

  static void hold(Path path, FileChannel channel) {
    HELD.put(path.toAbsolutePath(), channel);
  }

  static void release(Path path, FileChannel channel) {
    HELD.remove(path.toAbsolutePath(), channel);
  }

  /** The open file; null when none is held under that path. */
  static FileChannel of(Path path) {
    return HELD.isEmpty() ? null : HELD.get(path.toAbsolutePath());
  }
}
