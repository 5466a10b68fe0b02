package washbook.runner.cli;

import static java.util.regex.Matcher.quoteReplacement;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import picocli.CommandLine.ParseResult;
import washbook.runner.language.Wording;

/** Writes a systemd unit that runs a watch command as a service. */
final class SystemdUnit {
  private static final String HEAD =
      """
      # %s
      #   echo 'u washbook - "Washbook"' > /etc/sysusers.d/washbook.conf && systemd-sysusers
      #   systemctl daemon-reload && systemctl enable --now washbook
      #   journalctl -u washbook -f
      # %s
      #   */10 * * * * %s
      """;

  private static final String PLACE = "/etc/systemd/system/washbook.service";

  /** The unit itself, whose @words@ the build of the Debian package fills in too. */
  private static final String UNIT = "watch.service";

  private static final Pattern WORD = Pattern.compile("@(\\w+)@");

  /** Below the unit's memory limit, with room for what Java takes besides. */
  private static final String MEMORY = "-Xmx512m";

  private static final Set<String> FOLDERS = Set.of("--out");
  private static final Set<String> FILES = Set.of("--map", "--journal", "--season");

  private SystemdUnit() {}

  /**
   * The unit for the given command line, with full paths in place of those given.
   *
   * @throws IllegalArgumentException for a path that no unit can hold
   */
  static String of(Path folder, ParseResult given, Wording said) {
    Path full = full(folder);
    List<String> words = new ArrayList<>(program());
    Set<String> places = new LinkedHashSet<>();
    words.add("watch");
    List<String> arguments = given.originalArgs();
    String option = "";
    for (String argument : arguments.subList(arguments.indexOf("watch") + 1, arguments.size())) {
      if (argument.equals("--print-unit")) {
        continue;
      }
      int equals = argument.startsWith("--") ? argument.indexOf('=') : -1;
      String name = equals > 0 ? argument.substring(0, equals) : option;
      String value = argument.substring(equals + 1);
      boolean isPath = FOLDERS.contains(name) || FILES.contains(name);
      if (isPath) {
        Path path = full(Path.of(value));
        words.add(equals > 0 ? name + "=" + path : path.toString());
        if (FOLDERS.contains(name)) {
          places.add(path.toString());
        } else if (!name.equals("--map")) {
          places.add(path.getParent().toString());
        }
      } else {
        words.add(argument.equals(folder.toString()) ? full.toString() : argument);
      }
      option = equals < 0 ? argument : "";
    }
    boolean elsewhere = given.hasMatchedOption("--out");
    if (!elsewhere) {
      places.add(full.toString());
    }
    words.forEach(SystemdUnit::refuseControls);
    String home =
        String.join(" ", words).matches(".*(^|[ =])/(home|root|run/user)/.*")
            ? "read-only"
            : "true";
    Map<String, String> facts = new HashMap<>();
    facts.put("description", said.say("unit.description"));
    facts.put("names", said.say("unit.names"));
    facts.put("ended", said.say("unit.ended"));
    facts.put("owner", said.say("unit.owner"));
    facts.putAll(
        Map.of(
            "folder",
            quoted(full.toString()),
            "command",
            command(words),
            "state",
            "washbook",
            "umask",
            "0077",
            "written",
            String.join(" ", places.stream().map(SystemdUnit::quoted).toList()),
            "home",
            home));
    String unit =
        WORD.matcher(text()).replaceAll(word -> quoteReplacement(facts.get(word.group(1))));
    String head = HEAD.formatted(said.say("unit.put", PLACE), said.say("unit.cron"), cron(words));
    return head + unit;
  }

  private static String text() {
    try (InputStream in = SystemdUnit.class.getResourceAsStream(UNIT)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static Path full(Path path) {
    return path.toAbsolutePath().normalize();
  }

  /** How this program was started. */
  private static List<String> program() {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String jar = Path.of(System.getProperty("java.class.path")).toAbsolutePath().toString();
    return List.of(java, MEMORY, "-jar", jar);
  }

  private static void refuseControls(String word) {
    if (word.chars().anyMatch(c -> c < ' ' || c == 0x7f)) {
      throw new IllegalArgumentException("A unit cannot hold line feeds or other controls.");
    }
  }

  /** Words of a command line: variables are put in for a single dollar sign. */
  private static String command(List<String> words) {
    return String.join(" ", words.stream().map(word -> quoted(word).replace("$", "$$")).toList());
  }

  private static String quoted(String word) {
    String escaped = word.replace("\\", "\\\\").replace("\"", "\\\"").replace("%", "%%");
    return escaped.matches("[\\w/.:=,%+-]+") ? escaped : '"' + escaped + '"';
  }

  /** The same for the shell, once a time; cron takes a percent sign for the end of the line. */
  private static String cron(List<String> words) {
    List<String> quoted = new ArrayList<>();
    List<String> all = new ArrayList<>(words);
    for (String option : List.of("--once", "--quiet")) {
      if (!all.contains(option)) {
        all.add(option);
      }
    }
    for (String word : all) {
      String safe = word.matches("[\\w/.:=,+-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
      quoted.add(safe.replace("%", "\\%"));
    }
    return String.join(" ", quoted);
  }
}
