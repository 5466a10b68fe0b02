package washbook.runner.file;

import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributeView;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Arrays;
import java.util.Locale;
import java.util.Set;

/**
 * A file on its way: written under a passing name beside its place, forced to the disk, then named
 * at one stroke. Only its owner may read it until then. Closing it before that takes it away.
 */
public final class UnfinishedFile implements Closeable {
  /** With its dot; passing names must fit where their targets fit. */
  private static final int LONGEST_EXTENSION = 8;

  private final WorkFolder folder;
  private final Path name;
  private final Path target;
  private final FileChannel channel;
  private final Object key;
  private Path descriptor;
  private boolean placed;
  private boolean closed;

  private UnfinishedFile(
      WorkFolder folder, Path name, Path target, FileChannel channel, Object key) {
    this.folder = folder;
    this.name = name;
    this.target = target;
    this.channel = channel;
    this.key = key;
  }

  /** A new one in the folder of {@code target}, with the same extension. */
  public static UnfinishedFile beside(Path target) throws IOException {
    return beside(null, target);
  }

  /**
   * The same, where links below a folder are never followed.
   *
   * @param root the folder that the user named, which may be a link; null when he named none
   */
  public static UnfinishedFile beside(Path root, Path target) throws IOException {
    try {
      return made(root, target);
    } catch (AccessDeniedException denied) {
      throw new AccessDeniedException(target.toString());
    } catch (NoSuchFileException noFolder) {
      throw new NoSuchFileException(target.toString());
    } catch (FileSystemException failure) {
      throw new FileSystemException(target.toString(), null, failure.getReason());
    }
  }

  private static UnfinishedFile made(Path root, Path target) throws IOException {
    WorkFolder folder = WorkFolder.open(root, target.toAbsolutePath().getParent());
    Path name = folder.newName(extension(target));
    try {
      FileChannel channel = folder.create(name);
      return known(folder, name, target, channel);
    } catch (IOException | RuntimeException failure) {
      folder.close();
      throw failure;
    }
  }

  private static UnfinishedFile known(
      WorkFolder folder, Path name, Path target, FileChannel channel) throws IOException {
    try {
      UnfinishedFile made = new UnfinishedFile(folder, name, target, channel, folder.key(name));
      OpenFiles.hold(made.path(), channel);
      return made;
    } catch (IOException | RuntimeException failure) {
      channel.close();
      folder.deletePassing(name);
      throw failure;
    }
  }

  private static String extension(Path target) {
    String name = target.getFileName().toString();
    int dot = name.lastIndexOf('.');
    boolean usual = dot >= 0 && name.length() - dot <= LONGEST_EXTENSION;
    return usual ? name.substring(dot).toLowerCase(Locale.ROOT) : "";
  }

  /** Open it with {@link WrittenFile} and {@link ReadFile}, which take the file as it was made. */
  public Path path() {
    return folder.path().resolve(name);
  }

  public Path target() {
    return target;
  }

  /** The folder by what the system knows it, for forcing each folder once. */
  public Object folderKey() {
    return folder.key();
  }

  /**
   * That its folder is the one that was meant.
   *
   * @param meant by what the system knew that folder; null when any will do
   */
  public void checkFolder(Object meant) throws IOException {
    if (meant != null && !meant.equals(folder.key())) {
      throw UnusableFileException.of("write.changed");
    }
  }

  /** That the name still stands for the file that was made. */
  public void check() throws IOException {
    if (key == null || !key.equals(folder.key(name)) || !folder.isInPlace()) {
      throw new ToldFileException(target, UnusableFileException.message("system.moved"));
    }
  }

  /** By what the system knows it. */
  public Object key() {
    return key;
  }

  /** A path for its owner, permissions and times that leads to nothing else; null for none. */
  public Path descriptor() {
    if (descriptor == null && key != null && channel.isOpen()) {
      descriptor = Descriptor.of(key);
    }
    return descriptor;
  }

  /** Owner and permissions; null where the system has none. */
  public PosixFileAttributeView permissions() {
    Path exact = descriptor();
    return exact != null
        ? Files.getFileAttributeView(exact, PosixFileAttributeView.class)
        : folder.view(name, PosixFileAttributeView.class);
  }

  /** Gives it the time of change of another file, where that can be done. */
  public void setModified(FileTime time) throws IOException {
    Path exact = descriptor();
    BasicFileAttributeView view =
        exact != null
            ? Files.getFileAttributeView(exact, BasicFileAttributeView.class)
            : folder.view(name, BasicFileAttributeView.class);
    view.setTimes(time, null, null);
  }

  /** By what the system knows another file of its folder; null when there is none. */
  public Object keyBeside(Path other) throws IOException {
    return folder.key(other.getFileName());
  }

  /** The bytes of another file of its folder, which is no link. */
  public InputStream readBeside(Path other) throws IOException {
    return folder.read(other.getFileName());
  }

  /** Its size and time of change. */
  public BasicFileAttributes attributes() throws IOException {
    Path exact = descriptor();
    return exact != null
        ? Files.readAttributes(exact, BasicFileAttributes.class)
        : folder.view(name, BasicFileAttributeView.class).readAttributes();
  }

  /** Whether a file of its folder, which is no link, has the same bytes. */
  public boolean hasBytesOf(Path other) throws IOException {
    BasicFileAttributes attributes =
        folder.view(other.getFileName(), BasicFileAttributeView.class).readAttributes();
    if (!attributes.isRegularFile() || attributes.size() != channel.size()) {
      return false;
    }
    byte[] ours = new byte[1 << 15];
    byte[] theirs = new byte[1 << 15];
    try (InputStream mine = ReadFile.stream(path());
        InputStream in = readBeside(other)) {
      while (true) {
        int count = mine.readNBytes(ours, 0, ours.length);
        int there = in.readNBytes(theirs, 0, theirs.length);
        if (count != there || !Arrays.equals(ours, 0, count, theirs, 0, there)) {
          return false;
        }
        if (count == 0) {
          return true;
        }
      }
    }
  }

  /**
   * Gives it these permissions. Where the system does not let one, as on some network drives, what
   * it has must be the same, or let nobody else in.
   *
   * @param exactly whether fewer are no good
   */
  public void permit(Set<PosixFilePermission> wanted, boolean exactly) throws IOException {
    PosixFileAttributeView view = permissions();
    if (view == null) {
      return;
    }
    try {
      view.setPermissions(wanted);
    } catch (IOException refused) {
      Set<PosixFilePermission> has = view.readAttributes().permissions();
      if (!has.equals(wanted) && (exactly || !wanted.containsAll(has))) {
        throw refused;
      }
    }
  }

  /** Puts what was written on the disk. */
  public void force() throws IOException {
    channel.force(true);
  }

  /** Names it, in place of what has the name. */
  public void place() throws IOException {
    move(target.getFileName());
  }

  /** Names it otherwise than its target; nothing may have that name. */
  public void placeAs(Path other) throws IOException {
    if (folder.key(other.getFileName()) != null) {
      throw new FileAlreadyExistsException(other.toString());
    }
    move(other.getFileName());
  }

  private void move(Path to) throws IOException {
    check();
    folder.move(name, to);
    placed = true;
    if (!key.equals(folder.key(to))) {
      throw new ToldFileException(target, UnusableFileException.message("system.atWork"));
    }
  }

  /** Takes away what {@link #placeAs} has named, unless another file has that name by now. */
  public void takeBack(Path other) throws IOException {
    if (key.equals(folder.key(other.getFileName()))) {
      folder.delete(other.getFileName());
    }
  }

  /** Puts the names of its folder on the disk. */
  public void forceFolder() {
    folder.force();
  }

  @Override
  public void close() throws IOException {
    if (closed) {
      return;
    }
    closed = true;
    OpenFiles.release(path(), channel);
    try (folder;
        channel) {
      if (!placed) {
        folder.deletePassing(name);
      }
    }
  }
}
