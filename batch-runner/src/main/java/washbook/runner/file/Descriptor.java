package washbook.runner.file;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The path by which Linux names a file that this process holds open. It leads to that very file,
 * whatever its name stands for by now.
 */
final class Descriptor {
  private static final Path ALL = Path.of("/proc/self/fd");

  /** Numbers are given from below, so that the next one is mostly near the last or the first. */
  private static volatile int last = 3;

  private static volatile int first = 3;

  private Descriptor() {}

  /**
   * Finds a file of ours.
   *
   * @param key of a file that this process has made and holds open once
   * @return null where the system names none
   */
  static Path of(Object key) {
    int before = last;
    int lowest = first;
    for (int number : new int[] {before + 1, before, before + 2, lowest, lowest + 1, before + 3}) {
      if (key.equals(FileIdentity.key(path(number)))) {
        return found(number);
      }
    }
    try (DirectoryStream<Path> numbers = Files.newDirectoryStream(ALL)) {
      for (Path number : numbers) {
        if (key.equals(FileIdentity.key(number))) {
          return found(Integer.parseInt(number.getFileName().toString()));
        }
      }
    } catch (IOException | RuntimeException none) {
      return null;
    }
    return null;
  }

  private static Path found(int number) {
    if (number < last) {
      first = number;
    }
    last = number;
    return path(number);
  }

  private static Path path(int number) {
    return ALL.resolve(Integer.toString(number));
  }
}
