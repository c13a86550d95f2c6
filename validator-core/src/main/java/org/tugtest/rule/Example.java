package org.tugtest.rule;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * The files of an example of a rule. An example of one file is just its JSON; one of several files
 * has a line {@code // path} before each, the root first.
 *
 * @param root path of the root
 * @param files texts by path, in the order written
 */
public record Example(String root, Map<String, String> files) {
  /** What the root of an example of one file is called. */
  public static final String ROOT = "car.harness.json";

  private static final String MARK = "// ";

  public Example {
    files = Collections.unmodifiableMap(new LinkedHashMap<>(files));
  }

  /** An example with values put into its pattern, the same everywhere on earth. */
  public static String filled(String pattern, Object... values) {
    return String.format(Locale.ROOT, pattern, values);
  }

  /** The files of an example as a rule gives it. */
  public static Example of(String text) {
    if (!text.startsWith(MARK)) {
      return new Example(ROOT, Map.of(ROOT, text));
    }
    Map<String, String> files = new LinkedHashMap<>();
    for (String part : text.split("(?m)^" + MARK, -1)) {
      int end = part.indexOf('\n');
      if (end > 0) {
        files.put(part.substring(0, end).strip(), part.substring(end + 1));
      }
    }
    return new Example(files.keySet().iterator().next(), files);
  }
}
