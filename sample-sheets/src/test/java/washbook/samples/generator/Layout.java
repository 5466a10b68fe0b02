package washbook.samples.generator;

/** How the tables of a ferment log stand in their sheet. */
enum Layout {
  PLAIN(3),
  TITLE(2),
  KEY_LINES(3),
  UNIT_ROW(2),
  TWO_BELOW(1),
  SIDE_BY_SIDE(1),
  NAME_LINES(1),
  BATCH_COLUMN(2),
  UNKNOWN_BATCH_COLUMN(2),
  VESSELS_SHARE_DATES(1),
  AVERAGES_BELOW(1),
  SECOND_HEADING(1),
  SPIRIT_BELOW(1),
  SENSOR_EXPORT(2);

  private final int weight;

  Layout(int weight) {
    this.weight = weight;
  }

  static Layout choose(Choice choice) {
    int sum = 0;
    for (Layout layout : values()) {
      sum += layout.weight;
    }
    int at = choice.whole(1, sum);
    for (Layout layout : values()) {
      at -= layout.weight;
      if (at <= 0) {
        return layout;
      }
    }
    throw new IllegalStateException("weights do not add up");
  }

  /** Whether one table holds more than one batch, told apart by a column or by lines. */
  boolean isShared() {
    return this == NAME_LINES || this == BATCH_COLUMN || this == UNKNOWN_BATCH_COLUMN;
  }

  /** Whether there are several tables of readings. */
  boolean isSeveral() {
    return this == TWO_BELOW || this == SIDE_BY_SIDE || this == VESSELS_SHARE_DATES;
  }
}
