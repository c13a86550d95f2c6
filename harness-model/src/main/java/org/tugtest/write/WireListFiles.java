package org.tugtest.write;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.tugtest.text.NaturalOrder;

/**
 * The files of a harness that was a wire list: the root, and a file for each loom where there are
 * several, or where some wires are loose.
 */
final class WireListFiles {
  private static final int LONGEST_TITLE = 200;
  private static final int LONGEST_DESCRIPTION = 4_000;
  private static final String ROOT_END = ".harness.json";

  private final WireListImport.Options options;
  private final String description;

  WireListFiles(WireListImport.Options options, String description) {
    this.options = options;
    this.description = description;
  }

  /** Tidy texts by path, the root first. */
  Map<String, String> write(List<WireDraft> wires, List<String> ids) {
    Map<String, Map<String, String>> byLoom = new TreeMap<>(NaturalOrder.NATURAL);
    for (int i = 0; i < wires.size(); i++) {
      WireDraft wire = wires.get(i);
      byLoom
          .computeIfAbsent(wire.loom(), first -> new LinkedHashMap<>())
          .put(ids.get(i), wire.json());
    }
    Map<String, String> files = new LinkedHashMap<>();
    if (byLoom.size() < 2) {
      String loom = byLoom.isEmpty() ? "" : byLoom.keySet().iterator().next();
      files.put(options.root(), file(root(List.of()), loom, byLoom.getOrDefault(loom, Map.of())));
      return files;
    }
    Map<String, String> paths = new LinkedHashMap<>();
    byLoom.keySet().stream().filter(l -> !l.isEmpty()).forEach(l -> paths.put(l, path(l)));
    List<String> uses = paths.values().stream().map(WireListFiles::name).toList();
    files.put(options.root(), file(root(uses), "", byLoom.getOrDefault("", Map.of())));
    paths.forEach(
        (loom, path) -> files.put(path, file(new LinkedHashMap<>(), loom, inLoom(byLoom, loom))));
    return files;
  }

  private static Map<String, String> inLoom(Map<String, Map<String, String>> byLoom, String loom) {
    return byLoom.getOrDefault(loom, Map.of());
  }

  private Map<String, String> root(List<String> uses) {
    Map<String, String> members = new LinkedHashMap<>();
    String title = options.title();
    if (title != null && !title.isBlank()) {
      String line = WireDraft.printable(title).replaceAll("\\s+", " ").strip();
      members.put("title", Quoting.quote(WireDraft.cut(line, LONGEST_TITLE)));
    }
    members.put("sketch", "true");
    if (!description.isEmpty()) {
      String text = WireDraft.cut(WireDraft.printable(description), LONGEST_DESCRIPTION);
      members.put("description", Quoting.quote(text));
    }
    if (!uses.isEmpty()) {
      members.put(
          "uses", "[" + String.join(", ", uses.stream().map(Quoting::quote).toList()) + "]");
    }
    return members;
  }

  private static String file(Map<String, String> members, String loom, Map<String, String> wires) {
    List<String> all = new ArrayList<>();
    all.add("\"format\": 1");
    members.forEach((name, value) -> all.add(Quoting.quote(name) + ": " + value));
    if (!loom.isEmpty()) {
      all.add("\"loom\": {\"id\": " + Quoting.quote(loom) + "}");
    }
    List<String> entries = new ArrayList<>();
    wires.forEach((id, wire) -> entries.add(Quoting.quote(id) + ": " + wire));
    if (!entries.isEmpty()) {
      all.add("\"wires\": {" + String.join(",", entries) + "}");
    }
    TidyResult tidy = TidyWriter.tidy("", "{" + String.join(",", all) + "}");
    if (tidy instanceof TidyResult.Tidied tidied) {
      return tidied.text();
    }
    throw new AssertionError("a file made here does not parse: " + tidy);
  }

  private String path(String loom) {
    String root = options.root();
    String stem =
        root.endsWith(ROOT_END) ? root.substring(0, root.length() - ROOT_END.length()) : root;
    return stem + "-" + loom.toLowerCase(Locale.ROOT) + ".json";
  }

  private static String name(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }
}
