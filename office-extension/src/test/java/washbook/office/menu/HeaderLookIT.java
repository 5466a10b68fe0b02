package washbook.office.menu;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.sun.star.beans.Property;
import com.sun.star.beans.PropertyState;
import com.sun.star.beans.XPropertyChangeListener;
import com.sun.star.beans.XPropertySet;
import com.sun.star.beans.XPropertySetInfo;
import com.sun.star.beans.XPropertyState;
import com.sun.star.beans.XVetoableChangeListener;
import com.sun.star.lang.IllegalArgumentException;
import com.sun.star.uno.Type;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Offices that have properties of which this one knows nothing. */
class HeaderLookIT {

  @Test
  void aPropertyThatReadsAsNothingOrIsRefusedDoesNotStopTheOthers() throws Exception {
    Look left = new Look();
    left.values.put("CellStyle", "Heading");
    left.values.put("CharWeight", 150f);
    left.values.put("LeftBorderComplexColor", null);
    left.values.put("OfAnotherOffice", "new");
    left.values.put("CellBackColor", 0xE8D8F0);
    Look header = new Look();
    HeaderLook.copy(left, header);
    assertEquals(
        Map.of("CellStyle", "Heading", "CharWeight", 150f, "CellBackColor", 0xE8D8F0),
        header.values);
  }

  /** Refuses nothing in the place of a value, as offices do. */
  private static final class Look implements XPropertySet, XPropertyState, XPropertySetInfo {
    private final Map<String, Object> values = new LinkedHashMap<>();

    @Override
    public void setPropertyValue(String name, Object value) {
      if (value == null || name.equals("OfAnotherOffice")) {
        throw new IllegalArgumentException(name);
      }
      values.put(name, value);
    }

    @Override
    public Object getPropertyValue(String name) {
      return values.get(name);
    }

    @Override
    public XPropertySetInfo getPropertySetInfo() {
      return this;
    }

    @Override
    public Property[] getProperties() {
      return values.keySet().stream().map(this::getPropertyByName).toArray(Property[]::new);
    }

    @Override
    public Property getPropertyByName(String name) {
      return new Property(name, 0, Type.ANY, (short) 0);
    }

    @Override
    public boolean hasPropertyByName(String name) {
      return values.containsKey(name);
    }

    @Override
    public PropertyState getPropertyState(String name) {
      return PropertyState.DIRECT_VALUE;
    }

    @Override
    public PropertyState[] getPropertyStates(String[] names) {
      throw new UnsupportedOperationException();
    }

    @Override
    public void setPropertyToDefault(String name) {
      throw new UnsupportedOperationException();
    }

    @Override
    public Object getPropertyDefault(String name) {
      throw new UnsupportedOperationException();
    }

    @Override
    public void addPropertyChangeListener(String name, XPropertyChangeListener listener) {
      throw new UnsupportedOperationException();
    }

    @Override
    public void removePropertyChangeListener(String name, XPropertyChangeListener listener) {
      throw new UnsupportedOperationException();
    }

    @Override
    public void addVetoableChangeListener(String name, XVetoableChangeListener listener) {
      throw new UnsupportedOperationException();
    }

    @Override
    public void removeVetoableChangeListener(String name, XVetoableChangeListener listener) {
      throw new UnsupportedOperationException();
    }
  }
}
