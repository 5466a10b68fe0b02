package washbook.runner.ask;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import washbook.log.answer.KeptAnswers;
import washbook.log.language.Message;
import washbook.log.language.ToldException;
import washbook.log.understand.LogMap;
import washbook.runner.file.UnusableFileException;
import washbook.runner.read.CustomProperty;

/**
 * The map that goes with a log: {@code Plum 3.map} beside {@code Plum 3.xlsx}, else the answers
 * that the document keeps itself, else {@code washbook.map} for every log of the folder. Exactly
 * one is used, without being named; a map that is named takes its place.
 *
 * @param file where it lies; null where none lies beside the log
 * @param map what it says
 * @param isKept whether it is in the document
 */
public record MapBeside(Path file, LogMap map, boolean isKept) {
  /** The name of a folder's map. */
  public static final String OF_THE_FOLDER = "washbook.map";

  private static final String ENDING = ".map";

  /** More than a map of a thousand tables, bytes. */
  private static final long LARGEST = 1 << 20;

  /**
   * The map that goes with a log; one that says nothing where there is none.
   *
   * @throws UnusableFileException when there is one that cannot be read: what the person said of
   *     the log is not to be passed over
   */
  public static MapBeside of(Path log) throws IOException {
    Path own = regular(beside(log, ownName(log)));
    if (own != null) {
      return read(own);
    }
    Optional<String> kept = CustomProperty.of(log, KeptAnswers.PROPERTY);
    if (kept.isPresent()) {
      try {
        LogMap said = KeptAnswers.read(kept.get());
        if (!said.isSilent()) {
          return new MapBeside(null, said, true);
        }
      } catch (ToldException wrong) {
        throw UnusableFileException.from(
            wrong, "map.inside", UnusableFileException.quoted(KeptAnswers.PROPERTY), wrong.told());
      }
    }
    Path ofFolder = regular(beside(log, OF_THE_FOLDER));
    return ofFolder == null ? new MapBeside(null, LogMap.none(), false) : read(ofFolder);
  }

  private static MapBeside read(Path file) throws UnusableFileException {
    try {
      if (Files.size(file) > LARGEST) {
        throw new ToldException(UnusableFileException.message("map.large"));
      }
      return new MapBeside(file, LogMap.parse(Files.readString(file)), false);
    } catch (ToldException unusable) {
      throw unusable(file, unusable.told(), unusable);
    } catch (CharacterCodingException otherEncoding) {
      throw unusable(file, UnusableFileException.message("map.encoding"), otherEncoding);
    } catch (IOException unreadable) {
      throw unusable(file, UnusableFileException.message("map.unreadable"), unreadable);
    }
  }

  /** What a report calls it: the file's name, or the property's; null where there is none. */
  public String name() {
    return isKept ? KeptAnswers.PROPERTY : file == null ? null : file.getFileName().toString();
  }

  /** The map that a person has named for all logs, where it says anything, else that beside one. */
  public static MapBeside of(Path log, LogMap named) throws IOException {
    return named.isSilent() ? of(log) : new MapBeside(null, named, false);
  }

  private static UnusableFileException unusable(Path file, Message why, Exception cause) {
    return UnusableFileException.from(
        cause, "map.beside", UnusableFileException.quoted(file.getFileName()), why);
  }

  /** Where the map beside a log lies, null where there is none. */
  public static Path find(Path log) {
    for (String candidate : List.of(ownName(log), OF_THE_FOLDER)) {
      Path file = regular(beside(log, candidate));
      if (file != null) {
        return file;
      }
    }
    return null;
  }

  /** The file where it is one, else null. */
  private static Path regular(Path file) {
    return file != null && Files.isRegularFile(file) ? file : null;
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
