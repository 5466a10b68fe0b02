package washbook.runner.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.ParseResult;

/** Writes a systemd unit that runs a watch command as a service. */
final class SystemdUnit {
  private static final String TEXT =
      """
      # Put this into /etc/systemd/system/washbook.service, set User= to who owns the logs, then:
      #   systemctl daemon-reload && systemctl enable --now washbook
      #   journalctl -u washbook -f
      [Unit]
      Description=Washbook: keeps the logs in %1$s computed
      RequiresMountsFor=%1$s

      [Service]
      User=washbook
      ExecStart=%2$s
      Restart=on-failure
      RestartSec=30
      # Java says 143 when it was told to end and did so.
      SuccessExitStatus=143
      TimeoutStopSec=90
      StateDirectory=washbook
      ProtectSystem=strict
      ProtectHome=read-only
      PrivateTmp=true
      NoNewPrivileges=true
      ReadWritePaths=%3$s

      [Install]
      WantedBy=multi-user.target
      """;

  private SystemdUnit() {}

  /** The unit for the given command line, with full paths in place of those given. */
  static String of(Path folder, ParseResult given) {
    Path full = folder.toAbsolutePath().normalize();
    List<String> words = new ArrayList<>(program());
    List<String> places = new ArrayList<>(List.of(full.toString()));
    words.add("watch");
    List<String> arguments = given.originalArgs();
    boolean pathNext = false;
    for (String argument : arguments.subList(arguments.indexOf("watch") + 1, arguments.size())) {
      if (argument.equals("--print-unit")) {
        continue;
      }
      boolean isPath = pathNext || argument.equals(folder.toString());
      String word = isPath ? Path.of(argument).toAbsolutePath().normalize().toString() : argument;
      if (pathNext && !places.contains(word)) {
        places.add(word);
      }
      pathNext =
          argument.equals("--out") || argument.equals("--map") || argument.equals("--journal");
      words.add(word);
    }
    return TEXT.formatted(full, joined(words), joined(places));
  }

  /** How this program was started. */
  private static List<String> program() {
    String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    String jar = Path.of(System.getProperty("java.class.path")).toAbsolutePath().toString();
    return List.of(java, "-jar", jar);
  }

  private static String joined(List<String> words) {
    List<String> quoted = new ArrayList<>();
    for (String word : words) {
      String escaped = word.replace("\\", "\\\\").replace("\"", "\\\"").replace("%", "%%");
      quoted.add(escaped.matches("[\\w/.:=,%+-]+") ? escaped : '"' + escaped + '"');
    }
    return String.join(" ", quoted);
  }
}
