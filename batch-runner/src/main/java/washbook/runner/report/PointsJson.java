package washbook.runner.report;

import com.google.gson.FormattingStyle;
import com.google.gson.JsonParseException;
import com.google.gson.TypeAdapter;
import com.google.gson.stream.JsonReader;
import com.google.gson.stream.JsonToken;
import com.google.gson.stream.JsonWriter;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;

/** The points of a chart in one line of a JSON report; a missing value stands as null. */
final class PointsJson extends TypeAdapter<double[][]> {
  private static final int VALUES = 3;

  @Override
  public void write(JsonWriter out, double[][] points) throws IOException {
    FormattingStyle style = out.getFormattingStyle();
    out.setFormattingStyle(FormattingStyle.COMPACT);
    out.beginArray();
    for (double[] point : points) {
      out.beginArray();
      for (double value : point) {
        if (!Double.isFinite(value)) {
          out.nullValue();
        } else if (value == (long) value) {
          out.value((long) value);
        } else {
          out.value(value);
        }
      }
      out.endArray();
    }
    out.endArray();
    out.setFormattingStyle(style);
  }

  @Override
  public double[][] read(JsonReader in) throws IOException {
    List<double[]> points = new ArrayList<>();
    in.beginArray();
    while (in.hasNext()) {
      double[] point = new double[VALUES];
      in.beginArray();
      for (int i = 0; i < VALUES; i++) {
        if (in.peek() == JsonToken.NULL) {
          in.nextNull();
          point[i] = Double.NaN;
        } else {
          point[i] = in.nextDouble();
        }
      }
      in.endArray();
      points.add(point);
      if (points.size() > BatchSeries.MOST_POINTS) {
        throw new JsonParseException("more points than a chart has");
      }
    }
    in.endArray();
    return points.toArray(double[][]::new);
  }
}
