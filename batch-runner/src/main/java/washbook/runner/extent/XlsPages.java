package washbook.runner.extent;

import java.util.List;
import org.apache.poi.hssf.model.InternalSheet;
import org.apache.poi.hssf.record.DefaultRowHeightRecord;
import org.apache.poi.hssf.record.GutsRecord;
import org.apache.poi.hssf.record.IndexRecord;
import org.apache.poi.hssf.record.PrintSetupRecord;
import org.apache.poi.hssf.record.RecordBase;
import org.apache.poi.hssf.record.WSBoolRecord;
import org.apache.poi.hssf.usermodel.HSSFSheet;

/** The records of a sheet that say how it is printed ([MS-XLS] 2.4.351 WsBool, 2.4.257 Setup). */
public final class XlsPages {
  /** Shown outlines, as a program writes by itself. */
  private static final byte OUTLINES = (byte) 0xC1;

  private static final byte PAGE_BREAKS = 4;

  private XlsPages() {}

  /** Whether pages are fitted: bit 8 of WsBool, which the library has under the name of bit 0. */
  public static boolean isFit(HSSFSheet sheet) {
    return sheet.getAutobreaks();
  }

  /** Fits pages, for those who go by the library's name of it too. */
  public static void setFit(HSSFSheet sheet) {
    sheet.setAutobreaks(true);
    sheet.setFitToPage(true);
  }

  /** Adds those that a small program has left out: they are what they would be without. */
  public static void complete(HSSFSheet sheet) {
    InternalSheet inner = sheet.getSheet();
    if (inner.findFirstRecordLocBySid(WSBoolRecord.sid) < 0) {
      WSBoolRecord record = new WSBoolRecord();
      record.setWSBool1(PAGE_BREAKS);
      record.setWSBool2(OUTLINES);
      List<RecordBase> records = inner.getRecords();
      int at = 1;
      for (short sid : new short[] {IndexRecord.sid, GutsRecord.sid, DefaultRowHeightRecord.sid}) {
        at = Math.max(at, inner.findFirstRecordLocBySid(sid) + 1);
      }
      records.add(at, record);
    }
    if (inner.getPageSettings().getPrintSetup() == null) {
      PrintSetupRecord record = new PrintSetupRecord();
      record.setScale((short) 100);
      record.setPageStart((short) 1);
      record.setFitWidth((short) 1);
      record.setFitHeight((short) 1);
      record.setNoOrientation(true);
      record.setHeaderMargin(0.5);
      record.setFooterMargin(0.5);
      record.setCopies((short) 1);
      inner.getPageSettings().setPrintSetup(record);
    }
  }
}
