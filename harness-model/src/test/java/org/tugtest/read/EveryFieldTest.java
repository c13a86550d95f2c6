package org.tugtest.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.tugtest.model.Element;
import org.tugtest.model.Harness;
import org.tugtest.model.Ref;

/**
 * Every field of every record of the model is taken from the file: each is seen with two values.
 */
class EveryFieldTest {
  private static final String EVERYTHING = Resources.text("/read/everything.harness.json");

  private static final String LOOSE =
      """
      {
        "format": 1,
        "devices": {"D": {"elements": {"lamp": {"kind": "load", "a": "+", "b": "-"}}}},
        "connectors": {"X1": {}},
        "splices": {"S1": {}},
        "wires": {"W1": {"from": "X1:1"}},
        "groups": {"G1": {"kind": "twisted", "wires": ["W1"]}},
        "layout": {"segments": {"g1": {"from": "n1", "to": "n2", "lengthMm": 10}}}
      }
      """;

  /** Component to the values seen of it. */
  private final Map<String, Set<String>> seen = new TreeMap<>();

  @Test
  void takesEveryField() {
    look(read("a.harness.json", EVERYTHING).harness());
    look(read("b.harness.json", LOOSE).harness());
    look(read("c.harness.json", "{\"format\": 1, \"loom\": {\"id\": \"b\"}}").harness());
    assertThat(seen).hasSizeGreaterThan(190);
    assertThat(seen.entrySet())
        .filteredOn(field -> field.getValue().size() < 2)
        .extracting(Map.Entry::getKey)
        .isEmpty();
  }

  @Test
  void findsNothingWrongWithADocumentOfEveryField() {
    assertThat(read("a.harness.json", EVERYTHING).problems()).isEmpty();
  }

  @Test
  void meetsEveryKindOfElement() {
    Set<Class<?>> met = new HashSet<>();
    Harness harness = read("a.harness.json", EVERYTHING).harness();
    harness.parts().deviceTypes().values().stream()
        .flatMap(type -> type.elements().values().stream())
        .forEach(element -> met.add(element.getClass()));
    harness.devices().values().stream()
        .map(harness::typeOf)
        .flatMap(type -> type == null ? null : type.elements().values().stream())
        .forEach(element -> met.add(element.getClass()));
    assertThat(met).containsExactlyInAnyOrder(Element.class.getPermittedSubclasses());
  }

  private static ReadHarness read(String path, String text) {
    return new HarnessReader(MemoryFiles.of(path, text), ReadLimits.STANDARD).read(path);
  }

  private void look(@Nullable Object value) {
    if (value instanceof Map<?, ?> map) {
      map.values().forEach(this::look);
    } else if (value instanceof Collection<?> all) {
      all.forEach(this::look);
    } else if (value instanceof Record record && !(value instanceof Ref)) {
      for (RecordComponent component : record.getClass().getRecordComponents()) {
        Object field = field(record, component);
        seen.computeIfAbsent(
                record.getClass().getSimpleName() + "." + component.getName(),
                name -> new HashSet<>())
            .add(String.valueOf(field));
        look(field);
      }
    }
  }

  private static @Nullable Object field(Record record, RecordComponent component) {
    try {
      return component.getAccessor().invoke(record);
    } catch (IllegalAccessException | InvocationTargetException failed) {
      throw new LinkageError(component.toString(), failed);
    }
  }
}
