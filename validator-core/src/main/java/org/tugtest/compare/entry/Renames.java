package org.tugtest.compare.entry;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.tugtest.finding.Subject;
import org.tugtest.model.Ref;

/**
 * What the things of one revision are called in the other. A thing that is gone while its id lives
 * on for another thing has a name that no id can be.
 */
public final class Renames {
  private static final String GONE = "#gone";
  private final Map<String, Map<String, String>> bySection;
  private final Map<String, String> owners;

  /** No renames. */
  public static final Renames NONE = new Renames(Map.of());

  /**
   * These renames.
   *
   * @param bySection other id by id, by section; ids that stay may be left out
   */
  public Renames(Map<String, Map<String, String>> bySection) {
    this.bySection = new HashMap<>();
    this.owners = new HashMap<>();
    bySection.forEach(
        (section, ids) -> {
          Map<String, String> changed = new HashMap<>();
          ids.forEach(
              (id, other) -> {
                if (!id.equals(other)) {
                  changed.put(id, other);
                }
              });
          if (!changed.isEmpty()) {
            this.bySection.put(section, changed);
          }
          if (section.equals("connectors") || section.equals("splices")) {
            owners.putAll(changed);
          }
        });
  }

  /** The name of a thing that is gone while its id lives on. */
  public static String gone(String id) {
    return id + GONE;
  }

  /** Whether every id stays. */
  public boolean isEmpty() {
    return bySection.isEmpty();
  }

  /** The other id of an entry. */
  public String id(String section, String id) {
    return bySection.getOrDefault(section, Map.of()).getOrDefault(id, id);
  }

  /** The other id of a connector, device or splice. */
  public String owner(String id) {
    return owners.getOrDefault(id, id);
  }

  /** The same reference with the other ids. */
  public Ref ref(Ref ref) {
    String owner = owner(ref.owner());
    return owner.equals(ref.owner()) ? ref : new Ref(owner, ref.pin(), ref.member());
  }

  /** The same place string with the other ids; {@code connectors/R1:3} follows the connector. */
  public String place(String place) {
    Subject subject = new Subject(place);
    String section = subject.section();
    if (isEmpty() || section.length() == place.length()) {
      return place;
    }
    String id = subject.id();
    String whole = id(section, id);
    if (!whole.equals(id)) {
      return section + "/" + whole;
    }
    int cut = end(id);
    return section + "/" + id(section, id.substring(0, cut)) + id.substring(cut);
  }

  /** The same text with the other id when it is an id, or one with pin or element. */
  public String word(String text) {
    int cut = end(text);
    String id = text.substring(0, cut);
    String owner = owner(id);
    return (owner.equals(id) ? id("wires", id) : owner) + text.substring(cut);
  }

  /** The same entry with the other ids in all that it names; an {@code id} of its own stays. */
  public <T> T in(T entry) {
    if (isEmpty()) {
      return entry;
    }
    @SuppressWarnings("unchecked") // a record is made of its own class
    T renamed = (T) value(entry, null);
    return renamed;
  }

  /** All entries of a harness with the other ids, their own included. */
  public Map<String, Map<String, Object>> in(Map<String, Map<String, Object>> entries) {
    Map<String, Map<String, Object>> all = new LinkedHashMap<>();
    entries.forEach(
        (section, map) -> {
          Map<String, Object> renamed = new LinkedHashMap<>();
          map.forEach(
              (id, entry) -> {
                String other = id(section, id);
                Object said =
                    section.equals("fitted") ? id("parts/fuses", (String) entry) : in(entry);
                renamed.put(other, other.equals(id) ? said : called(said, other));
              });
          all.put(section, renamed);
        });
    return all;
  }

  /** An entry under another id. */
  private static Object called(Object entry, String id) {
    RecordShape shape = RecordShape.of(entry);
    @Nullable Object[] values = new Object[shape.names().size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = shape.names().get(i).equals("id") ? id : shape.value(entry, i);
    }
    return shape.make(values);
  }

  private static int end(String id) {
    int colon = id.indexOf(':');
    int dot = id.indexOf('.');
    if (colon < 0) {
      return dot < 0 ? id.length() : dot;
    }
    return dot < 0 ? colon : Math.min(colon, dot);
  }

  private Object value(Object value, @Nullable String section) {
    if (value instanceof Ref ref) {
      return ref(ref);
    }
    if (value instanceof Record record) {
      return record(record);
    }
    if (value instanceof String text) {
      return text(text, section);
    }
    if (value instanceof List<?> list) {
      List<Object> renamed = new ArrayList<>(list.size());
      list.forEach(item -> renamed.add(value(item, section)));
      return renamed;
    }
    return value instanceof Map<?, ?> map ? map(map, section) : value;
  }

  private String text(String text, @Nullable String section) {
    if (section == null) {
      return text;
    }
    return section.equals(Named.PLACE) ? place(text) : id(section, text);
  }

  private Object map(Map<?, ?> map, @Nullable String section) {
    if (map.isEmpty()) {
      return map;
    }
    boolean byRef = map.keySet().iterator().next() instanceof Ref;
    Map<Object, Object> renamed = byRef ? new TreeMap<>() : new LinkedHashMap<>();
    boolean keys = Named.PLACE.equals(section);
    map.forEach(
        (key, item) ->
            renamed.put(value(key, keys ? section : null), value(item, keys ? null : section)));
    return renamed;
  }

  private Record record(Record record) {
    RecordShape shape = RecordShape.of(record);
    @Nullable Object[] values = new Object[shape.names().size()];
    boolean changed = false;
    for (int i = 0; i < values.length; i++) {
      Object old = shape.value(record, i);
      Object now = old == null ? null : value(old, Named.section(record, shape.names().get(i)));
      values[i] = now;
      changed |= now != old && !Objects.equals(now, old);
    }
    return changed ? (Record) shape.make(values) : record;
  }
}
