package org.tugtest.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The sample car so many times over as one harness: real variety, and as many bytes for a wire as
 * people write. Each copy has ids, looms and layout of its own; the parts are shared, and the
 * states are those of the sample, each for all copies.
 */
final class ManySamples {
  /** The root. */
  static final String ROOT = "many.harness.json";

  private static final JsonMapper JSON = JsonMapper.shared();
  private static final Pattern WORD = Pattern.compile("[\\p{L}\\p{N}_](?:[\\w-]*\\w)?");

  /** What follows the name of a field that is called as a node is. */
  private static final String FLAG = "\": true";

  private static final Path FOLDER = Path.of("..", "sample-project", "src", "main", "harness");
  private static final String SAMPLE = "pebble-owl.harness.json";
  private static final List<String> MAPS =
      List.of(
          "devices",
          "connectors",
          "splices",
          "wires",
          "groups",
          "zones",
          "waivers",
          "expectations");

  private ManySamples() {}

  /** The files of that many copies. */
  static Map<String, String> of(int copies) {
    Map<String, String> sample = sample();
    Set<String> ids = ids(sample);
    Set<String> stateNames = stateNames(sample);
    ObjectNode root = JSON.createObjectNode();
    root.put("format", 1).put("title", "The sample many times over");
    ObjectNode first = (ObjectNode) JSON.readTree(sample.get(SAMPLE));
    var uses = root.putArray("uses");
    root.set("defaults", first.get("defaults"));
    root.set("limits", first.get("limits"));
    ObjectNode states = root.putObject("states");
    Map<String, String> files = new LinkedHashMap<>();
    for (int copy = 0; copy < copies; copy++) {
      String ending = "n" + copy;
      for (Map.Entry<String, String> file : sample.entrySet()) {
        boolean parts = file.getKey().startsWith("parts/");
        String text = parts ? file.getValue() : renamed(file.getValue(), ids, ending);
        for (String state : stateNames) {
          text = text.replace(renamed(state, ids, ending), state);
        }
        ObjectNode tree = (ObjectNode) JSON.readTree(text);
        if (file.getKey().equals(SAMPLE)) {
          root.withObjectProperty("waivers").setAll((ObjectNode) tree.get("waivers"));
          ObjectNode expectations = (ObjectNode) tree.get("expectations");
          expectations.removeIf(one -> one.get("that").asString().equals("lighter-than"));
          root.withObjectProperty("expectations").setAll(expectations);
        } else if (tree.get("states") instanceof ObjectNode its) {
          its.forEachEntry((name, state) -> add(states, name, (ObjectNode) state));
        } else if (copy == 0 || !parts) {
          String path = ending + "/" + file.getKey();
          files.put(path, text);
          uses.add(path);
        }
      }
    }
    files.put(ROOT, JSON.writerWithDefaultPrettyPrinter().writeValueAsString(root));
    return files;
  }

  /** The files that the root uses, and the root. */
  private static Map<String, String> sample() {
    Map<String, String> files = new TreeMap<>();
    try {
      String root = Files.readString(FOLDER.resolve(SAMPLE));
      files.put(SAMPLE, root);
      for (JsonNode path : JSON.readTree(root).get("uses")) {
        files.put(path.asString(), Files.readString(FOLDER.resolve(path.asString())));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return files;
  }

  /** The names of the states, which no copy changes though a word in them may be an id. */
  private static Set<String> stateNames(Map<String, String> files) {
    Set<String> names = new TreeSet<>();
    for (String text : files.values()) {
      if (JSON.readTree(text).get("states") instanceof ObjectNode states) {
        names.addAll(states.propertyNames());
      }
    }
    return names;
  }

  private static Set<String> ids(Map<String, String> files) {
    Set<String> ids = new TreeSet<>();
    for (String text : files.values()) {
      JsonNode tree = JSON.readTree(text);
      for (String section : MAPS) {
        if (tree.get(section) instanceof ObjectNode entries) {
          ids.addAll(entries.propertyNames());
        }
      }
      if (tree.get("layout") instanceof ObjectNode layout) {
        layout.forEach(entries -> ids.addAll(((ObjectNode) entries).propertyNames()));
      }
      if (tree.get("loom") instanceof ObjectNode loom && loom.has("id")) {
        ids.add(loom.get("id").asString());
      }
    }
    return ids;
  }

  private static String renamed(String text, Set<String> ids, String ending) {
    return WORD.matcher(text)
        .replaceAll(
            word ->
                ids.contains(word.group()) && !text.startsWith(FLAG, word.end())
                    ? word.group() + ending
                    : word.group());
  }

  private static void add(ObjectNode states, String name, ObjectNode state) {
    if (!(states.get(name) instanceof ObjectNode known)) {
      states.set(name, state);
      return;
    }
    state.forEachEntry(
        (field, value) -> {
          if (value instanceof ObjectNode object) {
            known.withObjectProperty(field).setAll(object);
          } else if (value.isArray()) {
            value.forEach(known.withArrayProperty(field)::add);
          }
        });
  }
}
