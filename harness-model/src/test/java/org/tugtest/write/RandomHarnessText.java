package org.tugtest.write;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;

/**
 * Random well-formed harness texts: every section, members in any order, odd blanks, escapes and
 * number notations, unknown properties here and there. The same seed gives the same text.
 */
final class RandomHarnessText {
  private static final List<String> BLANKS =
      List.of("", "", "", " ", "\n", "\r\n", "\t", "  \n   ", "\r");
  private static final List<String> NUMBERS =
      List.of("0", "-0", "-0.0", "2.50", "1e3", "1E+3", "-7.25e-2", "12", "100000000000000000001");
  private static final List<String> TEXTS =
      List.of(
          "", "RD/WH", "\\u00e4\\n", "a \\\"q\\\" b", "\\/", "ü€", "😀", "\\ud83d\\ude00", "{,:]");

  private final Random random;

  RandomHarnessText(long seed) {
    this.random = new Random(seed);
  }

  /** One text. */
  String next() {
    List<String> members = new ArrayList<>();
    for (String section : FormatOrder.FILE.order()) {
      if (random.nextInt(4) > 0) {
        members.add(member(section, value(FormatOrder.FILE.of(section), 1)));
      }
    }
    if (random.nextInt(3) == 0) {
      members.add(member("unheard-of", any(2)));
    }
    return (random.nextInt(5) == 0 ? "\uFEFF" : "") + blank() + object(members) + blank();
  }

  private String value(Shape shape, int depth) {
    if (random.nextInt(40) == 0) {
      return any(depth);
    }
    if (!shape.order().isEmpty()) {
      List<String> members = new ArrayList<>();
      for (String name : shape.order()) {
        if (random.nextInt(3) == 0) {
          members.add(member(name, value(shape.of(name), depth + 1)));
        }
      }
      if (random.nextInt(6) == 0) {
        members.add(member("odd" + random.nextInt(12), any(depth + 1)));
      }
      return object(members);
    }
    if (shape.layout() == Shape.Layout.OPEN && shape.entry() != null) {
      List<String> members = new ArrayList<>();
      for (String id : ids()) {
        members.add(member(id, value(shape.entry(), depth + 1)));
      }
      return object(members);
    }
    return any(depth + 1);
  }

  private List<String> ids() {
    Map<String, String> byName = new LinkedHashMap<>();
    int count = random.nextInt(6);
    for (int i = 0; i < count; i++) {
      String id = "WwRb".charAt(random.nextInt(4)) + "" + random.nextInt(25);
      boolean escaped = random.nextInt(8) == 0;
      byName.putIfAbsent(
          id,
          escaped
              ? String.format(Locale.ROOT, "\\u%04x", (int) id.charAt(0)) + id.substring(1)
              : id);
    }
    return List.copyOf(byName.values());
  }

  private String any(int depth) {
    int sort = random.nextInt(depth > 6 ? 3 : 5);
    if (sort == 0) {
      return pick(NUMBERS);
    }
    if (sort == 1) {
      return '"' + pick(TEXTS) + '"';
    }
    if (sort == 2) {
      return pick(List.of("true", "false", "null"));
    }
    List<String> inner = new ArrayList<>();
    int count = random.nextInt(4);
    for (int i = 0; i < count; i++) {
      String value = any(depth + 1);
      inner.add(sort == 3 ? value : member("k" + (9 - i) * 3, value));
    }
    return sort == 3 ? '[' + joined(inner) + ']' : object(inner);
  }

  private String member(String name, String value) {
    return '"' + name + '"' + blank() + ':' + blank() + value;
  }

  private String object(List<String> members) {
    Collections.shuffle(members, random);
    return '{' + joined(members) + '}';
  }

  private String joined(List<String> parts) {
    StringBuilder out = new StringBuilder(blank());
    String before = "";
    for (String part : parts) {
      out.append(before).append(part).append(blank());
      before = "," + blank();
    }
    return out.toString();
  }

  private String blank() {
    return pick(BLANKS);
  }

  private <T> T pick(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }
}
