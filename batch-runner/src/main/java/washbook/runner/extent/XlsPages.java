package washbook.runner.extent;

import java.util.List;
import org.apache.poi.hssf.model.InternalSheet;
import org.apache.poi.hssf.record.CalcCountRecord;
import org.apache.poi.hssf.record.CalcModeRecord;
import org.apache.poi.hssf.record.DefaultRowHeightRecord;
import org.apache.poi.hssf.record.DeltaRecord;
import org.apache.poi.hssf.record.GridsetRecord;
import org.apache.poi.hssf.record.GutsRecord;
import org.apache.poi.hssf.record.IndexRecord;
import org.apache.poi.hssf.record.IterationRecord;
import org.apache.poi.hssf.record.PrintGridlinesRecord;
import org.apache.poi.hssf.record.PrintHeadersRecord;
import org.apache.poi.hssf.record.PrintSetupRecord;
import org.apache.poi.hssf.record.RecordBase;
import org.apache.poi.hssf.record.RefModeRecord;
import org.apache.poi.hssf.record.SaveRecalcRecord;
import org.apache.poi.hssf.record.WSBoolRecord;
import org.apache.poi.hssf.usermodel.HSSFPrintSetup;
import org.apache.poi.hssf.usermodel.HSSFSheet;
import org.apache.poi.ss.usermodel.Row;

/** The records of a sheet that say how it is printed ([MS-XLS] 2.4.351 WsBool, 2.4.257 Setup). */
public final class XlsPages {
  /** Shown outlines, as a program writes by itself. */
  private static final byte OUTLINES = (byte) 0xC1;

  private static final byte PAGE_BREAKS = 4;

  /**
   * What stands before WsBool in a sheet ([MS-XLS], worksheet substream; the order from memory).
   */
  private static final short[] BEFORE_WS_BOOL = {
    IndexRecord.sid,
    CalcModeRecord.sid,
    CalcCountRecord.sid,
    RefModeRecord.sid,
    IterationRecord.sid,
    DeltaRecord.sid,
    SaveRecalcRecord.sid,
    PrintHeadersRecord.sid,
    PrintGridlinesRecord.sid,
    GridsetRecord.sid,
    GutsRecord.sid,
    DefaultRowHeightRecord.sid
  };

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

  /** Whether the record says anything of paper, scale and lie: bit 2 of Setup's flags. */
  public static boolean isSaid(HSSFPrintSetup print) {
    return !print.getValidSettings();
  }

  /** Lets the record count; it says what it would be without where it has not counted before. */
  public static void say(HSSFPrintSetup print) {
    if (!isSaid(print)) {
      print.setValidSettings(false);
      print.setScale((short) 100);
      print.setPaperSize((short) 0);
    }
  }

  /** The last column with a cell, -1 for none. */
  public static int lastColumn(HSSFSheet sheet) {
    int last = -1;
    for (Row row : sheet) {
      last = Math.max(last, row.getLastCellNum() - 1);
    }
    return last;
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
      for (short sid : BEFORE_WS_BOOL) {
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
