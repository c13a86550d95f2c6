package org.tugtest.read;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.JsonPointer;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Builds the tree of a file from its tokens and notes where entries begin. Of a name given twice in
 * one object the first stays.
 */
final class TreeBuilder {
  /** Most names given twice that are kept; one more name would say no more. */
  private static final int MOST_TWICE = 1_000;

  private final JsonParser parser;
  private final FileIndex index;
  private final JsonNodeFactory nodes = JsonNodeFactory.instance;
  private final List<Twice> twice = new ArrayList<>();
  private boolean goesOn;

  TreeBuilder(JsonParser parser, FileIndex index) {
    this.parser = parser;
    this.index = index;
  }

  /** A name given a second time in one object, {@code offset} being that of the second. */
  record Twice(List<String> names, int offset) {}

  /** The tree; null when it is no object. Throws what the parser throws on broken text. */
  @Nullable ObjectNode read() {
    if (parser.nextToken() != JsonToken.START_OBJECT) {
      return null;
    }
    ObjectNode root = nodes.objectNode();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      String section = parser.currentName();
      if (isNew(root, section)) {
        index.section(section, offset());
        root.set(section, section(section));
      }
    }
    goesOn = parser.nextToken() != null;
    return root;
  }

  /** Whether anything follows the tree in the text. */
  boolean goesOn() {
    return goesOn;
  }

  List<Twice> twice() {
    return twice;
  }

  private JsonNode section(String section) {
    if (parser.nextToken() != JsonToken.START_OBJECT) {
      return value();
    }
    boolean ofMaps = section.equals("parts") || section.equals("layout");
    ObjectNode object = nodes.objectNode();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      String id = parser.currentName();
      if (isNew(object, id)) {
        index.entry(section, id, offset());
        boolean map = parser.nextToken() == JsonToken.START_OBJECT && ofMaps;
        object.set(id, map ? inner(section + "/" + id) : value());
      }
    }
    return object;
  }

  private ObjectNode inner(String section) {
    ObjectNode object = nodes.objectNode();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      String id = parser.currentName();
      if (isNew(object, id)) {
        index.entry(section, id, offset());
        parser.nextToken();
        object.set(id, value());
      }
    }
    return object;
  }

  private boolean isNew(ObjectNode object, String name) {
    if (!object.has(name)) {
      return true;
    }
    if (twice.size() < MOST_TWICE) {
      String pointer = parser.streamReadContext().pathAsPointer().toString();
      twice.add(new Twice(JsonPointer.names(pointer), offset()));
    }
    parser.nextToken();
    parser.skipChildren();
    return false;
  }

  private int offset() {
    return (int) parser.currentTokenLocation().getCharOffset();
  }

  /** The value at the present token; the parser bounds its depth. */
  private JsonNode value() {
    return switch (parser.currentToken()) {
      case START_OBJECT -> object();
      case START_ARRAY -> list();
      case VALUE_STRING -> nodes.stringNode(parser.getString());
      case VALUE_NUMBER_INT ->
          switch (parser.getNumberType()) {
            case INT -> nodes.numberNode(parser.getIntValue());
            case LONG -> nodes.numberNode(parser.getLongValue());
            default -> nodes.numberNode(parser.getBigIntegerValue());
          };
      case VALUE_NUMBER_FLOAT -> nodes.numberNode(parser.getDoubleValue());
      case VALUE_TRUE -> nodes.booleanNode(true);
      case VALUE_FALSE -> nodes.booleanNode(false);
      default -> nodes.nullNode();
    };
  }

  private ObjectNode object() {
    ObjectNode object = nodes.objectNode();
    while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
      String name = parser.currentName();
      if (isNew(object, name)) {
        parser.nextToken();
        object.set(name, value());
      }
    }
    return object;
  }

  private ArrayNode list() {
    ArrayNode list = nodes.arrayNode();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      list.add(value());
    }
    return list;
  }
}
