package org.tugtest.hook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The shell script that git starts before a commit. It is the same for every kind of commit, holds
 * no path of this machine without another way round, and asks git first whether the commit touches
 * a harness at all.
 *
 * @param order what the guard looks at
 * @param java the Java program to start first where it is there; a path of this machine
 * @param plugin {@code group:artifact:version} of this plugin, for the way round through Maven
 */
record HookScript(GuardOrder order, String java, String plugin) {
  /** The line by which a hook is known as ours. */
  static final String MARKER = "# tugtest-guard: keeps commits that break a harness from happening";

  /** How a hook that was there before is called from then on. */
  static final String KEPT = ".before-tugtest";

  private static final Pattern PLACE = Pattern.compile("@([a-z]+)@");

  /**
   * Options of the JVM: a small heap's collector, quick compilation, the prepared classes, and
   * nothing said where these cannot be used.
   */
  static final List<String> JVM =
      List.of(
          "-XX:TieredStopAtLevel=1",
          "-XX:+UseSerialGC",
          "-XX:-UsePerfData",
          "-Xshare:auto",
          "-XX:-PrintWarnings",
          "-Xlog:disable",
          "-Xlog:all=off");

  /** Whether a hook of that content is ours. */
  static boolean isOurs(byte[] hook) {
    return new String(hook, StandardCharsets.UTF_8).contains("\n" + MARKER + "\n");
  }

  /** The whole script: the pattern in {@code hook.sh} with its places filled. */
  String text() {
    Map<String, String> values =
        Map.of(
            "folders", quoted(folders()),
            "java", quoted(java),
            "jvm", String.join(" ", JVM),
            "main", Guard.class.getName(),
            "arguments", quoted(order.arguments()),
            "plugin", plugin,
            "properties", String.join(" ", properties()));
    return PLACE
        .matcher(pattern())
        .replaceAll(
            place ->
                Matcher.quoteReplacement(
                    Objects.requireNonNull(values.get(place.group(1)), place.group())));
  }

  private static String pattern() {
    try (InputStream stream = HookScript.class.getResourceAsStream("hook.sh")) {
      if (stream == null) {
        throw new IllegalStateException("hook.sh is missing from the jar");
      }
      return new String(stream.readAllBytes(), StandardCharsets.UTF_8).replace("\r\n", "\n");
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private List<String> folders() {
    List<String> folders = new ArrayList<>();
    folders.add(order.harness());
    folders.addAll(order.libraries());
    return folders.stream().map(folder -> folder.isEmpty() ? "." : folder).toList();
  }

  private List<String> properties() {
    List<String> properties = new ArrayList<>();
    properties.add("-Dtugtest.harnessDirectory=\"$PWD\"/" + quoted(order.harness()));
    add(
        properties,
        "libraryDirectories",
        order.libraries().stream().map(folder -> "\"$PWD\"/" + quoted(folder)).toList());
    add(properties, "includes", order.includes().stream().map(HookScript::quoted).toList());
    add(properties, "excludes", order.excludes().stream().map(HookScript::quoted).toList());
    properties.add("-Dtugtest.failOn=" + quoted(order.failOn()));
    return properties;
  }

  private static void add(List<String> properties, String name, List<String> values) {
    if (!values.isEmpty()) {
      properties.add("-Dtugtest." + name + "=" + String.join(",", values));
    }
  }

  private static String quoted(List<String> words) {
    return words.stream().map(HookScript::quoted).collect(Collectors.joining(" "));
  }

  /** A word as the shell takes it, whatever it holds. */
  static String quoted(String word) {
    return "'" + word.replace("'", "'\\''") + "'";
  }
}
