package org.tugtest.text;

import java.util.ArrayList;
import java.util.List;

/** JSON Pointers as RFC 6901 writes them. */
public final class JsonPointer {
  private JsonPointer() {}

  /** The pointer of the member {@code name} of the value at {@code parent}. */
  public static String child(String parent, String name) {
    return parent + "/" + name.replace("~", "~0").replace("/", "~1");
  }

  /** The pointer made of these names, from the root. */
  public static String of(String... names) {
    String pointer = "";
    for (String name : names) {
      pointer = child(pointer, name);
    }
    return pointer;
  }

  /** The names in a pointer, unescaped; empty for the root. */
  public static List<String> names(String pointer) {
    List<String> names = new ArrayList<>();
    int at = 0;
    while (at < pointer.length()) {
      int next = pointer.indexOf('/', at + 1);
      int end = next < 0 ? pointer.length() : next;
      names.add(pointer.substring(at + 1, end).replace("~1", "/").replace("~0", "~"));
      at = end;
    }
    return List.copyOf(names);
  }
}
