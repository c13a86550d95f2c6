package org.tugtest.schema;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.tugtest.text.Quoted;
import tools.jackson.databind.JsonNode;

/** Sentences about one value that is not what its schema allows. */
final class ValueSentences {
  private static final Map<String, String> TYPES =
      Map.of(
          "string", "a text",
          "number", "a number",
          "integer", "a whole number",
          "boolean", "true or false",
          "object", "an object in { }",
          "array", "a list in [ ]");

  /** Names of the colours of IEC 60757, for those who write them out. */
  private static final Map<String, String> COLOURS =
      Map.ofEntries(
          Map.entry("black", "BK"),
          Map.entry("brown", "BN"),
          Map.entry("red", "RD"),
          Map.entry("orange", "OG"),
          Map.entry("yellow", "YE"),
          Map.entry("green", "GN"),
          Map.entry("blue", "BU"),
          Map.entry("violet", "VT"),
          Map.entry("grey", "GY"),
          Map.entry("white", "WH"),
          Map.entry("pink", "PK"),
          Map.entry("gold", "GD"),
          Map.entry("turquoise", "TQ"),
          Map.entry("silver", "SR"),
          Map.entry("green-and-yellow", "GNYE"));

  private final Sentences.Found found;

  ValueSentences(Sentences.Found found) {
    this.found = found;
  }

  Mismatch ofType() {
    List<String> wanted = new ArrayList<>();
    JsonNode allowed = found.allowed();
    if (allowed.isString()) {
      wanted.add(type(allowed));
    } else {
      allowed.forEach(type -> wanted.add(type(type)));
    }
    return found.value(
        found.phrase() + " is " + shown(found.actual()) + "; it must be " + Near.or(wanted) + ".",
        typeRemedy(Near.or(wanted)));
  }

  private static String type(JsonNode name) {
    return TYPES.getOrDefault(name.asString(""), "another value");
  }

  private String typeRemedy(String wanted) {
    JsonNode actual = found.actual();
    boolean number = wanted.equals("a number") || wanted.equals("a whole number");
    if (actual != null && actual.isNumber() && Double.isInfinite(actual.doubleValue())) {
      return "Correct the figure. " + found.owner().path("description").asString("");
    }
    if (actual != null && actual.isString()) {
      String text = actual.stringValue().strip();
      if (number && text.matches("-?[0-9]{1,15}([.,][0-9]{1,15})?")) {
        return "Write it without quotes: " + text.replace(',', '.') + ".";
      }
      if (number) {
        return "Write a plain number without quotes and without unit; the unit stands in the name.";
      }
      if (wanted.equals("true or false") && (text.equals("true") || text.equals("false"))) {
        return "Write it without quotes: " + text + ".";
      }
    }
    if (actual != null && actual.isNumber() && wanted.equals("a text")) {
      return "Write it in quotes: \"" + shown(actual) + "\".";
    }
    if (wanted.equals("a list in [ ]")) {
      return "Put it in square brackets, also when it is only one.";
    }
    return "Write " + wanted + " instead.";
  }

  Mismatch ofFormat() {
    JsonNode actual = found.actual();
    if (actual != null && actual.isNumber() && actual.doubleValue() > 1) {
      return found.value(
          "this file is of format " + Quoted.name(actual.asString()) + "; this Tugtest reads 1.",
          "Update Tugtest, or write the file as format 1.");
    }
    return found.value(
        found.phrase() + " is " + shown(actual) + "; it must be " + found.allowed() + ".",
        "Write " + found.allowed() + ".");
  }

  Mismatch ofEnum() {
    List<String> words = new ArrayList<>();
    found.allowed().forEach(word -> words.add(word.asString("")));
    JsonNode actual = found.actual();
    String near =
        actual != null && actual.isString() ? Near.question(actual.stringValue(), words) : "";
    return found.value(
        found.phrase() + " is " + shown(actual) + "; it must be " + Near.or(words) + ".",
        near.isEmpty() ? "Write one of those words, in quotes." : near);
  }

  Mismatch ofPattern() {
    String what = found.owner().path("description").asString("");
    JsonNode actual = found.actual();
    String colour = actual == null ? "" : colour(actual.asString(""));
    boolean isColour = what.startsWith("A colour");
    return found.value(
        found.phrase() + " is " + shown(actual) + ", which does not have the form expected there.",
        isColour && !colour.isEmpty() ? "Did you mean \"" + colour + "\"?" : what);
  }

  private static String colour(String written) {
    List<String> codes = new ArrayList<>();
    for (String name : written.toLowerCase(Locale.ROOT).split("[/ -]+", -1)) {
      String upper = name.toUpperCase(Locale.ROOT);
      String code = COLOURS.getOrDefault(name, COLOURS.containsValue(upper) ? upper : "");
      if (code.isEmpty()) {
        return "";
      }
      codes.add(code);
    }
    return codes.size() > 2 ? "" : String.join("/", codes);
  }

  Mismatch ofRange() {
    String unit = Units.of(found.last());
    String limit = Quoted.number(found.allowed().doubleValue()) + unit;
    String must =
        switch (found.keyword()) {
          case "minimum" -> "at least " + limit;
          case "maximum" -> "at most " + limit;
          default -> "over " + limit;
        };
    String what = found.owner().path("description").asString("");
    return found.value(
        found.phrase() + " is " + shown(found.actual()) + unit + "; it must be " + must + ".",
        "Correct the figure. " + what);
  }

  Mismatch ofLength() {
    JsonNode actual = found.actual();
    boolean list = found.keyword().endsWith("Items");
    int length =
        actual == null
            ? 0
            : list ? actual.size() : actual.asString("").codePoints().toArray().length;
    String most = (found.keyword().startsWith("max") ? "at most " : "at least ") + found.allowed();
    return found.value(
        found.phrase()
            + (list ? " has " : " is ")
            + length
            + (list ? " items; " : " characters long; ")
            + most
            + " are expected.",
        list
            ? "Correct the list."
            : found.owner().path("description").asString("Change its length."));
  }

  private static String shown(@Nullable JsonNode value) {
    if (value == null || value.isNull()) {
      return "null";
    }
    if (value.isString()) {
      return Quoted.text(value.stringValue());
    }
    if (value.isNumber() && Double.isInfinite(value.doubleValue())) {
      return "a number beyond all bounds";
    }
    if (value.isArray()) {
      return "a list";
    }
    if (value.isNumber()) {
      return Quoted.number(value.doubleValue());
    }
    return value.isObject() ? "an object" : Quoted.name(value.asString());
  }
}
