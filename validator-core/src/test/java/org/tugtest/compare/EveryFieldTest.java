package org.tugtest.compare;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tugtest.compare.change.Change;
import org.tugtest.compare.entry.RecordShape;
import org.tugtest.compare.entry.Sections;
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;
import org.tugtest.rule.Judged;

/** Whatever field of whatever entry is altered: it is told, at its entry, and nothing else is. */
class EveryFieldTest {
  private static final String ALL =
      """
      {"format": 1, "title": "t", "revision": "A",
       "loom": {"id": "front", "title": "l", "revision": "B", "evidence": "guess"},
       "defaults": {"nominalV": 12},
       "parts": {
        "wires": {"w1": {"areaMm2": 1, "maxC": 105, "wall": "thin", "milliohmPerM": 18, "outerMm": 2,
                         "conductorMm": 1, "gramsPerM": 12, "minBendMm": 10, "maxA": 9}},
        "housings": {"h": {"side": "pin", "rows": [["1", "2"]], "family": "t1", "sealed": true,
                           "cavities": {"2": {"family": "t2"}}, "keying": "A", "matesWith": ["h2"],
                           "terminals": ["t"], "seals": ["s"], "maxC": 100, "grams": 3},
                     "h2": {"side": "socket", "rows": [["2", "1"]]}},
        "terminals": {"t": {"family": "t1", "side": "pin", "areaMinMm2": 0.5, "areaMaxMm2": 1,
                            "insulationMinMm": 1, "insulationMaxMm": 2, "maxWires": 2, "maxA": 9,
                            "contactMilliohm": 3, "crimpMilliohm": 1, "stripMm": 4,
                            "crimps": [{"areaMinMm2": 0.5, "areaMaxMm2": 1, "heightMm": 1.2, "toleranceMm": 0.05, "widthMm": 1.9, "insulationHeightMm": 2.4, "pullN": 90}],
                            "grams": 1}},
        "seals": {"s": {"family": "t1", "insulationMinMm": 1, "insulationMaxMm": 2, "grams": 1}},
        "splices": {"sp": {"areaMinMm2": 1, "areaMaxMm2": 6, "maxWires": 5, "milliohm": 1, "maxC": 90,
                           "sealed": true, "grams": 2}},
        "fuses": {"f": {"ratingA": 10, "style": "blade-mini", "maxV": 32, "breakingCapacityA": 1000,
                        "coldMilliohm": 7, "times": [{"multiple": 2, "leastS": 1, "greatestS": 5}]}},
        "coverings": {"c": {"kind": "tape", "innerMm": 5, "wallMm": 1, "maxC": 90, "gramsPerM": 5,
                            "protects": ["heat"]}},
        "supports": {"su": {"kind": "clip", "grams": 2}},
        "deviceTypes": {"dt": {"elements": {"cell": {"kind": "source", "plus": "1", "minus": "2",
                         "volts": 12, "ohms": 0.1, "maxA": 5, "chargeOhms": 1}},
                         "positions": ["a", "b"], "maxC": 80, "grams": 10}}},
       "devices": {
        "D": {"at": "n1", "pins": {"1": {"family": "x", "side": "pin", "at": "n2", "maxTerminals": 2,
                                         "breakoutMm": 4, "serviceMm": 5}},
              "ports": {"A": {"housing": "h", "pins": {"1": "30"}}}, "positions": ["off", "on"],
              "boltedTo": {"case": "E:m8"},
              "elements": {
               "l": {"kind": "load", "a": "1", "b": "2", "amps": 3, "inrushA": 9, "inrushS": 1,
                     "dutyPercent": 50, "minV": 9, "capacitanceUf": 4, "maxDropPercent": 3},
               "f": {"kind": "fuse", "a": "1", "b": "3", "style": "blade-mini"},
               "c": {"kind": "contact", "a": "1", "b": "4", "coil": "k", "ratingA": 9, "milliohm": 5},
               "k": {"kind": "coil", "a": "5", "b": "2", "ohms": 90, "pullInV": 7, "dropOutV": 2},
               "d": {"kind": "diode", "a": "5", "b": "6", "volts": 0.6, "maxA": 1},
               "b": {"kind": "link", "a": "5", "b": "7", "milliohm": 1},
               "s": {"kind": "signal", "pin": "8", "type": "lin", "reference": "2"}}},
        "E": {"type": "dt"}},
       "fitted": {"D.f": "f"},
       "connectors": {"X": {"housing": "h2", "mates": "D", "at": "n1", "terminals": ["t"],
                            "seals": ["s"], "blanked": true, "label": "X1", "boot": "c",
                            "cavities": {"1": {"terminal": "t", "seal": "s", "blank": true,
                                               "evidence": "drawing"}},
                            "breakoutMm": 10, "serviceMm": 20, "pinMap": {"1": "2"}},
                      "Y": {"housing": "h", "parked": "capped"}},
       "splices": {"S": {"at": "n1", "part": "sp", "coverings": ["c"], "label": "s"},
                   "S2": {"on": "g", "offsetMm": 5}},
       "wires": {"W": {"from": "X:1", "to": "S", "part": "w1", "colour": "RD", "colourDrawn": "BU",
                       "circuit": "a", "via": ["n1", "n2"], "cutMm": 100, "builtMm": 101,
                       "label": "w", "evidence": "guess", "decision": "keep", "reason": "r"},
                 "V": {"from": "S", "to": "D:1", "areaMm2": 1, "toTerminal": "t"},
                 "U": {"from": "S", "to": "Y:1", "awg": "20", "fromTerminal": "t"}},
       "groups": {"G": {"kind": "cable", "wires": ["W", "V"], "screen": "U", "pitchMm": 20, "outerMm": 5,
                        "gramsPerM": 40, "minBendMm": 30}},
       "layout": {"nodes": {"n1": {"zone": "z", "held": false, "xyzMm": [1, 2, 3], "coverings": ["c"]},
                            "n2": {}},
                  "segments": {"g": {"from": "n1", "to": "n2", "lengthMm": 100, "zone": "z",
                               "coverings": ["c"], "supports": 2, "supportPart": "su",
                               "bendRadiusMm": 30, "flexes": true, "clearanceMm": {"hot": 100}}}},
       "zones": {"z": {"ambientC": 60, "moisture": "wet", "needs": ["heat"], "near": ["hot"]}},
       "states": {"on": {"set": {"D": "on"}, "on": ["D"], "running": ["E"], "volts": {"E": 13},
                         "from": "off", "brief": true}, "off": {}},
       "limits": {"wire-repeated": {"level": "warning", "places": {"wires/W": {"level": "note"}}},
                  "spare-cavities-few": {"percent": 20}},
       "waivers": {"w": {"rule": "wire-repeated", "at": "wires/W", "reason": "because it is",
                         "until": "2027-01-01", "state": "on"}},
       "expectations": {
        "fed": {"that": "fed", "at": "D.l", "in": "on", "minV": 9, "reason": "r"},
        "one": {"that": "joined", "points": ["X:1", "S"]},
        "fuse": {"that": "fused-by", "at": "D.l", "fuse": "D.f"},
        "apart": {"that": "routes-apart", "wires": [["W"], ["V"]]},
        "light": {"that": "lighter-than", "loom": "front", "grams": 500}}}
      """;

  private final Harness harness = Compared.snapshot("all", ALL).harness();
  private final Map<String, Map<String, Object>> entries = Sections.of(harness);
  private final Set<String> altered = new TreeSet<>();

  @Test
  void everyFieldIsTold() {
    entries.forEach(
        (section, map) -> {
          assertThat(map).as(section).isNotEmpty();
          map.forEach((id, entry) -> alter(section, id, entry));
        });
    assertThat(altered).hasSizeGreaterThan(200);
  }

  private void alter(String section, String id, Object entry) {
    for (Altered other : others("", entry, String.class)) {
      Map<String, Map<String, Object>> all = new LinkedHashMap<>(entries);
      Map<String, Object> map = new LinkedHashMap<>(entries.get(section));
      map.put(id, other.value());
      all.put(section, map);
      Comparison comparison =
          Comparison.of(
              Loom.snapshot("before", harness),
              Loom.snapshot("after", Sections.harness(harness, all)));
      String what = section + "/" + id + " " + other.path() + ": " + other.value();
      assertThat(comparison.changes())
          .as(what)
          .isNotEmpty()
          .extracting(change -> change.subject())
          .containsOnly(Sections.subject(section, id));
      assertThat(comparison.changes()).extracting(Change::sentence).as(what).doesNotContainNull();
      altered.add(section + " " + other.path());
    }
  }

  private record Altered(String path, Object value) {}

  /** All values that differ from this one in one field. */
  private static List<Altered> others(String path, @Nullable Object value, Class<?> type) {
    List<Altered> others = new ArrayList<>();
    if (value instanceof Record record && !(value instanceof Ref)) {
      RecordShape shape = RecordShape.of(record);
      for (int i = 0; i < shape.names().size(); i++) {
        String name = shape.names().get(i);
        if (!(path.isEmpty()
            && (name.equals("id") || (name.equals("rule") && shape.names().contains("places"))))) {
          Class<?> fieldType = record.getClass().getRecordComponents()[i].getType();
          for (Altered inner : others(path + "/" + name, shape.value(record, i), fieldType)) {
            others.add(new Altered(inner.path(), with(record, shape, i, inner.value())));
          }
        }
      }
      return others;
    }
    if (value instanceof Map<?, ?> map) {
      map.forEach(
          (key, item) -> {
            Map<Object, Object> less = new LinkedHashMap<>(map);
            less.remove(key);
            others.add(new Altered(path + "/-" + key, less));
            for (Altered inner : others(path + "/" + key, item, Object.class)) {
              Map<Object, Object> changed = new LinkedHashMap<>(map);
              changed.put(key, inner.value());
              others.add(new Altered(inner.path(), changed));
            }
          });
      return others;
    }
    Object other = other(value, type);
    return other == null ? others : List.of(new Altered(path, other));
  }

  private static Object with(Record record, RecordShape shape, int at, Object value) {
    @Nullable Object[] values = new Object[shape.names().size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = i == at ? value : shape.value(record, i);
    }
    return shape.make(values);
  }

  private static @Nullable Object other(@Nullable Object value, Class<?> type) {
    if (value instanceof List<?> list) {
      List<Object> more = new ArrayList<>(list);
      if (!more.isEmpty()) {
        more.remove(0);
        return more;
      }
      return null;
    }
    if (value instanceof Set<?> set) {
      return set.isEmpty() ? null : new HashSet<>();
    }
    if (value instanceof Double number) {
      return number + 1;
    }
    if (value instanceof Integer number) {
      return number + 1;
    }
    if (value instanceof Boolean flag) {
      return !flag;
    }
    if (value instanceof Ref ref) {
      return new Ref(ref.owner() + "9", ref.pin(), ref.member());
    }
    if (value instanceof LocalDate day) {
      return day.plusDays(1);
    }
    if (value instanceof Enum<?> constant) {
      Object[] all = constant.getDeclaringClass().getEnumConstants();
      return all[all[0].equals(constant) ? 1 : 0];
    }
    if (value instanceof String text) {
      return text + "9";
    }
    return value == null ? fresh(type) : null;
  }

  private static @Nullable Object fresh(Class<?> type) {
    if (type == String.class) {
      return "fresh";
    }
    if (type == Double.class) {
      return 7.0;
    }
    if (type == Integer.class) {
      return 7;
    }
    if (type == Boolean.class) {
      return true;
    }
    if (type == Ref.class) {
      return Ref.parse("E:9");
    }
    if (type == LocalDate.class) {
      return Judged.TODAY;
    }
    return type.isEnum() ? Objects.requireNonNull(type.getEnumConstants())[0] : null;
  }
}
