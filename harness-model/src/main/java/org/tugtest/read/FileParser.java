package org.tugtest.read;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
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

  /** Most problems of shape shown of one file. */
  static final int MOST_SHOWN = 500;

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
    List<Problem> problems = new ArrayList<>();
    twice.forEach(name -> problems.add(twice(index, name)));
    problems.addAll(shape(index, root));
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

  private Problem twice(FileIndex index, TreeBuilder.Twice twice) {
    List<String> names = twice.names();
    String name = names.get(names.size() - 1);
    Thing around = Thing.of(names.subList(0, names.size() - 1));
    Place second = index.tokenAt(twice.offset(), JsonPointer.of(names.toArray(String[]::new)));
    Place first = index.nameAt(names.toArray(String[]::new));
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

  private List<Problem> shape(FileIndex index, ObjectNode root) {
    List<Mismatch> mismatches = schema.check(root);
    if (mismatches.isEmpty()) {
      return List.of();
    }
    List<Problem> problems = new ArrayList<>();
    for (Mismatch mismatch : mismatches) {
      String[] names = mismatch.names().toArray(String[]::new);
      Place at = mismatch.atName() ? index.nameAt(names) : index.at(names);
      problems.add(
          new Problem(
              Problem.Kind.SHAPE_WRONG,
              subject(index, mismatch.names()),
              mismatch.message(),
              mismatch.remedy(),
              List.of(at)));
    }
    mismatches.stream().filter(Mismatch::drop).forEach(mismatch -> drop(root, mismatch.names()));
    problems.sort(Comparator.comparing(problem -> problem.at().get(0)));
    return cut(index, problems);
  }

  private static List<Problem> cut(FileIndex index, List<Problem> problems) {
    if (problems.size() <= MOST_SHOWN) {
      return problems;
    }
    int more = problems.size() - MOST_SHOWN;
    List<Problem> shown = new ArrayList<>(problems.subList(0, MOST_SHOWN));
    shown.add(
        new Problem(
            Problem.Kind.SHAPE_WRONG,
            "files/" + index.source().path(),
            Quoted.name(index.source().path()) + " has " + more + " more such places.",
            "Put the first ones right; the others will be shown then.",
            List.of(problems.get(MOST_SHOWN).at().get(0))));
    return shown;
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
