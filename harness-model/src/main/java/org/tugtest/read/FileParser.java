package org.tugtest.read;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.tugtest.schema.Judgement;
import org.tugtest.schema.Mismatch;
import org.tugtest.schema.PublishedSchema;
import org.tugtest.text.JsonPointer;
import org.tugtest.text.Place;
import org.tugtest.text.Problem;
import org.tugtest.text.Quoted;
import org.tugtest.text.SourceText;
import org.tugtest.text.Thing;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * From the bytes of one JSON file to the tree of what can be used of it, its index and its problems
 * of syntax and shape.
 */
final class FileParser {
  /** Most characters of one number. */
  static final int NUMBER_LENGTH = 1000;

  /** Most names, values and brackets of one file; 100,000 wires of ten fields hold 2.5 million. */
  static final int TOKENS = 6_000_000;

  private final ReadLimits limits;
  private final PublishedSchema schema;
  private final JsonFactory factory;

  FileParser(ReadLimits limits, PublishedSchema schema) {
    this.limits = limits;
    this.schema = schema;
    this.factory =
        JsonFactory.builder()
            .streamReadConstraints(
                StreamReadConstraints.builder()
                    .maxNestingDepth(limits.depth())
                    .maxStringLength(limits.textLength())
                    .maxNameLength(limits.textLength())
                    .maxNumberLength(NUMBER_LENGTH)
                    .maxTokenCount(TOKENS)
                    .build())
            .build();
  }

  ParsedFile parse(String path, SourceFiles.Content content) {
    TextDecoder.Decoded decoded = TextDecoder.decode(path, content, limits);
    SourceText source = decoded.source();
    TextDecoder.Trouble trouble = decoded.trouble();
    if (source == null || trouble != null) {
      return trouble == null
          ? unreadable(path, "cannot be read", "Look at the file.", List.of(top(path)), null)
          : unreadable(path, trouble.message(), trouble.remedy(), List.of(trouble.at()), null);
    }
    return parse(source);
  }

  private ParsedFile parse(SourceText source) {
    FileIndex index = new FileIndex(source);
    ObjectNode root;
    List<TreeBuilder.Twice> twice;
    try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), source.text())) {
      TreeBuilder builder = new TreeBuilder(parser, index);
      root = builder.read();
      twice = builder.twice();
      if (root == null || builder.goesOn()) {
        return broken(source, "does not begin with {");
      }
    } catch (JacksonException broken) {
      return broken(source, "cannot be read: " + Quoted.name(broken.getOriginalMessage()));
    }
    return judged(index, root, twice);
  }

  private ParsedFile judged(FileIndex index, ObjectNode root, List<TreeBuilder.Twice> twice) {
    SourceText source = index.source();
    Judgement judgement = schema.judge(root);
    List<Mismatch> mismatches = judgement.mismatches();
    if (!judgement.complete()) {
      return unreadable(
          source.path(),
          "has " + mismatches.size() + " places and more that the format does not allow",
          "Look at the first: " + mismatches.get(0).message(),
          List.of(index.at(mismatches.get(0).names().toArray(String[]::new))),
          new FileIndex(source));
    }
    Spots spots = new Spots(source);
    mismatches.forEach(mismatch -> spots.want(mismatch.names()));
    twice.forEach(name -> spots.want(name.names()));
    if (!mismatches.isEmpty() || !twice.isEmpty()) {
      spots.find();
    }
    List<Problem> problems = new ArrayList<>();
    twice.forEach(name -> problems.add(twice(index, spots, name)));
    for (Mismatch mismatch : mismatches) {
      problems.add(
          new Problem(
              Problem.Kind.SHAPE_WRONG,
              subject(index, mismatch.names()),
              mismatch.message(),
              mismatch.remedy(),
              List.of(spots.at(mismatch.names(), mismatch.atName()))));
    }
    mismatches.stream().filter(Mismatch::drop).forEach(mismatch -> drop(root, mismatch.names()));
    return new ParsedFile(source.path(), index, root, problems);
  }

  private ParsedFile broken(SourceText source, String otherwise) {
    FileIndex none = new FileIndex(source);
    SyntaxTrouble trouble = SyntaxTrouble.find(source, limits);
    return trouble == null
        ? unreadable(
            source.path(),
            otherwise,
            "A file is one object: { \"format\": 1, ... }.",
            List.of(none.top()),
            none)
        : unreadable(source.path(), trouble.message(), trouble.remedy(), trouble.at(), none);
  }

  private static Place top(String path) {
    return Place.point(path, 1, 1, "");
  }

  private static ParsedFile unreadable(
      String path, String message, String remedy, List<Place> at, @Nullable FileIndex index) {
    Problem problem =
        new Problem(
            Problem.Kind.FILE_UNREADABLE,
            "files/" + path,
            Quoted.name(path) + " " + message + ".",
            remedy,
            at);
    return new ParsedFile(path, index, null, List.of(problem));
  }

  private Problem twice(FileIndex index, Spots spots, TreeBuilder.Twice twice) {
    List<String> names = twice.names();
    String name = names.get(names.size() - 1);
    Thing around = Thing.of(names.subList(0, names.size() - 1));
    Place second = index.tokenAt(twice.offset(), JsonPointer.of(names.toArray(String[]::new)));
    Place first = spots.at(names, true);
    return new Problem(
        Problem.Kind.SHAPE_WRONG,
        subject(index, names),
        Quoted.text(name)
            + " is given twice in "
            + around.inWords()
            + ", "
            + lines(first.line(), second.line())
            + "; only the first is used.",
        "Delete or rename one of the two.",
        List.of(second, first));
  }

  private static String lines(int first, int second) {
    return first == second
        ? "both in line " + first
        : "in line " + first + " and in line " + second;
  }

  private String subject(FileIndex index, List<String> names) {
    String thing = Thing.of(names).name();
    return thing.isEmpty() || schema != PublishedSchema.HARNESS
        ? "files/" + index.source().path()
        : thing;
  }

  /** Takes a value out of the tree; in a list null stands in its place. */
  private static void drop(ObjectNode root, List<String> names) {
    JsonNode parent = root;
    for (String name : names.subList(0, Math.max(0, names.size() - 1))) {
      parent = parent.isArray() ? parent.path(Integer.parseInt(name)) : parent.path(name);
    }
    if (names.isEmpty()) {
      return;
    }
    String last = names.get(names.size() - 1);
    if (parent instanceof ObjectNode object) {
      object.remove(last);
    } else if (parent instanceof ArrayNode list) {
      int at = Integer.parseInt(last);
      if (at < list.size()) {
        list.setNull(at);
      }
    }
  }
}
