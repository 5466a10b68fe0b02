package washbook.runner.run;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.HashSet;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import washbook.runner.FileFormats;
import washbook.runner.file.FileIdentity;
import washbook.runner.file.LeftBehind;

/** Finds the user's logs in a folder and clears away what a killed run has left behind. */
final class FolderWalk extends SimpleFileVisitor<Path> {
  private final Path root;
  private final Object results;
  private final Set<Path> uncleared = new HashSet<>();
  private final Consumer<Path> found;
  private final BiConsumer<Path, IOException> failed;

  /**
   * @param results a folder to leave out, or null
   */
  FolderWalk(Path root, Path results, Consumer<Path> found, BiConsumer<Path, IOException> failed) {
    this.root = root;
    this.results = results == null ? null : FileIdentity.key(results);
    this.found = found;
    this.failed = failed;
  }

  /** Whether a file in a folder is a log of the user's, going by its name. */
  static boolean isWanted(Path file) {
    String name = file.getFileName().toString();
    return !name.startsWith(".")
        && !name.startsWith("~$")
        && !Destination.isOwnCopy(file)
        && FileFormats.isNamedLikeOne(file);
  }

  @Override
  public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) {
    if (folder.equals(root)) {
      return FileVisitResult.CONTINUE;
    }
    boolean hidden = folder.getFileName().toString().startsWith(".");
    return hidden || FileIdentity.key(attributes, folder).equals(results)
        ? FileVisitResult.SKIP_SUBTREE
        : FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
    if (isWanted(file) && Files.isRegularFile(file)) {
      found.accept(file);
    } else if (LeftBehind.isOne(file)) {
      uncleared.add(file.getParent());
    }
    return FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult postVisitDirectory(Path folder, IOException failure) {
    if (uncleared.remove(folder)) {
      LeftBehind.clear(folder);
    }
    if (failure != null) {
      failed.accept(folder, failure);
    }
    return FileVisitResult.CONTINUE;
  }

  @Override
  public FileVisitResult visitFileFailed(Path file, IOException failure) {
    failed.accept(file, failure);
    return FileVisitResult.CONTINUE;
  }
}
