package washbook.office.menu;

import com.sun.star.beans.PropertyAttribute;
import com.sun.star.beans.XPropertyContainer;
import com.sun.star.beans.XPropertySet;
import com.sun.star.document.XDocumentPropertiesSupplier;
import com.sun.star.uno.UnoRuntime;
import washbook.log.answer.KeptAnswers;
import washbook.log.language.ToldException;
import washbook.log.understand.LogMap;
import washbook.office.dialog.StoppedException;
import washbook.office.language.OfficeText;

/** The answers that an open document keeps about its log, as one of its custom properties. */
record DocumentAnswers(OpenSheet sheet) {

  /** The map that they are; one that says nothing where there are none. */
  LogMap read() {
    XPropertySet properties = UnoRuntime.queryInterface(XPropertySet.class, container());
    try {
      boolean none = !properties.getPropertySetInfo().hasPropertyByName(KeptAnswers.PROPERTY);
      Object text = none ? "" : properties.getPropertyValue(KeptAnswers.PROPERTY);
      return KeptAnswers.read(String.valueOf(text));
    } catch (ToldException wrong) {
      throw new StoppedException(
          OfficeText.of("stopped.answers.wrong", KeptAnswers.PROPERTY, wrong.told()));
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.answers", e);
    }
  }

  /** Keeps a map in place of what was kept before. */
  void write(LogMap map) {
    XPropertyContainer container = container();
    XPropertySet properties = UnoRuntime.queryInterface(XPropertySet.class, container);
    String text = KeptAnswers.text(map);
    try {
      if (properties.getPropertySetInfo().hasPropertyByName(KeptAnswers.PROPERTY)) {
        properties.setPropertyValue(KeptAnswers.PROPERTY, text);
      } else {
        container.addProperty(KeptAnswers.PROPERTY, PropertyAttribute.REMOVABLE, text);
      }
    } catch (com.sun.star.uno.Exception e) {
      throw new StoppedException("stopped.answers.write", e);
    }
  }

  private XPropertyContainer container() {
    return sheet
        .document(XDocumentPropertiesSupplier.class)
        .getDocumentProperties()
        .getUserDefinedProperties();
  }
}
