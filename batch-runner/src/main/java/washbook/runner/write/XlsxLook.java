package washbook.runner.write;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Makes cell formats (ECMA-376-1:2016, 18.8.45 xf) from the markup of others. */
final class XlsxLook {
  private static final Pattern LOOK =
      Pattern.compile("\\s(fontId|fillId|borderId)\\s*=\\s*[\"'](\\d{1,9})[\"']");
  private static final Pattern APPLY = attribute("applyAlignment");
  private static final Pattern WRAP = attribute("wrapText");
  private static final Pattern SHRINK = attribute("shrinkToFit");
  private static final Pattern WRAPS = Pattern.compile("\\swrapText\\s*=\\s*[\"'](1|true)[\"']");
  private static final Pattern ALIGNMENT =
      Pattern.compile("<([\\w.-]+:)?alignment(?=[\\s/>])[^>]*>");
  private static final Pattern PARENT = Pattern.compile("\\sxfId\\s*=\\s*[\"'](\\d{1,9})[\"']");
  private static final Pattern PROTECTION =
      Pattern.compile("<([\\w.-]+:)?protection(?=[\\s/>])[^>]*/>");

  private XlsxLook() {}

  private static Pattern attribute(String name) {
    return Pattern.compile("\\s" + name + "\\s*=\\s*(\"[^\"]*\"|'[^']*')");
  }

  static boolean isPlain(String format) {
    Matcher look = LOOK.matcher(format.substring(0, format.indexOf('>')));
    while (look.find()) {
      if (!look.group(2).equals("0")) {
        return false;
      }
    }
    return true;
  }

  /** The same format in which text wraps. */
  static String wrapping(String format, String prefix) {
    Matcher alignment = ALIGNMENT.matcher(format);
    if (alignment.find()) {
      String tag = alignment.group();
      if (WRAPS.matcher(tag).find()) {
        return format;
      }
      String kept = SHRINK.matcher(WRAP.matcher(tag).replaceAll("")).replaceAll("");
      int end = kept.endsWith("/>") ? kept.length() - 2 : kept.length() - 1;
      String wrapped = kept.substring(0, end).stripTrailing() + " wrapText=\"1\"";
      return applied(format.substring(0, alignment.start()))
          + wrapped
          + kept.substring(end)
          + format.substring(alignment.end());
    }
    int tagEnd = format.indexOf('>');
    boolean empty = format.charAt(tagEnd - 1) == '/';
    return applied(format.substring(0, empty ? tagEnd - 1 : tagEnd).stripTrailing() + ">")
        + "<"
        + prefix
        + "alignment wrapText=\"1\"/>"
        + (empty ? "</" + prefix + "xf>" : format.substring(tagEnd + 1));
  }

  /** {@code start} is the format up to its alignment at most. */
  private static String applied(String start) {
    int tagEnd = start.indexOf('>');
    String tag = APPLY.matcher(start.substring(0, tagEnd)).replaceAll("");
    return tag + " applyAlignment=\"1\"" + start.substring(tagEnd);
  }

  /** Font, fill, border and protection alone. */
  static String lookOf(String format, String prefix) {
    String tag = format.substring(0, format.indexOf('>'));
    StringBuilder look = new StringBuilder("<" + prefix + "xf numFmtId=\"0\"");
    Matcher part = LOOK.matcher(tag);
    while (part.find()) {
      look.append(' ').append(part.group(1)).append("=\"").append(part.group(2)).append('"');
    }
    Matcher parent = PARENT.matcher(tag);
    look.append(" xfId=\"").append(parent.find() ? parent.group(1) : "0").append('"');
    look.append(" applyFont=\"1\" applyFill=\"1\" applyBorder=\"1\"");
    Matcher protection = PROTECTION.matcher(format);
    if (!protection.find()) {
      return look.append("/>").toString();
    }
    look.append(" applyProtection=\"1\">").append(protection.group());
    return look.append("</").append(prefix).append("xf>").toString();
  }
}
