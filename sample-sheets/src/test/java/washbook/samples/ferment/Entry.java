package washbook.samples.ferment;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** One reading as a person takes it, and what goes wrong when it is written down. */
public final class Entry {
  private final Moment moment;
  private final Instrument instrument;
  private final Thermometer thermometer;
  private final double shown;
  private final double temperatureShown;
  private final Map<String, Object> overrides = new HashMap<>();
  private boolean refused;
  private boolean without;
  private double loose;

  public Entry(Moment moment, Instrument instrument, Thermometer thermometer, double temperatureC) {
    this.moment = moment;
    this.instrument = instrument;
    this.thermometer = thermometer;
    this.temperatureShown = thermometer.shows(temperatureC);
    this.shown = instrument.shows(moment, thermometer.celsius(temperatureShown));
  }

  /** Readings of one ferment at the given days, taken at the temperature of the wash. */
  public static List<Entry> readings(
      Ferment ferment, Instrument instrument, Thermometer thermometer, double... days) {
    List<Entry> entries = new ArrayList<>();
    for (double day : days) {
      entries.add(new Entry(ferment.at(day), instrument, thermometer, ferment.temperatureC(day)));
    }
    return entries;
  }

  /** Readings all taken at one temperature, for example on cooled samples. */
  public static List<Entry> readingsAt(
      double temperatureC, Ferment ferment, Instrument instrument, double... days) {
    List<Entry> entries = new ArrayList<>();
    for (double day : days) {
      entries.add(new Entry(ferment.at(day), instrument, Thermometer.C_TENTH, temperatureC));
    }
    return entries;
  }

  /** Writes something else into the cell under {@code header}. */
  public Entry put(String header, Object value) {
    overrides.put(header, value);
    return this;
  }

  /** The same where the row can no longer be computed. */
  public Entry spoil(String header, Object value) {
    refused = true;
    return put(header, value);
  }

  /** The same where the row then holds no reading at all, only a note or an addition. */
  public Entry withoutReading(String header, Object value) {
    without = true;
    return put(header, value);
  }

  public boolean overridden(String header) {
    return overrides.containsKey(header);
  }

  public Object override(String header) {
    return overrides.get(header);
  }

  public Moment moment() {
    return moment;
  }

  public Instrument instrument() {
    return instrument;
  }

  public LocalDateTime time() {
    return moment.time();
  }

  /** On the instrument's scale. */
  public double shown() {
    return shown;
  }

  /** In the thermometer's unit. */
  public double temperature() {
    return temperatureShown;
  }

  public double temperatureC() {
    return thermometer.celsius(temperatureShown);
  }

  /** Reading as SG on the instrument. */
  public double shownGravity() {
    return instrument.scale().toGravity(shown);
  }

  public boolean refused() {
    return refused;
  }

  public boolean without() {
    return without;
  }

  /** Compare with the truth only, with so many % vol more room: no plain hydrometer reading. */
  public Entry loose(double percentVolume) {
    loose = percentVolume;
    return this;
  }

  public double loose() {
    return loose;
  }
}
