package org.tugtest.operate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.tugtest.facts.Facts;
import org.tugtest.facts.KnownRules;
import org.tugtest.model.Element;
import org.tugtest.network.Edge;
import org.tugtest.read.HarnessReader;
import org.tugtest.read.MemoryFiles;
import org.tugtest.read.ReadLimits;
import org.tugtest.rule.Judged;
import org.tugtest.solve.Spice;

/** The states of the sample car. */
class SampleStatesTest {
  private static final Path FOLDER =
      Path.of(System.getProperty("basedir", "."), "../sample-project/src/main/harness");

  private static Facts sample() {
    Map<String, String> files = new TreeMap<>();
    try (Stream<Path> paths = Files.walk(FOLDER)) {
      for (Path path : paths.filter(Files::isRegularFile).toList()) {
        files.put(FOLDER.relativize(path).toString().replace('\\', '/'), Files.readString(path));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Facts.of(
        new HarnessReader(MemoryFiles.of(files), ReadLimits.STANDARD)
            .read("pebble-owl.harness.json"),
        Judged.TODAY,
        KnownRules.NONE);
  }

  @Test
  void everyStateHasOneSteadyAnswer() {
    Facts facts = sample();
    assertThat(facts.operating().all()).hasSizeGreaterThan(5);
    for (OperatingPoint point : facts.operating().all()) {
      assertThat(point.troubles()).as(point.state()).isEmpty();
      assertThat(point.solution().currentResidual()).as(point.state()).isLessThan(1e-9);
      assertThat(point.solution().powerResidual()).as(point.state()).isLessThan(1e-9);
    }
  }

  @Test
  void whatAStateWantsHasVolts() {
    Facts facts = sample();
    for (OperatingPoint point : facts.operating().all()) {
      for (Edge edge : facts.network().edges()) {
        if (edge instanceof Edge.OfElement inside && point.wanted(inside)) {
          double least = inside.element() instanceof Element.Coil ? 7.2 : 8;
          assertThat(point.across(edge)).as(point.state() + " " + edge.text()).isGreaterThan(least);
        }
      }
    }
  }

  @Test
  void theSimulatorAgrees() throws Exception {
    assumeTrue(Spice.isThere(), "ngspice is not on the path");
    Spice spice = new Spice();
    Facts facts = sample();
    facts.operating().all().forEach(point -> spice.add(point.solution()));
    for (double difference : spice.differences()) {
      assertThat(difference).isLessThanOrEqualTo(1e-9);
    }
    assertThat(spice.compared()).isGreaterThan(1000);
  }
}
