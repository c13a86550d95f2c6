package org.tugtest.schema;

import java.util.LinkedHashMap;
import java.util.Map;

/** The unit that stands in the name of a field. */
final class Units {
  private static final Map<String, String> ENDS = ends();

  private Units() {}

  private static Map<String, String> ends() {
    Map<String, String> ends = new LinkedHashMap<>();
    ends.put("Mm2", " mm2");
    ends.put("milliohmPerM", " milliohm/m");
    ends.put("gramsPerM", " g/m");
    ends.put("ercent", " %");
    ends.put("illiohm", " milliohm");
    ends.put("grams", " g");
    ends.put("Mm", " mm");
    ends.put("Uf", " uF");
    ends.put("amps", " A");
    ends.put("hms", " ohm");
    ends.put("watts", " W");
    ends.put("olts", " V");
    ends.put("A", " A");
    ends.put("V", " V");
    ends.put("C", " °C");
    ends.put("S", " s");
    ends.put("N", " N");
    return ends;
  }

  /** A space and the unit of the field, or the empty text. */
  static String of(String field) {
    for (Map.Entry<String, String> end : ENDS.entrySet()) {
      if (field.endsWith(end.getKey())) {
        return end.getValue();
      }
    }
    return "";
  }
}
