package washbook.runner.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import washbook.log.language.Language;
import washbook.log.language.Message;
import washbook.log.language.Told;
import washbook.runner.file.ToldFileException;
import washbook.runner.file.UnusableFileException;

/** Says what went wrong with a file in words. */
public final class Failure {
  private Failure() {}

  /** Something that is tried and may fail without harm. */
  @FunctionalInterface
  interface Attempt {
    void run() throws IOException;
  }

  /** The reason as a sentence in English. */
  public static String reason(Throwable failure) {
    return reason(failure, Language.EN);
  }

  /** The reason as a sentence. */
  public static String reason(Throwable failure, Language language) {
    if (failure instanceof UncheckedIOException wrapped) {
      return reason(wrapped.getCause(), language);
    }
    if (failure instanceof FileSystemException of) {
      Object file = UnusableFileException.quoted(String.valueOf(of.getFile()));
      return UnusableFileException.message("system", file, word(of)).in(language);
    }
    if (failure instanceof Told wrong) {
      return ended(wrong.told().in(language));
    }
    if (failure instanceof OutOfMemoryError) {
      return UnusableFileException.message("memory.now").in(language);
    }
    String message = failure.getMessage();
    if (message == null || message.isBlank()) {
      return failure.getClass().getSimpleName() + ".";
    }
    Message known = ofTheSystem(message);
    if (language == Language.EN) {
      return ended(message);
    }
    return known.isBlank()
        ? UnusableFileException.message("failed.other", ended(message)).in(language)
        : UnusableFileException.message("failed.system", known).in(language);
  }

  /** The commonest of the reasons that a system gives, which it words in English alone. */
  private static Message ofTheSystem(String reason) {
    return switch (reason) {
      case "No space left on device" -> UnusableFileException.message("system.full");
      case "Disk quota exceeded" -> UnusableFileException.message("system.quota");
      case "Read-only file system" -> UnusableFileException.message("system.readOnly");
      case "File name too long" -> UnusableFileException.message("system.longName");
      case "Too many open files" -> UnusableFileException.message("system.openFiles");
      case "Is a directory" -> UnusableFileException.message("system.folder");
      case "Input/output error" -> UnusableFileException.message("system.device");
      case "Too many levels of symbolic links" -> UnusableFileException.message("system.links");
      default -> Message.NONE;
    };
  }

  private static String ended(String sentence) {
    return sentence.endsWith(".") ? sentence : sentence + ".";
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
    String file = target.toString();
    if (failure instanceof NoSuchFileException) {
      return new NoSuchFileException(file);
    }
    if (failure instanceof AccessDeniedException) {
      return new AccessDeniedException(file);
    }
    if (failure instanceof FileAlreadyExistsException) {
      return new FileAlreadyExistsException(file);
    }
    if (failure instanceof ToldFileException told) {
      return new ToldFileException(target, told.told());
    }
    return failure instanceof NotDirectoryException
        ? new NotDirectoryException(file)
        : new FileSystemException(file, null, failure.getReason());
  }

  static void ignoring(Attempt attempt) {
    try {
      attempt.run();
    } catch (IOException | UnsupportedOperationException notNeeded) {
      // What is tried here is a help, not a need.
    }
  }

  private static Message word(FileSystemException failure) {
    if (failure instanceof Told told) {
      return told.told();
    }
    if (failure instanceof NoSuchFileException) {
      return UnusableFileException.message("system.none");
    }
    if (failure instanceof AccessDeniedException) {
      return UnusableFileException.message("system.denied");
    }
    if (failure instanceof FileAlreadyExistsException) {
      return UnusableFileException.message("system.exists");
    }
    if (failure instanceof NotDirectoryException) {
      return UnusableFileException.message("system.noFolder");
    }
    if (failure.getReason() == null) {
      return UnusableFileException.message("system.unusable");
    }
    Message known = ofTheSystem(failure.getReason());
    return known.isBlank() ? UnusableFileException.message("plain", failure.getReason()) : known;
  }
}
