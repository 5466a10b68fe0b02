package washbook.log.audit;

/**
 * What is known of one row that has a figure of the log's own.
 *
 * @param reading what the instrument showed, SG
 * @param temperatureC of the reading
 * @param originalReading the original gravity as it was read, SG
 * @param originalTemperatureC of that reading; NaN when the original gravity is stated
 * @param original original gravity, SG 20/20, of everything put in by then
 * @param unfed the same without what was added later
 * @param gravity SG 20/20
 * @param offset what the instrument shows too much
 */
record AuditRow(
    double reading,
    double temperatureC,
    double originalReading,
    double originalTemperatureC,
    double original,
    double unfed,
    double gravity,
    double offset) {}
