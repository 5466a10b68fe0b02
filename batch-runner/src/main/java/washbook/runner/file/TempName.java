package washbook.runner.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Names of unfinished files. They stand beside their target, because a file can only be moved into
 * place at one stroke within a file system, and say which process is at work on them.
 */
public final class TempName {
  /** With its dot; names of unfinished files must fit where their targets fit. */
  private static final int LONGEST_EXTENSION = 8;

  private static final String MACHINE = machine();
  private static final String OURS = started(ProcessHandle.current());
  private static final Pattern NAME =
      Pattern.compile("\\.washbook-(?<machine>[^-]*)-(?<pid>\\d{1,18})-(?<started>\\d+)-.*");
  private static final AtomicLong NEXT = new AtomicLong();

  private TempName() {}

  /** A new name in the folder of {@code target}, which keeps a usual extension. */
  public static Path beside(Path target) {
    String name = target.getFileName().toString();
    int dot = name.lastIndexOf('.');
    boolean usual = dot >= 0 && name.length() - dot <= LONGEST_EXTENSION;
    String extension = usual ? name.substring(dot).toLowerCase(Locale.ROOT) : "";
    long pid = ProcessHandle.current().pid();
    return target
        .toAbsolutePath()
        .resolveSibling(
            String.join("-", ".washbook", MACHINE, Long.toString(pid), OURS)
                + "-"
                + NEXT.incrementAndGet()
                + extension);
  }

  public static boolean isOne(Path file) {
    return NAME.matcher(file.getFileName().toString()).matches();
  }

  /** Whether it was left behind by a process of this machine that is no more. */
  public static boolean isLeftBehind(Path file) {
    Matcher name = NAME.matcher(file.getFileName().toString());
    if (!name.matches() || !name.group("machine").equals(MACHINE)) {
      return false;
    }
    return ProcessHandle.of(Long.parseLong(name.group("pid")))
        .map(process -> !started(process).equals(name.group("started")))
        .orElse(true);
  }

  /** Numbers of processes come again, above all in containers; with the start they do not. */
  private static String started(ProcessHandle process) {
    return process.info().startInstant().map(i -> Long.toString(i.toEpochMilli())).orElse("0");
  }

  private static String machine() {
    String name = "";
    try {
      name = Files.readString(Path.of("/etc/hostname"));
    } catch (IOException noSuchFile) {
      name = System.getenv().getOrDefault("COMPUTERNAME", "");
    }
    return name.replaceAll("[^A-Za-z0-9]", "");
  }
}
