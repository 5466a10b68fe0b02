package washbook.runner.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import washbook.log.language.Language;
import washbook.runner.file.FileIdentity;
import washbook.runner.file.UnusableFileException;
import washbook.runner.report.FileReport.Refusal;

/** Collects the files that a command is about. */
public final class FileList {
  private final List<Found> found = new ArrayList<>();
  private final Set<FileIdentity> seen = new HashSet<>();
  private final Set<FileIdentity> read = new HashSet<>();
  private final Destination destination;
  private final Language language;

  /** A file with what decides in which part of a spread job it is done. */
  private record Found(WorkItem item, Shard.Weighed weighed) {}

  private FileList(Destination destination, Language language) {
    this.destination = destination;
    this.language = language;
  }

  /**
   * The files in the order of their names; those that cannot be worked on carry the reason. Folders
   * are walked, leaving out our own copies, hidden files and folders, office lock files, and the
   * folder that the results go to.
   *
   * @param language of the reasons
   */
  public static List<WorkItem> of(
      List<Path> given, Destination destination, Shard shard, Language language) {
    FileList list = new FileList(destination, language);
    for (Path path : given) {
      if (Files.isDirectory(path)) {
        list.walk(path);
      } else if (Files.isRegularFile(path)) {
        list.add(path, path.getFileName(), null);
      } else if (Files.exists(path)) {
        list.refuse(path, list.reason("given.notPlain"));
      } else if (Files.isSymbolicLink(path)) {
        list.refuse(path, list.reason("given.deadLink"));
      } else {
        list.refuse(path, list.reason("given.none"));
      }
    }
    list.found.sort((a, b) -> a.item.shown().compareTo(b.item.shown()));
    list.refuseSharedTargets();
    return list.share(shard);
  }

  /** A folder that is named itself may be a link; inside it links to folders are not followed. */
  private void walk(Path folder) {
    try {
      Path root = Files.isSymbolicLink(folder) ? folder.toRealPath() : folder;
      FolderWalk walk =
          new FolderWalk(
              root,
              destination.folder(),
              file -> add(folder.resolve(root.relativize(file)), root.relativize(file), folder),
              (file, failure) ->
                  refuse(folder.resolve(root.relativize(file)), Failure.reason(failure, language)));
      Files.walkFileTree(root, walk);
    } catch (IOException failure) {
      refuse(folder, Failure.reason(failure, language));
    }
  }

  private void add(Path file, Path inFolder, Path within) {
    FileIdentity identity = FileIdentity.of(file);
    if (!seen.add(identity)) {
      return;
    }
    read.add(identity);
    if (Files.isSymbolicLink(file)) {
      read.add(FileIdentity.ofTarget(file));
    }
    try {
      Path target = destination.of(file, inFolder);
      keep(new WorkItem(file, shown(file), target, within, null), inFolder);
    } catch (InvalidPathException unspeakable) {
      refuse(file, reason("given.name"));
    }
  }

  private String reason(String key, Object... arguments) {
    return UnusableFileException.message(key, arguments).in(language);
  }

  private void refuse(Path path, String reason) {
    WorkItem item = new WorkItem(path, shown(path), path, null);
    keep(item.refuse(Refusal.UNREADABLE, reason), path);
  }

  private void keep(WorkItem item, Path inFolder) {
    long bytes = item.refused() == null ? item.file().toFile().length() : 0;
    found.add(new Found(item, new Shard.Weighed(shown(inFolder), bytes)));
  }

  /** Sizes change under a job that fills in place, so there only the path decides. */
  private List<WorkItem> share(Shard shard) {
    List<WorkItem> items = new ArrayList<>();
    List<Shard.Weighed> files = found.stream().map(Found::weighed).toList();
    BitSet ours = destination.inPlace() ? shard.byPath(files) : shard.byBytes(files);
    ours.stream().forEach(i -> items.add(found.get(i).item));
    return items;
  }

  /** Two results in one file, or a result over another input, would lose something. */
  private void refuseSharedTargets() {
    Map<FileIdentity, WorkItem> owners = new HashMap<>();
    for (int i = 0; i < found.size(); i++) {
      WorkItem item = found.get(i).item;
      if (item.refused() != null) {
        continue;
      }
      FileIdentity target = FileIdentity.of(item.target());
      WorkItem other = owners.putIfAbsent(target, item);
      if (other != null) {
        refuse(i, reason("given.other", other.shown()));
      } else if (!destination.inPlace() && read.contains(target)) {
        refuse(i, reason("given.self", UnusableFileException.quoted(item.target())));
      }
    }
  }

  private void refuse(int index, String reason) {
    Found refused = found.get(index);
    WorkItem item = refused.item.refuse(Refusal.UNWRITABLE, reason);
    found.set(index, new Found(item, refused.weighed));
  }

  private static String shown(Path path) {
    String separator = path.getFileSystem().getSeparator();
    String text = path.normalize().toString();
    return separator.equals("/") ? text : text.replace(separator, "/");
  }
}
