package org.tugtest.schema;

import com.networknt.schema.Error;
import com.networknt.schema.path.NodePath;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Quoted;
import org.tugtest.text.Thing;
import tools.jackson.databind.JsonNode;

/** Says in plain sentences what the schema library found, each place once. */
final class Sentences {
  private static final List<String> WEIGHTIEST_FIRST =
      List.of("false", "type", "const", "enum", "pattern");

  private final JsonNode schema;

  Sentences(JsonNode schema) {
    this.schema = schema;
  }

  List<Mismatch> of(List<Error> errors) {
    Map<String, Error> weightiest = new LinkedHashMap<>();
    Map<String, List<String>> missing = new HashMap<>();
    for (Error error : errors) {
      String at = String.valueOf(error.getInstanceLocation());
      Found found = new Found(error);
      if (found.isMissing()) {
        String key = at + " missing " + found.conditional();
        missing.computeIfAbsent(key, absent -> new ArrayList<>()).add(found.missing());
        weightiest.putIfAbsent(key, error);
      } else {
        String key = at + " " + error.getProperty();
        weightiest.merge(key, error, (one, two) -> weight(two) < weight(one) ? two : one);
      }
    }
    Map<String, Set<String>> meant = meant(weightiest.values());
    List<Mismatch> mismatches = new ArrayList<>(weightiest.size());
    for (Error error : weightiest.values()) {
      String at = String.valueOf(error.getInstanceLocation());
      Found found = new Found(error);
      if (!found.isMissing()) {
        mismatches.add(sentence(error));
      } else {
        Set<String> misspelt = meant.getOrDefault(at, Set.of());
        mismatches.addAll(
            missing(
                found,
                missing.getOrDefault(at + " missing " + found.conditional(), List.of()),
                misspelt));
      }
    }
    return mismatches;
  }

  /** The known fields that unknown ones were meant to be, by the object they stand in. */
  private Map<String, Set<String>> meant(Collection<Error> errors) {
    Map<String, Set<String>> meant = new HashMap<>();
    for (Error error : errors) {
      if (error.getKeyword().equals("additionalProperties")) {
        Found found = new Found(error);
        Collection<String> known = found.owner().path("properties").propertyNames();
        meant
            .computeIfAbsent(String.valueOf(error.getInstanceLocation()), key -> new HashSet<>())
            .addAll(Near.to(found.property(), known));
      }
    }
    return meant;
  }

  private static int weight(Error error) {
    int at = WEIGHTIEST_FIRST.indexOf(error.getKeyword());
    return at < 0 ? WEIGHTIEST_FIRST.size() : at;
  }

  private Mismatch sentence(Error error) {
    Found found = new Found(error);
    return switch (error.getKeyword()) {
      case "type" -> new ValueSentences(found).ofType();
      case "const" -> new ValueSentences(found).ofFormat();
      case "enum" -> new ValueSentences(found).ofEnum();
      case "pattern", "format" -> new ValueSentences(found).ofPattern();
      case "minimum", "maximum", "exclusiveMinimum" -> new ValueSentences(found).ofRange();
      case "minLength", "maxLength", "minItems", "maxItems" -> new ValueSentences(found).ofLength();
      case "uniqueItems" ->
          found.value(found.phrase() + " names the same thing twice.", "Leave one of the two out.");
      case "additionalProperties" -> unknown(found);
      case "propertyNames" -> badName(found);
      case "false" ->
          found.value(
              found.phrase() + " cannot stand here. " + found.comment(),
              "Leave " + Quoted.text(found.last()) + " or what it contradicts out.");
      default ->
          throw new IllegalStateException("no sentence for the keyword " + error.getKeyword());
    };
  }

  private static Mismatch unknown(Found found) {
    String name = found.property();
    Collection<String> known = found.owner().path("properties").propertyNames();
    String near = Near.question(name, known);
    String remedy =
        near.isEmpty()
            ? "Leave it out; what may stand there: " + String.join(", ", Near.fields(known)) + "."
            : near;
    return new Mismatch(
        found.child(name),
        true,
        true,
        Quoted.text(name) + " is no field of " + found.phrase() + ".",
        remedy);
  }

  private Mismatch badName(Found found) {
    String name = found.property();
    JsonNode names = resolved(found.owner().path("propertyNames"));
    String what = names.path("description").asString("It does not have the form of a name.");
    return new Mismatch(
        found.child(name),
        true,
        true,
        Quoted.text(name) + " cannot be a name in " + found.thing().inWords() + ".",
        "Rename it. " + what);
  }

  private JsonNode resolved(JsonNode node) {
    String ref = node.path("$ref").asString("");
    return ref.isEmpty() ? node : schema.at(ref.substring(1));
  }

  private static List<Mismatch> missing(Found found, List<String> fields, Set<String> misspelt) {
    String whole = found.thing().inWords();
    if (found.conditional()) {
      String comment = found.comment();
      return misspelt.stream().anyMatch(comment::contains)
          ? List.of()
          : List.of(found.name(whole + " is not complete. " + comment, "Add what is missing."));
    }
    JsonNode known = found.owner().path("properties");
    List<String> absent =
        fields.stream().filter(name -> !misspelt.contains(name) && known.has(name)).toList();
    if (absent.isEmpty()) {
      return List.of();
    }
    if (absent.equals(List.of("format"))) {
      return List.of(found.name(whole + " gives no format.", "Begin it with \"format\": 1."));
    }
    StringBuilder remedy = new StringBuilder();
    for (String name : absent) {
      remedy.append(remedy.length() == 0 ? "" : " ").append("Add ").append(Quoted.text(name));
      remedy.append(": ").append(known.path(name).path("description").asString("see the schema."));
    }
    return List.of(found.name(whole + " gives no " + Near.or(absent) + ".", remedy.toString()));
  }

  /** One error of the library, with what the sentences need from it. */
  final class Found {
    private final Error error;
    private final List<String> names;

    Found(Error error) {
      this.error = error;
      this.names = names(error.getInstanceLocation());
    }

    /** Not by the text of the path, in which the library writes a line feed as two letters. */
    private static List<String> names(NodePath path) {
      List<String> names = new ArrayList<>();
      for (int i = 0; i < path.getNameCount(); i++) {
        names.add(String.valueOf(path.getElement(i)));
      }
      return List.copyOf(names);
    }

    String keyword() {
      return error.getKeyword();
    }

    boolean isMissing() {
      return keyword().equals("required") || keyword().equals("dependentRequired");
    }

    List<String> names() {
      return names;
    }

    String last() {
      return names.isEmpty() ? "" : names.get(names.size() - 1);
    }

    List<String> child(String name) {
      List<String> child = new ArrayList<>(names);
      child.add(name);
      return child;
    }

    Thing thing() {
      return Thing.of(names);
    }

    String phrase() {
      return thing().inWords();
    }

    String property() {
      return String.valueOf(error.getProperty());
    }

    /** The field that is missing. */
    String missing() {
      boolean dependent = keyword().equals("dependentRequired");
      return dependent ? String.valueOf(error.getArguments()[0]) : property();
    }

    @Nullable JsonNode actual() {
      return error.getInstanceNode();
    }

    JsonNode allowed() {
      return error.getSchemaNode();
    }

    /** Whether the demand holds only because of what else is written. */
    boolean conditional() {
      NodePath path = error.getSchemaLocation().getFragment();
      return keyword().equals("dependentRequired")
          || path.contains("then")
          || path.contains("else");
    }

    /** The schema object that holds the keyword. */
    JsonNode owner() {
      NodePath path = error.getSchemaLocation().getFragment();
      JsonNode node = schema;
      for (int i = 0; i < path.getNameCount() - 1; i++) {
        node = step(node, path.getName(i));
      }
      return node;
    }

    /** What the schema says about fields that go together; empty when it says nothing. */
    String comment() {
      NodePath path = error.getSchemaLocation().getFragment();
      JsonNode node = schema;
      String comment = "";
      for (int i = 0; i < path.getNameCount() - 1; i++) {
        node = step(node, path.getName(i));
        comment = node.path("$comment").asString(comment);
      }
      return comment;
    }

    private static JsonNode step(JsonNode node, String name) {
      return node.isArray() ? node.path(Integer.parseInt(name)) : node.path(name);
    }

    Mismatch name(String message, String remedy) {
      return new Mismatch(names, true, false, message, remedy);
    }

    Mismatch value(String message, String remedy) {
      return new Mismatch(names, false, true, message, remedy);
    }
  }
}
