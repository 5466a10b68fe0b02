package washbook.runner.run;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;

/** Where journals lie when the user does not say, and what tells one run's from another's. */
public final class JournalPlace {
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
