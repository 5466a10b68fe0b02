package washbook.runner.run;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Duration;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Where journals lie when the user does not say, and what tells one run's from another's. */
public final class JournalPlace {
  private static final Pattern NAME = Pattern.compile("(fill|audit|watch)-[0-9a-f]{16}\\.jsonl");

  /** A journal only spares work, and a run is seldom taken up after so long. */
  private static final Duration KEPT = Duration.ofDays(180);

  private JournalPlace() {}

  /** A short sign for everything that the results depend on besides the files. */
  public static String sign(List<String> settings) {
    try {
      MessageDigest digest = MessageDigest.getInstance("SHA-256");
      for (String setting : settings) {
        digest.update(setting.getBytes(StandardCharsets.UTF_8));
        digest.update((byte) 0);
      }
      return HexFormat.of().formatHex(digest.digest(), 0, 8);
    } catch (NoSuchAlgorithmException missing) {
      throw new IllegalStateException(missing);
    }
  }

  /** The journal of a run: in the service manager's state folder, else in the user's. */
  public static Path of(String kind, String sign, Map<String, String> environment) {
    return stateFolder(environment).resolve(kind + "-" + sign + ".jsonl");
  }

  /** Whether a file lies where we named it, so that it is a journal whatever has become of it. */
  static boolean isOurs(Path file) {
    Path parent = file.toAbsolutePath().getParent();
    return NAME.matcher(file.getFileName().toString()).matches()
        && parent.equals(stateFolder(System.getenv()).toAbsolutePath())
        && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
  }

  /** Removes journals beside this one that no run has written to for months. */
  static void removeOld(Path ours) {
    if (!isOurs(ours)) {
      return;
    }
    Instant old = Instant.now().minus(KEPT);
    try (DirectoryStream<Path> files =
        Files.newDirectoryStream(ours.toAbsolutePath().getParent())) {
      for (Path file : files) {
        if (isOurs(file)
            && !file.getFileName().equals(ours.getFileName())
            && Files.getLastModifiedTime(file).toInstant().isBefore(old)) {
          Journal.removeUnlessUsed(file);
        }
      }
    } catch (IOException | DirectoryIteratorException unreadable) {
      // They stay for the next run.
    }
  }

  private static Path stateFolder(Map<String, String> environment) {
    String service = environment.get("STATE_DIRECTORY");
    if (service != null && !service.isBlank()) {
      return Path.of(service.split(":", 2)[0]);
    }
    String state = environment.get("XDG_STATE_HOME");
    Path base =
        state != null && !state.isBlank()
            ? Path.of(state)
            : Path.of(System.getProperty("user.home"), ".local", "state");
    return base.resolve("washbook");
  }
}
