package washbook.runner.file;

import java.io.Closeable;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.SeekableByteChannel;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.SecureDirectoryStream;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.BasicFileAttributeView;
import java.util.Set;

/**
 * A file that is to be replaced by what is made from it. It is opened once, through no link below
 * the folder that the user named; until it is closed, all who read its path read this very file.
 */
public final class SourceFile implements Closeable {
  private static final Set<OpenOption> READING =
      Set.of(StandardOpenOption.READ, LinkOption.NOFOLLOW_LINKS);

  private final Path path;
  private final Object key;
  private final FileChannel channel;

  private SourceFile(Path path, Object key, FileChannel channel) {
    this.path = path;
    this.key = key;
    this.channel = channel;
    OpenFiles.hold(path, channel);
  }

  /**
   * Opens a file.
   *
   * @param root the folder that the user named, which may be a link; null when he named the file
   * @return null when the path ends in a link
   */
  public static SourceFile open(Path root, Path path) throws IOException {
    if (Files.isSymbolicLink(path)) {
      return null;
    }
    Path full = path.toAbsolutePath();
    Path above = root == null ? null : root.toAbsolutePath();
    try (SecureDirectoryStream<Path> folder = SecureFolder.open(above, full.getParent())) {
      Object key = key(folder, full);
      SeekableByteChannel channel =
          folder == null
              ? FileChannel.open(full, READING)
              : folder.newByteChannel(full.getFileName(), READING);
      try {
        if (channel instanceof FileChannel file && key.equals(key(folder, full))) {
          return new SourceFile(full, key, file);
        }
      } catch (IOException | RuntimeException gone) {
        channel.close();
        throw gone;
      }
      channel.close();
      throw UnusableFileException.of("write.changed");
    }
  }

  private static Object key(SecureDirectoryStream<Path> folder, Path path) throws IOException {
    BasicFileAttributeView view =
        folder == null
            ? Files.getFileAttributeView(
                path, BasicFileAttributeView.class, LinkOption.NOFOLLOW_LINKS)
            : folder.getFileAttributeView(
                path.getFileName(), BasicFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    return FileIdentity.key(view.readAttributes(), path);
  }

  /** By what the system knows it. */
  public Object key() {
    return key;
  }

  @Override
  public void close() throws IOException {
    OpenFiles.release(path, channel);
    channel.close();
  }
}
