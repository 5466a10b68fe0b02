package washbook.log.overview;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import washbook.log.WarningLimits;
import washbook.log.language.Language;
import washbook.log.language.Message;

/**
 * Where one batch stands. The names of the components are those of the JSON report; what is not
 * known is null.
 *
 * @param sheet the sheet that it is on
 * @param batch its name
 * @param wash the kind of wash that the figures hold for
 * @param firstDate of its readings, as 2025-11-30; null where the log has no dates
 * @param lastDate of its readings
 * @param days from the first reading to the last
 * @param readings rows with a reading
 * @param refused how many of them were refused
 * @param originalGravity SG 20/20, of everything put in
 * @param latestGravity SG 20/20, corrected
 * @param alcohol to date, % vol
 * @param alcoholPlusMinus one standard deviation of it
 * @param apparentAttenuation %
 * @param realAttenuation %
 * @param extractLeft really there, % by mass
 * @param rate points (1000 x SG) per day that the gravity falls at the last reading
 * @param state as the function FERMENTSTATE says it; "" without times
 * @param daysToFinish from the last reading; null where the readings do not tell
 * @param daysToFinishPlusMinus one standard deviation of it
 * @param lowestTemperatureC as measured
 * @param highestTemperatureC as measured
 * @param warnings what to look at
 * @param limits when it is worth a warning, as far as the log's map says so; null for nothing
 */
public record BatchOverview(
    String sheet,
    String batch,
    String wash,
    String firstDate,
    String lastDate,
    Double days,
    int readings,
    int refused,
    Double originalGravity,
    Double latestGravity,
    Double alcohol,
    Double alcoholPlusMinus,
    Double apparentAttenuation,
    Double realAttenuation,
    Double extractLeft,
    Double rate,
    String state,
    Double daysToFinish,
    Double daysToFinishPlusMinus,
    Double lowestTemperatureC,
    Double highestTemperatureC,
    List<Warning> warnings,
    String limits) {

  private static final Set<String> STATES =
      Set.of("lag", "working", "slowing", "stuck", "done", "restarted", "too few readings");

  /** A list of its own. */
  public BatchOverview {
    warnings = warnings == null ? List.of() : List.copyOf(warnings);
  }

  /**
   * The same with the warnings that depend on the day on which it is looked at.
   *
   * @param wanted limits that go before those of its map
   * @param language in which they are told
   */
  public BatchOverview asOf(LocalDate today, WarningLimits wanted, Language language) {
    List<Warning> now = new ArrayList<>(warnings);
    now.removeIf(warning -> warning.kind() == Warning.Kind.OVERDUE);
    WarningLimits all =
        limits == null ? wanted : wanted.over(WarningLimits.parse(List.of(limits.split(","))));
    new Warnings(all).overdue(this, today, 0).ifPresent(found -> now.add(found.in(language)));
    return with(now);
  }

  /** The state as a person reads it. */
  public Message stateMessage() {
    return STATES.contains(state)
        ? Message.of("state." + state.replace(' ', '-'))
        : Message.of("plain", state);
  }

  BatchOverview with(List<Warning> other) {
    return new BatchOverview(
        sheet,
        batch,
        wash,
        firstDate,
        lastDate,
        days,
        readings,
        refused,
        originalGravity,
        latestGravity,
        alcohol,
        alcoholPlusMinus,
        apparentAttenuation,
        realAttenuation,
        extractLeft,
        rate,
        state,
        daysToFinish,
        daysToFinishPlusMinus,
        lowestTemperatureC,
        highestTemperatureC,
        other,
        limits);
  }
}
