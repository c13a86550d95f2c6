package org.tugtest.goal;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.tugtest.git.RealGit;
import org.tugtest.hook.GuardOrder;
import org.tugtest.hook.Guarded;

/**
 * Does all that the tour through the sample says, in a copy of the sample and with the git program,
 * and holds what is printed against what the tour shows.
 */
class SampleTourTest {
  private static final Path SAMPLE =
      Path.of(System.getProperty("basedir", "."), "../sample-project");
  private static final String WRITE = "tugtest.golden.write";
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```console\\n(.*?)^```$");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Pattern COMMIT = Pattern.compile("\\b[0-9a-f]{7,40}\\b");

  /**
   * Lines that a new rule, the clock or a slow machine changes, and those of the tests' own
   * classes.
   */
  private static final Pattern LEFT_OUT =
      Pattern.compile(
          "(reading|checking|comparing): .* roots after .*|\\d+ rules run, .*|not judged:"
              + " .*|SLF4J.*");

  @TempDir Path folder;

  @Test
  void printsWhatItShows() throws IOException, MojoExecutionException {
    Path page = SAMPLE.resolve("README.md");
    String written = Files.readString(page);
    RealGit git = RealGit.in(copy(SAMPLE, folder.resolve("pebble-owl")));
    StringBuilder run = new StringBuilder();
    Matcher blocks = BLOCK.matcher(written);
    int blocksSeen = 0;
    while (blocks.find()) {
      blocks.appendReplacement(
          run, Matcher.quoteReplacement("```console\n" + run(git, blocks.group(1)) + "```"));
      blocksSeen++;
    }
    blocks.appendTail(run);
    if (Boolean.getBoolean(WRITE)) {
      Files.writeString(page, run);
    }
    assertThat(blocksSeen).isPositive();
    assertThat(run.toString())
        .as("the tour; when the change is meant, run this test with -D%s=true", WRITE)
        .isEqualTo(Files.readString(page));
  }

  private static Path copy(Path from, Path to) throws IOException {
    try (Stream<Path> paths = Files.walk(from)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        Path relative = from.relativize(path);
        if (!relative.startsWith("target")) {
          Path copy = to.resolve(relative.toString());
          Files.createDirectories(copy.getParent());
          Files.copy(path, copy);
        }
      }
    }
    return to;
  }

  /** The commands of a block, each with what it printed. */
  private static String run(RealGit git, String block) throws IOException, MojoExecutionException {
    StringBuilder shown = new StringBuilder();
    for (String line : block.split("\n", -1)) {
      if (line.startsWith("$ ")) {
        shown.append(line).append('\n');
        for (String said : said(git, line.substring(2))) {
          if (LEFT_OUT.matcher(said).matches()) {
            continue;
          }
          shown.append(
              COMMIT
                  .matcher(said)
                  .replaceAll("1a2b3c4")
                  .replace("src/main/harness/", ".../")
                  .stripTrailing());
          shown.append('\n');
        }
      }
    }
    return shown.toString();
  }

  private static List<String> said(RealGit git, String command)
      throws IOException, MojoExecutionException {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(command);
    while (matcher.find()) {
      words.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
    }
    String program = words.remove(0);
    if (program.equals("git")) {
      RealGit.Ended ended = git.attempt(Map.of(), words.toArray(String[]::new));
      List<String> lines = new ArrayList<>(ended.said().lines().toList());
      if (ended.code() != 0) {
        lines.add("=> ends with " + ended.code());
      }
      return lines;
    }
    assertThat(program).isEqualTo("mvn");
    return goal(git, words);
  }

  private static List<String> goal(RealGit git, List<String> words)
      throws IOException, MojoExecutionException {
    String goal = words.remove(0);
    Map<String, String> given = new TreeMap<>();
    for (String word : words) {
      assertThat(word).startsWith("-Dtugtest.").contains("=");
      given.put(
          word.substring("-Dtugtest.".length(), word.indexOf('=')),
          word.substring(word.indexOf('=') + 1));
    }
    if (goal.equals("tugtest:install-hook")) {
      GuardOrder order = Guarded.order(InstallHookMojo.later());
      return InstallHookMojo.said(Guarded.install(git, order), order);
    }
    Stage stage = Stage.in(git.folder());
    List<String> end = new ArrayList<>();
    try {
      if (goal.equals("tugtest:compare")) {
        compare(stage, given);
      } else {
        assertThat(goal).isEqualTo("tugtest:as-built");
        asBuilt(stage, given);
      }
    } catch (MojoFailureException blocked) {
      end.add("=> the build fails");
    } catch (MojoExecutionException broken) {
      end.add("=> cannot check: " + broken.getMessage());
    }
    assertThat(given).as("parameters that nothing used").isEmpty();
    List<String> lines = new ArrayList<>(stage.log().lines());
    lines.addAll(end);
    return lines;
  }

  private static void compare(Stage stage, Map<String, String> given)
      throws MojoExecutionException, MojoFailureException {
    @Nullable String base = given.remove("base");
    BaseOrder order =
        new BaseOrder(
            false,
            given.remove("head"),
            base,
            true,
            Boolean.parseBoolean(given.remove("failOnUnannounced")));
    Parents parents = Parents.of(given.remove("ours"), given.remove("theirs"), base);
    new CompareRun(stage.around(), stage.place(), order, parents, stage.log())
        .run("error", null, null);
  }

  private static void asBuilt(Stage stage, Map<String, String> given)
      throws MojoExecutionException, MojoFailureException {
    AsBuiltOrder order =
        new AsBuiltOrder(null, null, null, null, false, "error", null, given.remove("today"));
    new AsBuiltRun(stage.around(), stage.place(), order, stage.log()).run();
  }
}
