package washbook.runner.ask;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import washbook.log.language.Message;
import washbook.log.language.ToldException;
import washbook.log.understand.LogMap;
import washbook.runner.file.UnusableFileException;

/**
 * The map that lies beside a log: {@code Plum 3.map} beside {@code Plum 3.xlsx}, else {@code
 * washbook.map} for every log of the folder. It is used without being named; a map that is named
 * takes its place.
 *
 * @param file where it lies; null where there is none
 */
public record MapBeside(Path file, LogMap map) {
  /** The name of a folder's map. */
  public static final String OF_THE_FOLDER = "washbook.map";

  private static final String ENDING = ".map";

  /** More than a map of a thousand tables, bytes. */
  private static final long LARGEST = 1 << 20;

  /**
   * The map beside a log; one that says nothing where there is none.
   *
   * @throws UnusableFileException when there is one that cannot be read: what the person said of
   *     the log is not to be passed over
   */
  public static MapBeside of(Path log) throws UnusableFileException {
    Path file = find(log);
    if (file == null) {
      return new MapBeside(null, LogMap.none());
    }
    try {
      if (Files.size(file) > LARGEST) {
        throw new ToldException(UnusableFileException.message("map.large"));
      }
      return new MapBeside(file, LogMap.parse(Files.readString(file)));
    } catch (ToldException unusable) {
      throw unusable(file, unusable.told(), unusable);
    } catch (CharacterCodingException otherEncoding) {
      throw unusable(file, UnusableFileException.message("map.encoding"), otherEncoding);
    } catch (IOException unreadable) {
      throw unusable(file, UnusableFileException.message("map.unreadable"), unreadable);
    }
  }

  /** The map that a person has named for all logs, where it says anything, else that beside one. */
  public static MapBeside of(Path log, LogMap named) throws UnusableFileException {
    return named.isSilent() ? of(log) : new MapBeside(null, named);
  }

  private static UnusableFileException unusable(Path file, Message why, Exception cause) {
    return UnusableFileException.from(
        cause, "map.beside", UnusableFileException.quoted(file.getFileName()), why);
  }

  /** Where the map beside a log lies, null where there is none. */
  public static Path find(Path log) {
    for (String candidate : List.of(ownName(log), OF_THE_FOLDER)) {
      Path file = beside(log, candidate);
      if (file != null && Files.isRegularFile(file)) {
        return file;
      }
    }
    return null;
  }

  /** Where a log's own map lies, or would lie. */
  public static Path own(Path log) {
    return log.resolveSibling(ownName(log));
  }

  private static String ownName(Path log) {
    String name = log.getFileName().toString();
    int dot = name.lastIndexOf('.');
    return (dot > 0 ? name.substring(0, dot) : name) + ENDING;
  }

  /** Null for a name in characters of another encoding than the program runs with. */
  private static Path beside(Path log, String name) {
    try {
      return log.resolveSibling(name);
    } catch (InvalidPathException unmappable) {
      return null;
    }
  }
}
