package org.tugtest.read;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Damages documents at random, but the same way for the same seed. */
final class Mutations {
  private static final List<String> SNIPPETS =
      List.of(
          ",",
          "}",
          "{",
          "[",
          "]",
          ":",
          "\"",
          "\\",
          "\\u0000",
          "\\ud83d",
          "\uD83D\uDE97",
          "\r",
          "\r\n",
          "\t",
          "\uFEFF",
          "\u0000",
          "\u00a0",
          "//",
          "/* */",
          "#",
          "'",
          "NaN",
          "-",
          "1e400",
          "-0.0",
          "null",
          "true",
          "{}",
          "[]",
          "\"\":",
          "\"note\": 1,",
          "<<<<<<< a\n",
          "0x1F",
          "\u2028");

  private static final List<String> NAMES =
      List.of(
          "from", "to", "colr", "note", "format", "kind", "at", "rows", "areaMm2", "a", "on", "W 1",
          "ECU.fan", "X1:3", "", "~/", "\u00e9", "volts", "uses", "loom", "places", "w1", "W1\n");

  private final Random random;
  private final JsonNodeFactory nodes = JsonNodeFactory.instance;

  Mutations(long seed) {
    this.random = new Random(seed);
  }

  /** Damages the text: some characters go, come, or change places. */
  String ofText(String text) {
    StringBuilder damaged = new StringBuilder(text);
    int times = 1 + random.nextInt(3);
    for (int i = 0; i < times && damaged.length() > 2; i++) {
      int at = random.nextInt(damaged.length());
      int to = Math.min(damaged.length(), at + 1 + random.nextInt(random.nextBoolean() ? 2 : 30));
      switch (random.nextInt(5)) {
        case 0 -> damaged.delete(at, to);
        case 1 -> damaged.insert(at, pick(SNIPPETS));
        case 2 -> damaged.insert(at, damaged.substring(at, to));
        case 3 -> damaged.setCharAt(at, (char) (32 + random.nextInt(96)));
        default -> damaged.replace(at, to, pick(SNIPPETS));
      }
    }
    return random.nextInt(40) == 0
        ? damaged.substring(0, damaged.length() / 2)
        : damaged.toString();
  }

  /** Damages the tree: some values or names are replaced, dropped or moved. */
  String ofTree(String text) {
    JsonNode root = JsonMapper.shared().readTree(text);
    int times = 1 + random.nextInt(3);
    for (int i = 0; i < times; i++) {
      List<JsonNode> containers = new ArrayList<>();
      collect(root, containers);
      JsonNode chosen = pick(containers);
      if (chosen instanceof ObjectNode object) {
        damage(object, pick(containers));
      } else if (chosen instanceof ArrayNode list) {
        damage(list);
      }
    }
    return random.nextBoolean() ? root.toString() : root.toPrettyString();
  }

  private static void collect(JsonNode node, List<JsonNode> containers) {
    if (node.isContainer()) {
      containers.add(node);
      node.forEach(inner -> collect(inner, containers));
    }
  }

  private void damage(ObjectNode object, JsonNode other) {
    List<String> names = List.copyOf(object.propertyNames());
    String name = names.isEmpty() || random.nextInt(4) == 0 ? pick(NAMES) : pick(names);
    switch (random.nextInt(5)) {
      case 0 -> object.remove(name);
      case 1 -> {
        JsonNode value = object.remove(name);
        object.set(pick(NAMES), value == null ? value() : value);
      }
      case 2 -> object.set(name, other.deepCopy());
      case 3 -> object.set(misspelt(name), value());
      default -> object.set(name, value());
    }
  }

  private void damage(ArrayNode list) {
    switch (random.nextInt(3)) {
      case 0 -> list.add(value());
      case 1 -> {
        if (!list.isEmpty()) {
          list.set(random.nextInt(list.size()), value());
        }
      }
      default -> list.removeAll();
    }
  }

  private String misspelt(String name) {
    if (name.isEmpty()) {
      return "x";
    }
    int at = random.nextInt(name.length());
    return name.substring(0, at) + (random.nextBoolean() ? "x" : "") + name.substring(at + 1);
  }

  private JsonNode value() {
    return switch (random.nextInt(14)) {
      case 0 -> nodes.nullNode();
      case 1 -> nodes.booleanNode(random.nextBoolean());
      case 2 -> nodes.numberNode(random.nextInt(400) - 100);
      case 3 -> nodes.numberNode(random.nextDouble() * Math.pow(10, random.nextInt(12) - 4));
      case 4 -> nodes.numberNode(-0.0);
      case 5 -> nodes.numberNode(new BigInteger("9".repeat(25)));
      case 6 -> nodes.objectNode();
      case 7 -> nodes.arrayNode().add(pick(NAMES));
      case 8 -> nodes.stringNode("2026-0" + random.nextInt(10) + "-3" + random.nextInt(3));
      case 9 -> nodes.stringNode("x".repeat(random.nextInt(300)));
      case 10 -> nodes.numberNode(1.0 + random.nextInt(3));
      case 11 -> nodes.objectNode().set("note", nodes.stringNode("n"));
      default -> nodes.stringNode(pick(NAMES));
    };
  }

  private <T> T pick(List<T> from) {
    return from.get(random.nextInt(from.size()));
  }
}
