package org.tugtest.report.html;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.tugtest.report.HarnessReport;

/** Names of the pages of several roots, made from the paths of the roots. */
public final class PageNames {
  private static final String ENDING = ".harness.json";

  private PageNames() {}

  /** The file name of each root's page; no two are equal, in any case of letters. */
  static Map<String, String> of(List<HarnessReport> harnesses) {
    List<String> roots = harnesses.stream().map(HarnessReport::root).toList();
    Map<String, String> names = new LinkedHashMap<>();
    stems(roots).forEach((root, stem) -> names.put(root, "report-" + stem + ".html"));
    return names;
  }

  /**
   * A name for each root that a file or folder may have; no two are equal, in any case of letters.
   */
  public static Map<String, String> stems(List<String> roots) {
    Map<String, String> names = new LinkedHashMap<>();
    Set<String> taken = new HashSet<>();
    for (String root : roots) {
      String stem = plain(root);
      String name = stem;
      for (int n = 2; !taken.add(name.toLowerCase(Locale.ROOT)); n++) {
        name = stem + "-" + n;
      }
      names.put(root, name);
    }
    return names;
  }

  private static String plain(String root) {
    String stem = root.endsWith(ENDING) ? root.substring(0, root.length() - ENDING.length()) : root;
    String plain = stem.replaceAll("[^A-Za-z0-9_]+", "-").replaceAll("^-|-$", "");
    return plain.isEmpty() ? "root" : plain;
  }
}
