package washbook.runner.cli;

import com.google.gson.JsonObject;
import java.io.PrintStream;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import washbook.runner.language.Wording;
import washbook.runner.report.ConsoleReport;
import washbook.runner.report.FileReport;
import washbook.runner.report.FileReport.Status;
import washbook.runner.report.FileResult;
import washbook.runner.report.Json;
import washbook.runner.report.ShownText;
import washbook.runner.report.Totals;
import washbook.runner.run.Watcher;

/** The service's log: one line an event. */
final class WatchLog implements Watcher.Listener {
  /** How lines are written. */
  enum Form {
    TEXT,
    JSON
  }

  private static final int MOST_REASONS = 3;

  private final PrintStream out;
  private final Wording words;
  private final boolean quiet;
  private final Form form;
  private final Totals totals = new Totals();

  /**
   * @param quiet whether only refusals, failures and notices are written
   */
  WatchLog(PrintStream out, Wording words, Form form, boolean quiet) {
    this.out = out;
    this.words = words;
    this.quiet = quiet;
    this.form = form;
  }

  Totals totals() {
    return totals;
  }

  void event(String event, String path, String message) {
    if (quiet) {
      return;
    }
    line(event, path, message, null);
  }

  @Override
  public void notice(String path, String message) {
    line("notice", path, message, null);
  }

  @Override
  public void done(FileResult result) {
    FileReport report = result.report();
    totals.add(report);
    if (quiet && report.refusals().isEmpty()) {
      return;
    }
    String status = ConsoleReport.status(report, words);
    StringBuilder message =
        new StringBuilder(
            result.written() == null
                ? status
                : words.say(
                    result.changed() ? "console.wrote" : "watch.upToDate",
                    status,
                    result.written()));
    for (int i = 0; i < Math.min(MOST_REASONS, report.refusals().size()); i++) {
      message.append("; ").append(ConsoleReport.refused(report.refusals().get(i), words));
    }
    if (report.refusals().size() > MOST_REASONS) {
      message.append("; ");
      message.append(words.say("watch.more", report.refusals().size() - MOST_REASONS));
    }
    String event = report.status() == Status.FAILED ? "failed" : "done";
    line(event, report.path(), message.toString(), result);
  }

  private void line(String event, String path, String message, FileResult result) {
    ZonedDateTime now = ZonedDateTime.now().truncatedTo(ChronoUnit.SECONDS);
    if (form == Form.TEXT) {
      String time = now.format(DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss"));
      out.println(time + " " + path + ": " + message);
      return;
    }
    JsonObject json = new JsonObject();
    json.addProperty("time", now.format(DateTimeFormatter.ISO_OFFSET_DATE_TIME));
    json.addProperty("event", event);
    json.addProperty("path", ShownText.of(path));
    json.addProperty("message", ShownText.of(message));
    if (result != null) {
      json.addProperty("status", result.report().status().word());
      json.addProperty("rows", result.report().rows());
      json.addProperty("filled", result.report().filled());
      json.addProperty("refused", result.report().refusals().size());
      json.addProperty("changed", result.changed());
    }
    out.println(Json.GSON.toJson(json));
  }
}
