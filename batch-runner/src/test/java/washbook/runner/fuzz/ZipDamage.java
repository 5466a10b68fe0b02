package washbook.runner.fuzz;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import java.util.zip.ZipOutputStream;

/** Damage to an archive's entries and their content; the archive itself is whole. */
final class ZipDamage {
  private static final List<String> NAMES =
      List.of("../../evil.xml", "/abs.xml", "a\\b.xml", "xl/workbook.xml", "content.xml", "", "x/");

  private ZipDamage() {}

  /** {@code other} is another archive to take parts from. */
  static byte[] some(byte[] whole, byte[] other, Random random) {
    try {
      Map<String, byte[]> parts = parts(whole);
      if (parts.isEmpty()) {
        return ByteDamage.some(whole, random);
      }
      List<String> names = new ArrayList<>(parts.keySet());
      String name = pick(names, random);
      byte[] part = parts.get(name);
      switch (random.nextInt(8)) {
        case 0 -> parts.remove(name);
        case 1 -> {
          parts.remove(name);
          parts.put(NAMES.get(random.nextInt(NAMES.size())), part);
        }
        case 2 -> {
          String second = pick(names, random);
          parts.put(name, parts.get(second));
          parts.put(second, part);
        }
        case 3 -> {
          Map<String, byte[]> others = parts(other);
          if (!others.isEmpty()) {
            parts.put(name, others.get(pick(new ArrayList<>(others.keySet()), random)));
          }
        }
        case 4 -> parts.put(name, ByteDamage.some(part, random));
        default -> parts.put(name, TextDamage.xml(part, random));
      }
      return packed(parts, random.nextInt(4) == 0);
    } catch (IOException | IllegalArgumentException unpackable) {
      return ByteDamage.some(whole, random);
    }
  }

  /** Mostly the parts that matter. */
  private static String pick(List<String> names, Random random) {
    List<String> telling =
        names.stream()
            .filter(n -> n.matches("content.xml|.*/sheet\\d+.xml|.*(sharedStrings|workbook).*"))
            .toList();
    return telling.isEmpty() || random.nextInt(3) == 0
        ? names.get(random.nextInt(names.size()))
        : telling.get(random.nextInt(telling.size()));
  }

  private static Map<String, byte[]> parts(byte[] archive) throws IOException {
    Map<String, byte[]> parts = new LinkedHashMap<>();
    try (ZipInputStream in = new ZipInputStream(new ByteArrayInputStream(archive))) {
      for (ZipEntry entry = in.getNextEntry(); entry != null; entry = in.getNextEntry()) {
        parts.put(entry.getName(), in.readAllBytes());
      }
    }
    return parts;
  }

  private static byte[] packed(Map<String, byte[]> parts, boolean stored) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream out = new ZipOutputStream(bytes)) {
      out.setLevel(Deflater.BEST_SPEED);
      for (Map.Entry<String, byte[]> part : parts.entrySet()) {
        ZipEntry entry = new ZipEntry(part.getKey());
        entry.setTime(0);
        if (stored || part.getKey().equals("mimetype")) {
          CRC32 crc = new CRC32();
          crc.update(part.getValue());
          entry.setMethod(ZipEntry.STORED);
          entry.setSize(part.getValue().length);
          entry.setCrc(crc.getValue());
        }
        out.putNextEntry(entry);
        out.write(part.getValue());
        out.closeEntry();
      }
    }
    return bytes.toByteArray();
  }
}
