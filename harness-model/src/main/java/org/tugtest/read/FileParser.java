package org.tugtest.read;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;
import org.tugtest.text.SourceText;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** From the bytes of one JSON file to its tree, its index and its problems of syntax. */
final class FileParser {
  private final ReadLimits limits;
  private final JsonFactory factory;

  FileParser(ReadLimits limits) {
    this.limits = limits;
    this.factory =
        JsonFactory.builder()
            .streamReadConstraints(
                StreamReadConstraints.builder()
                    .maxNestingDepth(limits.depth())
                    .maxStringLength(limits.textLength())
                    .maxNameLength(limits.textLength())
                    .build())
            .build();
  }

  ParsedFile parse(String path, SourceFiles.Content content) {
    if (content instanceof SourceFiles.Content.Refused refused) {
      return unreadable(path, refused.message(), refused.remedy(), atTop(path), null);
    }
    byte[] bytes = ((SourceFiles.Content.Bytes) content).bytes();
    if (bytes.length > limits.bytes()) {
      return unreadable(
          path,
          "is " + bytes.length + " bytes long; at most " + limits.bytes() + " are read",
          "Split the file, and name the pieces under \"uses\".",
          atTop(path),
          null);
    }
    String text;
    try {
      text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
    } catch (CharacterCodingException notUtf8) {
      return unreadable(path, "is not UTF-8", "Save it as UTF-8.", atTop(path), null);
    }
    return parse(SourceText.of(path, text.startsWith("\uFEFF") ? text.substring(1) : text));
  }

  private ParsedFile parse(SourceText source) {
    FileIndex index = new FileIndex(source);
    List<Problem> problems = new ArrayList<>();
    try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), source.text())) {
      JsonNode root = new Tree(parser, index).read();
      if (root instanceof ObjectNode object) {
        return new ParsedFile(source.path(), index, object, problems);
      }
      return unreadable(source.path(), "is not an object", "Begin it with {.", index.top(), index);
    } catch (JacksonException wrong) {
      Place at =
          wrong.getLocation() == null
              ? index.top()
              : Place.point(
                  source.path(),
                  Math.max(1, wrong.getLocation().getLineNr()),
                  Math.max(1, wrong.getLocation().getColumnNr()),
                  "");
      return unreadable(
          source.path(), wrong.getOriginalMessage(), "Put the JSON right.", at, index);
    }
  }

  private static Place atTop(String path) {
    return Place.point(path, 1, 1, "");
  }

  private static ParsedFile unreadable(
      String path, String message, String remedy, Place at, @Nullable FileIndex index) {
    Problem problem =
        new Problem(
            Problem.Kind.FILE_UNREADABLE,
            "files/" + path,
            path + " " + message,
            remedy,
            List.of(at));
    return new ParsedFile(path, index, null, List.of(problem));
  }

  /** Builds the tree from the tokens and notes where entries begin. */
  private static final class Tree {
    private final JsonParser parser;
    private final FileIndex index;
    private final JsonNodeFactory nodes = JsonNodeFactory.instance;

    Tree(JsonParser parser, FileIndex index) {
      this.parser = parser;
      this.index = index;
    }

    @Nullable JsonNode read() {
      JsonToken first = parser.nextToken();
      if (first != JsonToken.START_OBJECT) {
        return null;
      }
      ObjectNode root = nodes.objectNode();
      while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
        String section = parser.currentName();
        index.section(section, offset());
        root.putIfAbsent(section, section(section));
      }
      return parser.nextToken() == null ? root : null;
    }

    private JsonNode section(String section) {
      if (parser.nextToken() != JsonToken.START_OBJECT) {
        return value();
      }
      boolean ofMaps = section.equals("parts") || section.equals("layout");
      ObjectNode object = nodes.objectNode();
      while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
        String id = parser.currentName();
        index.entry(section, id, offset());
        boolean map = parser.nextToken() == JsonToken.START_OBJECT && ofMaps;
        object.putIfAbsent(id, map ? inner(section + "/" + id) : value());
      }
      return object;
    }

    private ObjectNode inner(String section) {
      ObjectNode object = nodes.objectNode();
      while (parser.nextToken() == JsonToken.PROPERTY_NAME) {
        String id = parser.currentName();
        index.entry(section, id, offset());
        parser.nextToken();
        object.putIfAbsent(id, value());
      }
      return object;
    }

    private int offset() {
      return (int) parser.currentTokenLocation().getCharOffset();
    }

    /** The value at the present token; its depth is bounded by the parser. */
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
        parser.nextToken();
        object.putIfAbsent(name, value());
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
}
