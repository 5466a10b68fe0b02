package washbook.runner.run;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import washbook.log.language.Language;
import washbook.log.language.ToldException;

/** Says what went wrong with a file in words. */
public final class Failure {
  private Failure() {}

  /** Something that is tried and may fail without harm. */
  @FunctionalInterface
  interface Attempt {
    void run() throws IOException;
  }

  /** The reason as a sentence. */
  public static String reason(Throwable failure, Language language) {
    return failure instanceof ToldException wrong ? wrong.told().in(language) : reason(failure);
  }

  /** The reason as a sentence in English. */
  public static String reason(Throwable failure) {
    if (failure instanceof FileSystemException of) {
      return "'" + of.getFile() + "': " + word(of) + ".";
    }
    if (failure instanceof OutOfMemoryError) {
      return "There is not enough memory for it; start Java with a larger -Xmx.";
    }
    String message = failure.getMessage();
    if (message == null || message.isBlank()) {
      return failure.getClass().getSimpleName() + ".";
    }
    return message.endsWith(".") ? message : message + ".";
  }

  /** The same failure said of the file that the user knows. */
  static FileSystemException named(FileSystemException failure, Path unfinished, Path target) {
    String file = failure.getFile();
    return file != null && file.endsWith(unfinished.getFileName().toString())
        ? of(failure, target)
        : failure;
  }

  /** The same failure said of another file. */
  static FileSystemException of(FileSystemException failure, Path target) {
    return new FileSystemException(target.toString(), null, word(failure));
  }

  static void ignoring(Attempt attempt) {
    try {
      attempt.run();
    } catch (IOException | UnsupportedOperationException notNeeded) {
      // What is tried here is a help, not a need.
    }
  }

  private static String word(FileSystemException failure) {
    if (failure instanceof NoSuchFileException) {
      return "no such file or folder";
    }
    if (failure instanceof AccessDeniedException) {
      return "permission denied";
    }
    if (failure instanceof FileAlreadyExistsException) {
      return "already exists";
    }
    if (failure instanceof NotDirectoryException) {
      return "not a folder";
    }
    return failure.getReason() == null ? "cannot be used" : failure.getReason();
  }
}
