package washbook.samples.sheets;

import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import washbook.log.ComputedHeader;
import washbook.log.sheet.CellAddress;

/**
 * Draws a log before and after filling, as the README shows it, and writes down beside the picture
 * what it was drawn from. Texts are those that the cells show; nothing else of the workbook is
 * drawn.
 */
public final class Picture {
  private static final Path BEFORE = Path.of("samples", "molasses-2-messy.xlsx");
  private static final Path AFTER = Path.of("golden", "molasses-2-messy.xlsx");
  private static final int LINE = 19;
  private static final int EDGE = 16;
  private static final int ROW_NUMBERS = 30;
  private static final int LONGEST_HEAD = 16;
  private static final int LONGEST_LINE = 50;
  private static final Color OURS = new Color(0xE4EEF1);
  private static final Color HEADS = new Color(0xFBF3DC);
  private static final Color RULER = new Color(0xF0F0F0);
  private static final Color RULE = new Color(0xC8C8C8);
  private static final Font PLAIN = new Font(Font.SANS_SERIF, Font.PLAIN, 13);
  private static final Font BOLD = PLAIN.deriveFont(Font.BOLD);

  /** One cell: what it shows, whether it stands at the right, and whether its column is hidden. */
  private record Shown(List<String> lines, boolean number, boolean hidden) {}

  private Picture() {}

  /** Arguments: the folder of the sample sheets. */
  public static void main(String[] arguments) throws IOException {
    System.setProperty("java.awt.headless", "true");
    Path folder = Path.of(arguments[0]);
    BufferedImage before = draw("Before: a log as people keep it", folder.resolve(BEFORE));
    BufferedImage after = draw("After: washbook fill", folder.resolve(AFTER));
    int width = Math.max(before.getWidth(), after.getWidth());
    BufferedImage both =
        new BufferedImage(
            width, before.getHeight() + after.getHeight(), BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = both.createGraphics();
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, width, both.getHeight());
    graphics.drawImage(before, 0, 0, null);
    graphics.drawImage(after, 0, before.getHeight(), null);
    graphics.dispose();
    ImageIO.write(both, "png", folder.resolve("before-and-after.png").toFile());
    Files.writeString(folder.resolve("before-and-after.source.txt"), source(folder));
  }

  /** What the picture is drawn from: the two sheets and a digest of what their cells show. */
  static String source(Path folder) throws IOException {
    return "SHA-256 of the texts drawn in before-and-after.png:\n"
        + digest(folder.resolve(BEFORE))
        + "  samples/molasses-2-messy.xlsx\n"
        + digest(folder.resolve(AFTER))
        + "  golden/molasses-2-messy.xlsx\n";
  }

  private static String digest(Path file) throws IOException {
    byte[] texts = cells(file).toString().getBytes(StandardCharsets.UTF_8);
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(texts));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<List<Shown>> cells(Path file) throws IOException {
    DataFormatter formatter = new DataFormatter(Locale.US);
    formatter.setUseCachedValuesForFormulaCells(true);
    List<List<Shown>> rows = new ArrayList<>();
    try (InputStream in = Files.newInputStream(file);
        XSSFWorkbook workbook = new XSSFWorkbook(in)) {
      XSSFSheet sheet = workbook.getSheet("winter");
      for (int r = 0; r <= sheet.getLastRowNum(); r++) {
        Row row = sheet.getRow(r);
        List<Shown> shown = new ArrayList<>();
        for (int c = 0; row != null && c < row.getLastCellNum(); c++) {
          String text = formatter.formatCellValue(row.getCell(c)).strip();
          boolean hidden = sheet.isColumnHidden(c);
          shown.add(
              new Shown(hidden ? List.of("") : lines(text), text.matches("[-\\d./,:]+"), hidden));
        }
        rows.add(shown);
      }
    }
    return rows;
  }

  private static List<String> lines(String text) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    int longest = ComputedHeader.read(text).isPresent() ? LONGEST_HEAD : LONGEST_LINE;
    for (String word : text.split("\\s+")) {
      if (line.length() > 0 && line.length() + word.length() >= longest) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.length() > 0 ? " " : "").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  private static BufferedImage draw(String title, Path file) throws IOException {
    List<List<Shown>> rows = cells(file);
    FontMetrics metrics =
        new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics().getFontMetrics(BOLD);
    int head = headRow(rows);
    int[] left = new int[rows.stream().mapToInt(List::size).max().orElse(0) + 1];
    left[0] = EDGE + ROW_NUMBERS;
    for (int c = 1; c < left.length; c++) {
      left[c] = left[c - 1] + width(rows, head, c - 1, metrics);
    }
    int height = EDGE + 3 * LINE;
    for (List<Shown> row : rows) {
      height += height(row);
    }
    BufferedImage image =
        new BufferedImage(left[left.length - 1] + EDGE, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, image.getWidth(), height);
    graphics.setColor(Color.BLACK);
    graphics.setFont(BOLD.deriveFont(17f));
    graphics.drawString(title, EDGE, EDGE + LINE);
    int y = EDGE + 3 * LINE / 2;
    ruler(graphics, left, y);
    y += LINE;
    for (int r = 0; r < rows.size(); r++) {
      row(graphics, rows.get(r), r, left, y, head);
      y += height(rows.get(r));
    }
    graphics.dispose();
    return image;
  }

  /** The row with the most texts. */
  private static int headRow(List<List<Shown>> rows) {
    int best = 0;
    for (int r = 0; r < rows.size(); r++) {
      best = texts(rows.get(r)) > texts(rows.get(best)) ? r : best;
    }
    return best;
  }

  private static long texts(List<Shown> row) {
    return row.stream().filter(s -> !s.number() && !s.lines().get(0).isEmpty()).count();
  }

  private static int height(List<Shown> row) {
    return LINE * row.stream().mapToInt(s -> s.lines().size()).max().orElse(1);
  }

  private static int width(List<List<Shown>> rows, int head, int column, FontMetrics metrics) {
    boolean hidden = rows.get(head).size() > column && rows.get(head).get(column).hidden();
    int widest = hidden ? 0 : 40;
    for (List<Shown> row : rows.subList(head, rows.size())) {
      if (!hidden && column < row.size()) {
        for (String line : row.get(column).lines()) {
          widest = Math.max(widest, metrics.stringWidth(line) + 14);
        }
      }
    }
    return widest;
  }

  private static void ruler(Graphics2D graphics, int[] left, int y) {
    graphics.setColor(RULER);
    graphics.fillRect(EDGE, y, left[left.length - 1] - EDGE, LINE);
    graphics.setFont(PLAIN);
    graphics.setColor(Color.DARK_GRAY);
    for (int c = 0; c + 1 < left.length; c++) {
      if (left[c] == left[c + 1]) {
        continue;
      }
      graphics.drawString(CellAddress.letters(c), (left[c] + left[c + 1]) / 2 - 4, y + 14);
    }
  }

  private static void row(
      Graphics2D graphics, List<Shown> row, int number, int[] left, int y, int head) {
    int height = height(row);
    graphics.setColor(RULER);
    graphics.fillRect(EDGE, y, ROW_NUMBERS, height);
    for (int c = 0; number >= head && c < row.size(); c++) {
      boolean ours = isOurs(row, c);
      graphics.setColor(number == head ? (ours ? OURS : HEADS) : Color.WHITE);
      graphics.fillRect(left[c], y, left[c + 1] - left[c], height);
    }
    graphics.setColor(RULE);
    graphics.drawLine(EDGE, y + height - 1, left[left.length - 1], y + height - 1);
    graphics.setColor(Color.DARK_GRAY);
    graphics.setFont(PLAIN);
    graphics.drawString(Integer.toString(number + 1), EDGE + 6, y + 14);
    graphics.setColor(Color.BLACK);
    graphics.setFont(number == head || number == 0 ? BOLD : PLAIN);
    for (int c = 0; c < row.size(); c++) {
      int at = y + 14;
      for (String line : row.get(c).lines()) {
        int indent =
            row.get(c).number()
                ? left[c + 1] - left[c] - 7 - graphics.getFontMetrics().stringWidth(line)
                : 7;
        graphics.drawString(line, left[c] + indent, at);
        at += LINE;
      }
    }
  }

  private static boolean isOurs(List<Shown> row, int column) {
    return row.get(column).lines().stream().anyMatch(line -> line.contains("Washbook"));
  }
}
