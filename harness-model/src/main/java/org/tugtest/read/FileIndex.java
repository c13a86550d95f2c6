package org.tugtest.read;

import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import org.tugtest.text.JsonPointer;
import org.tugtest.text.JsonTokens;
import org.tugtest.text.Place;
import org.tugtest.text.SourceText;

/**
 * Where the entries of one file begin: an offset for each section and each entry of a map of ids.
 * What lies deeper is found by reading the entry's text again.
 */
final class FileIndex {
  private final SourceText source;
  private final Map<String, Integer> sections = new LinkedHashMap<>();
  private final Map<String, Map<String, Integer>> entries = new HashMap<>();

  FileIndex(SourceText source) {
    this.source = source;
  }

  SourceText source() {
    return source;
  }

  void section(String name, int offset) {
    sections.putIfAbsent(name, offset);
  }

  void entry(String section, String id, int offset) {
    entries.computeIfAbsent(section, key -> new HashMap<>()).putIfAbsent(id, offset);
  }

  boolean hasSection(String name) {
    return sections.containsKey(name);
  }

  boolean hasEntry(String section, String id) {
    return entries.getOrDefault(section, Map.of()).containsKey(id);
  }

  /** Whether the text at these names is {@code value}. */
  boolean says(String value, String... names) {
    Hit hit = find(false, names);
    if (hit.found() < names.length) {
      return false;
    }
    JsonTokens tokens = new JsonTokens(source.text(), 0);
    tokens.moveTo(source.offset(hit.place().line(), hit.place().column()));
    return tokens.kind() == JsonTokens.Kind.TEXT && tokens.says(value);
  }

  /** The place of the first character, for what concerns the whole file. */
  Place top() {
    return Place.point(source.path(), 1, 1, "");
  }

  /**
   * The place that the names lead to from the top of the file; the nearest around it when it is not
   * written.
   */
  Place at(String... names) {
    return find(false, names).place();
  }

  /** The place of the name of the member that the names lead to. */
  Place nameAt(String... names) {
    return find(true, names).place();
  }

  /** The place of the token that begins at an offset. */
  Place tokenAt(int offset, String pointer) {
    JsonTokens tokens = new JsonTokens(source.text(), 0);
    tokens.moveTo(offset);
    return source.place(tokens.start(), tokens.end(), pointer);
  }

  /** What came of a search: {@code found} counts the names that are written. */
  record Hit(Place place, int found) {}

  Hit find(boolean byName, String... names) {
    if (names.length == 0 || !sections.containsKey(names[0])) {
      return new Hit(top(), 0);
    }
    int used = 1;
    int offset = sections.get(names[0]);
    for (int deep = 2; deep <= Math.min(3, names.length); deep++) {
      String section = String.join("/", Arrays.asList(names).subList(0, deep - 1));
      Map<String, Integer> its = entries.get(section);
      if (its == null) {
        break;
      }
      Integer entry = its.get(names[deep - 1]);
      if (entry == null) {
        return new Walk(offset, used).stop(byName, names);
      }
      used = deep;
      offset = entry;
    }
    return new Walk(offset, used).to(byName, names);
  }

  /** One search inside an entry, from the name of the entry on. */
  private final class Walk {
    private final JsonTokens tokens;
    private int used;
    private int nameStart;
    private int nameEnd;
    private boolean named = true;

    Walk(int nameOffset, int used) {
      this.tokens = new JsonTokens(source.text(), nameOffset);
      this.used = used;
      tokens.next();
      name();
    }

    private void name() {
      nameStart = tokens.start();
      nameEnd = tokens.end();
      named = true;
      tokens.next();
      tokens.next();
    }

    Hit to(boolean byName, String... names) {
      while (used < names.length && step(names[used])) {
        used++;
      }
      return stop(byName, names);
    }

    /** The place it has come to; what the next name says is not written there. */
    Hit stop(boolean byName, String... names) {
      String pointer = JsonPointer.of(Arrays.copyOf(names, used));
      boolean opens =
          tokens.kind() == JsonTokens.Kind.OPEN_OBJECT
              || tokens.kind() == JsonTokens.Kind.OPEN_LIST;
      boolean useName = named && (byName || opens || used < names.length);
      Place place =
          useName
              ? source.place(nameStart, nameEnd, pointer)
              : source.place(tokens.start(), tokens.end(), pointer);
      return new Hit(place, used);
    }

    private boolean step(String name) {
      JsonTokens.Kind container = tokens.kind();
      if (container == JsonTokens.Kind.OPEN_OBJECT) {
        return intoMember(name);
      }
      return container == JsonTokens.Kind.OPEN_LIST && intoElement(name);
    }

    private boolean intoMember(String name) {
      JsonTokens ahead = new JsonTokens(source.text(), tokens.end());
      while (ahead.next() == JsonTokens.Kind.TEXT) {
        if (ahead.says(name)) {
          tokens.moveTo(ahead.start());
          name();
          return true;
        }
        ahead.next();
        ahead.next();
        ahead.skipValue();
        ahead.next();
      }
      return false;
    }

    private boolean intoElement(String index) {
      JsonTokens ahead = new JsonTokens(source.text(), tokens.end());
      int count = 0;
      ahead.next();
      while (ahead.kind().beginsValue()) {
        if (index.equals(Integer.toString(count))) {
          tokens.moveTo(ahead.start());
          named = false;
          return true;
        }
        count++;
        ahead.skipValue();
        ahead.next();
        ahead.next();
      }
      return false;
    }
  }
}
