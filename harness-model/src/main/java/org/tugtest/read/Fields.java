package org.tugtest.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;
import org.tugtest.model.Ref;
import org.tugtest.model.Word;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Takes fields from an object; a field that is missing or of another type is as if left out. */
final class Fields {
  private static final ObjectNode NOTHING = JsonNodeFactory.instance.objectNode();

  private Fields() {}

  static @Nullable String text(ObjectNode from, String name) {
    JsonNode value = from.get(name);
    return value != null && value.isString() ? value.stringValue() : null;
  }

  static @Nullable Double number(ObjectNode from, String name) {
    JsonNode value = from.get(name);
    return value != null && value.isNumber() ? plain(value) : null;
  }

  static double number(ObjectNode from, String name, double otherwise) {
    JsonNode value = from.get(name);
    return value != null && value.isNumber() ? plain(value) : otherwise;
  }

  /** The number of a node; minus zero is zero. */
  static double plain(JsonNode value) {
    return value.doubleValue() + 0.0;
  }

  static @Nullable Integer count(ObjectNode from, String name) {
    JsonNode value = from.get(name);
    if (value == null || !value.isNumber()) {
      return null;
    }
    double number = value.doubleValue();
    boolean fits = number == Math.rint(number) && Math.abs(number) <= Integer.MAX_VALUE;
    return fits ? Integer.valueOf((int) number) : null;
  }

  static @Nullable Boolean flag(ObjectNode from, String name) {
    JsonNode value = from.get(name);
    boolean given = value != null && value.isBoolean();
    return given ? Boolean.valueOf(value.booleanValue()) : null;
  }

  static boolean flag(ObjectNode from, String name, boolean otherwise) {
    Boolean value = flag(from, name);
    return value == null ? otherwise : value;
  }

  /** A reference; null also for the empty text, which names nothing. */
  static @Nullable Ref ref(ObjectNode from, String name) {
    String value = text(from, name);
    return value == null || value.isEmpty() ? null : Ref.parse(value);
  }

  static List<String> texts(@Nullable JsonNode list) {
    if (list == null || !list.isArray()) {
      return List.of();
    }
    List<String> texts = new ArrayList<>(list.size());
    for (JsonNode element : list) {
      if (element.isString()) {
        texts.add(element.stringValue());
      }
    }
    return texts;
  }

  static List<String> texts(ObjectNode from, String name) {
    return texts(from.get(name));
  }

  static List<Ref> refs(ObjectNode from, String name) {
    return texts(from, name).stream().map(Ref::parse).toList();
  }

  /** The elements of a list; none when it is no list. */
  static Iterable<JsonNode> list(ObjectNode from, String name) {
    return from.get(name) instanceof ArrayNode list ? list : List.of();
  }

  static ObjectNode object(ObjectNode from, String name) {
    return from.get(name) instanceof ObjectNode object ? object : NOTHING;
  }

  /** A map of ids to objects. */
  static <T> Map<String, T> map(
      ObjectNode from, String name, BiFunction<String, ObjectNode, ? extends T> bind) {
    Map<String, T> map = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> entry : object(from, name).properties()) {
      if (entry.getValue() instanceof ObjectNode value) {
        map.put(entry.getKey(), bind.apply(entry.getKey(), value));
      }
    }
    return map;
  }

  /** A map of names to texts. */
  static Map<String, String> textMap(ObjectNode from, String name) {
    Map<String, String> map = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> entry : object(from, name).properties()) {
      if (entry.getValue().isString()) {
        map.put(entry.getKey(), entry.getValue().stringValue());
      }
    }
    return map;
  }

  /** The words of one field, each with its constant. */
  static <E extends Enum<E> & Word> Map<String, E> words(E[] constants) {
    Map<String, E> words = new LinkedHashMap<>();
    for (E constant : constants) {
      words.put(constant.name().toLowerCase(Locale.ROOT).replace('_', '-'), constant);
    }
    return Map.copyOf(words);
  }

  static <E> @Nullable E word(ObjectNode from, String name, Map<String, E> words) {
    String value = text(from, name);
    return value == null ? null : words.get(value);
  }

  static <E> E word(ObjectNode from, String name, Map<String, E> words, E otherwise) {
    E value = word(from, name, words);
    return value == null ? otherwise : value;
  }

  /** The words of a list that are known. */
  static <E> Set<E> wordSet(ObjectNode from, String name, Map<String, E> words) {
    Set<E> set = new LinkedHashSet<>();
    for (String text : texts(from, name)) {
      E value = words.get(text);
      if (value != null) {
        set.add(value);
      }
    }
    return set;
  }
}
