package washbook.runner.report;

import com.google.gson.annotations.SerializedName;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import washbook.log.RowAccount;
import washbook.log.overview.BatchOverview;
import washbook.runner.language.Wording;

/**
 * What was done with one file. The names of the components are those of the JSON report.
 *
 * @param path as the user would write it, with / between folders
 * @param status one of {@link Status}
 * @param curves for the charts; empty unless they were asked for
 * @param overview where each batch stands; empty unless it was asked for
 * @param map the map beside the file, or the custom property with answers inside it, that was used
 *     without being named; null for none
 */
public record FileReport(
    String path,
    Status status,
    List<TableReport> tables,
    List<Refusal> refusals,
    List<BatchSeries> curves,
    List<BatchOverview> overview,
    String map) {

  /** A report that was written without curves or overview has none. */
  public FileReport {
    curves = curves == null ? List.of() : curves;
    overview = overview == null ? List.of() : overview;
  }

  public FileReport(
      String path,
      Status status,
      List<TableReport> tables,
      List<Refusal> refusals,
      List<BatchSeries> curves) {
    this(path, status, tables, refusals, curves, List.of(), null);
  }

  /**
   * One table of readings or of jars.
   *
   * @param batches none where the table waits for an answer
   * @param kind {@link #FERMENT} or {@link #STILL_RUN}; null in reports of earlier versions
   * @param account what became of each of its rows; null in reports of earlier versions
   */
  public record TableReport(
      String sheet, String range, List<BatchReport> batches, String kind, RowAccount account) {
    static final String FERMENT = "ferment";
    static final String STILL_RUN = "still run";

    /** A table of ferments without an account. */
    public TableReport(String sheet, String range, List<BatchReport> batches) {
      this(sheet, range, batches, FERMENT, null);
    }

    /**
     * @param isRun whether its batches are still runs
     */
    public static TableReport of(
        String sheet, String range, List<BatchReport> batches, boolean isRun, RowAccount account) {
      return new TableReport(sheet, range, batches, isRun ? STILL_RUN : FERMENT, account);
    }

    boolean isRun() {
      return STILL_RUN.equals(kind);
    }
  }

  /**
   * One ferment in a table, or one still run.
   *
   * @param originalGravity SG 20/20; null when it is not known, and for a run
   */
  public record BatchReport(
      String name, Double originalGravity, int rows, int filled, int refused) {}

  /**
   * Something that was not done.
   *
   * @param cell sheet and address, as {@code Log!B7}; "" when it is about the whole file
   * @param code one of the functions' codes, or one of this class's
   * @param reason a sentence
   */
  public record Refusal(String cell, String code, String reason) {
    /** A question that the log does not answer; a map can. */
    public static final String NOT_SETTLED = "NOT_SETTLED";

    /** The file could not be read. */
    public static final String UNREADABLE = "UNREADABLE";

    /** The result could not be written. */
    public static final String UNWRITABLE = "UNWRITABLE";

    /** Filled, but without the charts that were asked for. */
    public static final String NO_CHARTS = "NO_CHARTS";
  }

  /** How it ended for a file. */
  public enum Status {
    /** Every row with a reading was filled. */
    @SerializedName("filled")
    FILLED("filled"),
    /** Filled, but some rows were refused. */
    @SerializedName("partly filled")
    PARTLY_FILLED("partly filled"),
    /** Recognised, but nothing could be filled. */
    @SerializedName("refused")
    REFUSED("refused"),
    /** No log was found in it. */
    @SerializedName("nothing recognised")
    NOTHING_RECOGNISED("nothing recognised"),
    /** It could not be read or written. */
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
      return words.say("status." + name());
    }
  }

  public static FileReport failed(String path, String code, String reason) {
    List<Refusal> refusals = List.of(new Refusal("", code, reason));
    return new FileReport(path, Status.FAILED, List.of(), refusals, List.of());
  }

  /** The same with one more refusal, which says nothing about the rows. */
  public FileReport with(Refusal refusal) {
    List<Refusal> more = Stream.concat(refusals.stream(), Stream.of(refusal)).toList();
    return new FileReport(path, status, tables, more, curves, overview, map);
  }

  /** Whether the map that was used is kept in the file itself. */
  boolean isMapInside() {
    return map != null && !map.endsWith(".map");
  }

  public int rows() {
    return sum(BatchReport::rows);
  }

  public int filled() {
    return sum(BatchReport::filled);
  }

  private int sum(ToIntFunction<BatchReport> count) {
    return tables.stream().flatMap(t -> t.batches().stream()).mapToInt(count).sum();
  }
}
