package washbook.office;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.star.beans.XPropertySet;
import com.sun.star.frame.XLayoutManager;
import com.sun.star.frame.XModel;
import com.sun.star.uno.UnoRuntime;
import java.awt.Color;
import java.awt.image.BufferedImage;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import washbook.office.testing.Book;

/** The toolbar stands in Calc's window, and its pictures are seen on light and dark. */
class ToolbarIT {
  private static final String NAME = "private:resource/toolbar/addon_washbook.office";

  /** The contrast that is asked for of parts of a picture without which it is not understood. */
  private static final double LEAST_CONTRAST = 3;

  @Test
  void standsInTheWindowWithEveryCommand() throws Exception {
    try (Book book = SharedOffice.get().visibleBook()) {
      Object frame = book.as(XModel.class).getCurrentController().getFrame();
      Object manager =
          UnoRuntime.queryInterface(XPropertySet.class, frame).getPropertyValue("LayoutManager");
      XLayoutManager layout = UnoRuntime.queryInterface(XLayoutManager.class, manager);
      assertTrue(layout.isElementVisible(NAME));
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"fill", "audit", "charts", "explain", "portable", "recalculate", "help"})
  void picturesAreSeenOnLightAndDark(String command) throws Exception {
    try (FileSystem zip = FileSystems.newFileSystem(SharedOffice.extension())) {
      for (int size : new int[] {16, 26}) {
        String name = "icons/" + command + "_" + size + ".png";
        BufferedImage picture;
        try (var in = Files.newInputStream(zip.getPath(name))) {
          picture = ImageIO.read(in);
        }
        assertEquals(2 * size, picture.getWidth(), name);
        assertEquals(2 * size, picture.getHeight(), name);
        List<Color> drawn = drawn(picture);
        assertTrue(drawn.size() > size * size / 4, name);
        for (Color color : drawn) {
          assertTrue(contrast(color, new Color(0xF0F0F0)) >= LEAST_CONTRAST, name + color);
          assertTrue(contrast(color, new Color(0x2B2B2B)) >= LEAST_CONTRAST, name + color);
        }
      }
    }
  }

  private static List<Color> drawn(BufferedImage picture) {
    List<Color> opaque = new ArrayList<>();
    for (int y = 0; y < picture.getHeight(); y++) {
      for (int x = 0; x < picture.getWidth(); x++) {
        Color color = new Color(picture.getRGB(x, y), true);
        if (color.getAlpha() == 255) {
          opaque.add(color);
        }
      }
    }
    return opaque;
  }

  /** By the luminances of sRGB, as guidelines for readable pages count it. */
  private static double contrast(Color one, Color other) {
    double a = luminance(one) + 0.05;
    double b = luminance(other) + 0.05;
    return Math.max(a, b) / Math.min(a, b);
  }

  private static double luminance(Color color) {
    return 0.2126 * linear(color.getRed())
        + 0.7152 * linear(color.getGreen())
        + 0.0722 * linear(color.getBlue());
  }

  private static double linear(int channel) {
    double part = channel / 255.0;
    return part <= 0.04045 ? part / 12.92 : Math.pow((part + 0.055) / 1.055, 2.4);
  }
}
