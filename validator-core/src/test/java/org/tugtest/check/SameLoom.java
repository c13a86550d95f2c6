package org.tugtest.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Files that say the same of a loom in another way. Each method gives new files. */
final class SameLoom {
  private static final JsonMapper JSON = JsonMapper.shared();
  private static final Pattern WORD = Pattern.compile("\\w(?:[\\w-]*\\w)?");

  /** Sections whose entries may stand in any file of a harness. */
  private static final Set<String> MOVABLE =
      Set.of("devices", "fitted", "connectors", "splices", "wires", "zones");

  private SameLoom() {}

  /** The members of every object in another order. */
  static Map<String, String> reordered(Map<String, String> files, long seed) {
    Random random = new Random(seed);
    return each(files, node -> shuffled(node, random));
  }

  private static JsonNode shuffled(JsonNode node, Random random) {
    if (node instanceof ObjectNode object) {
      List<String> names = new ArrayList<>(object.propertyNames());
      Collections.shuffle(names, random);
      ObjectNode copy = JSON.createObjectNode();
      names.forEach(name -> copy.set(name, shuffled(object.get(name), random)));
      return copy;
    }
    if (node instanceof ArrayNode array) {
      ArrayNode copy = JSON.createArrayNode();
      array.forEach(one -> copy.add(shuffled(one, random)));
      return copy;
    }
    return node;
  }

  /** Everything on one line. */
  static Map<String, String> onOneLine(Map<String, String> files) {
    return each(files, UnaryOperator.identity());
  }

  /** Half of the entries of the root moved to a file that the root uses. */
  static Map<String, String> split(Map<String, String> files, String root, long seed) {
    Random random = new Random(seed);
    ObjectNode kept = (ObjectNode) JSON.readTree(files.get(root));
    ObjectNode moved = JSON.createObjectNode();
    moved.set("format", kept.get("format"));
    if (kept.get("loom") instanceof ObjectNode loom) {
      moved.set("loom", loom.deepCopy().retain("id", "evidence"));
      if (!loom.has("id")) {
        return files;
      }
    }
    for (String section : MOVABLE) {
      if (kept.get(section) instanceof ObjectNode entries) {
        ObjectNode there = JSON.createObjectNode();
        for (String name : List.copyOf(entries.propertyNames())) {
          if (random.nextBoolean()) {
            there.set(name, entries.remove(name));
          }
        }
        moved.set(section, there);
      }
    }
    ArrayNode uses =
        kept.get("uses") instanceof ArrayNode present ? present : kept.putArray("uses");
    uses.add("moved-part.json");
    Map<String, String> all = new LinkedHashMap<>(files);
    all.put(root, kept.toString());
    all.put("moved-part.json", moved.toString());
    return all;
  }

  /** The ids of wires, connectors and splices that the files define. */
  static Set<String> ids(Map<String, String> files) {
    Set<String> ids = new TreeSet<>();
    for (String text : files.values()) {
      JsonNode tree = JSON.readTree(text);
      for (String section : List.of("wires", "connectors", "splices")) {
        if (tree.get(section) instanceof ObjectNode entries) {
          ids.addAll(entries.propertyNames());
        }
      }
    }
    return ids;
  }

  /** A text with every word among {@code ids} given another ending. */
  static String renamed(String text, Set<String> ids) {
    return WORD.matcher(text)
        .replaceAll(word -> ids.contains(word.group()) ? word.group() + "z" : word.group());
  }

  /** The files with the ids of wires, connectors and splices given another ending. */
  static Map<String, String> renamed(Map<String, String> files) {
    Set<String> ids = ids(files);
    return files.entrySet().stream()
        .collect(
            Collectors.toMap(
                Map.Entry::getKey,
                file -> renamed(file.getValue(), ids),
                (one, other) -> one,
                LinkedHashMap::new));
  }

  private static Map<String, String> each(
      Map<String, String> files, UnaryOperator<JsonNode> change) {
    Map<String, String> changed = new LinkedHashMap<>();
    files.forEach((path, text) -> changed.put(path, change.apply(JSON.readTree(text)).toString()));
    return changed;
  }
}
