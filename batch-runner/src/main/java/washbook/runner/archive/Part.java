package washbook.runner.archive;

/**
 * One entry of an archive.
 *
 * @param name as written, with "/" between folders
 * @param method 0 stored, 8 deflated
 * @param compressedSize bytes in the archive
 * @param size bytes when read
 * @param crc32 of the bytes when read
 * @param recordStart where the entry's local header begins
 * @param dataStart where its compressed bytes begin
 * @param recordEnd where the next entry or the directory begins
 * @param directoryRecord the entry's bytes in the directory, for writing them again
 */
public record Part(
    String name,
    int flags,
    int method,
    long compressedSize,
    long size,
    long crc32,
    long recordStart,
    long dataStart,
    long recordEnd,
    @SuppressWarnings("ArrayRecordComponent") byte[] directoryRecord) {

  /** Written out: Java takes long over the first hash that it makes of a record itself. */
  @Override
  public int hashCode() {
    return name.hashCode();
  }

  boolean isEncrypted() {
    return (flags & 1) != 0;
  }
}
