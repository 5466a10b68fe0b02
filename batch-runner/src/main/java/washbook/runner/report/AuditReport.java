package washbook.runner.report;

import com.google.gson.annotations.JsonAdapter;
import com.google.gson.annotations.SerializedName;
import java.util.Arrays;
import java.util.List;
import washbook.log.ComputedColumn;
import washbook.log.ComputedHeader;
import washbook.log.WrittenScale;
import washbook.log.language.Language;
import washbook.runner.language.Wording;
import washbook.runner.report.FileReport.Refusal;

/**
 * How the own figures of one file compare with ours. The names of the components are those of the
 * JSON report.
 *
 * @param refusals questions that the log leaves open, and why a file could not be read
 * @param curves for the charts; empty unless they were asked for
 */
public record AuditReport(
    String path,
    Status status,
    List<ColumnReport> columns,
    List<Refusal> refusals,
    List<Curves> curves) {

  /** A report that was written without curves has none. */
  public AuditReport {
    curves = curves == null ? List.of() : curves;
  }

  /** How it ended for a file. */
  public enum Status {
    @SerializedName("compared")
    COMPARED("compared"),
    /** A log, but without figures of its own, or its readings are not understood. */
    @SerializedName("nothing to compare")
    NOTHING_TO_COMPARE("nothing to compare"),
    @SerializedName("nothing recognised")
    NOTHING_RECOGNISED("nothing recognised"),
    @SerializedName("failed")
    FAILED("failed");

    private final String word;

    Status(String word) {
      this.word = word;
    }

    /** As in reports for programs. */
    public String word() {
      return word;
    }

    public String said(Wording words) {
      return words.say("audit.status." + name());
    }
  }

  /**
   * One of the log's own columns.
   *
   * @param comparedWith what of ours stands against it, in English
   * @param compared rows with both figures
   * @param differing rows that differ by more than 0.1 % vol, or what that means in the unit
   * @param largest the largest difference, own less ours
   * @param largestCell where it stands; "" without rows
   * @param causes the likely causes as words for programs
   * @param cause the same as a sentence for people
   */
  public record ColumnReport(
      String sheet,
      String range,
      String header,
      String comparedWith,
      int compared,
      int differing,
      double largest,
      String largestCell,
      List<String> causes,
      String cause,
      List<BatchReport> batches) {}

  /**
   * One batch in it.
   *
   * @param limit the difference that counts, in the column's unit
   * @param rows those that differ by more
   */
  public record BatchReport(
      String name,
      int compared,
      int differing,
      double largest,
      double limit,
      List<RowReport> rows) {}

  /** One differing row. */
  public record RowReport(String cell, double own, double ours, double difference) {}

  /**
   * One batch in one column.
   *
   * @param unit of the first values: days or readings
   * @param axis what is shown, with its unit
   * @param points ascending: time, the log's own figure, ours, rounded
   */
  public record Curves(
      String title, String unit, String axis, @JsonAdapter(PointsJson.class) double[][] points) {}

  /** The name of a figure of ours in its reader's language. */
  static String comparedWith(String english, Wording words) {
    return Arrays.stream(ComputedColumn.values())
        .filter(one -> title(one, Language.EN).equals(english))
        .findFirst()
        .map(one -> title(one, words.language()))
        .orElse(english);
  }

  private static String title(ComputedColumn column, Language language) {
    return ComputedHeader.title(column, WrittenScale.SG, language);
  }

  public static AuditReport failed(String path, String code, String reason) {
    List<Refusal> refusals = List.of(new Refusal("", code, reason));
    return new AuditReport(path, Status.FAILED, List.of(), refusals, List.of());
  }

  public int compared() {
    return columns.stream().mapToInt(ColumnReport::compared).sum();
  }

  public int differing() {
    return columns.stream().mapToInt(ColumnReport::differing).sum();
  }
}
